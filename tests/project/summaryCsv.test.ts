import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { make } from "../../src/project/make.ts";
import { csvCell, summaryCsv, summaryLine, summaryOf } from "../../src/project/summaryCsv.ts";

/** Source: the contract, "summary.csv and refused.json". */
const HEADINGS =
  "id,verdict,checks_attend,checks_stop,estimated,front_raglan,back_raglan,side,underarm,neckline_opening,neckband_cut_length,neckband_cut_height,cuff_cut_length,cuff_cut_height,hem_band_cut_length,hem_band_cut_height,sheets";

/** The body of the method's worked example, section 8, with what the draft needs of it. */
const WORKED = {
  chest: 960,
  height: 1660,
  hip: 1010,
  neckBase: 372,
  shoulder: 136,
  napeToHip: 572,
  scyeDepth: 187,
  upperArm: 305,
  wrist: 155,
  hand: 187,
  head: 561,
  armLength: 553,
};

describe("the summary of a run", () => {
  test("has the contract's columns, and a line for each body in the order given", () => {
    const lines = summaryCsv(["b,sound", "a,stop"]).split("\r\n");
    expect(lines).toEqual([HEADINGS, "b,sound", "a,stop", ""]);
  });

  test("of no bodies has its headings", () => {
    expect(summaryCsv([])).toBe(`${HEADINGS}\r\n`);
  });

  /** Source: the method's worked example, section 8, row "seams" and the rows of the bands. */
  test("gives the lengths of the worked example", () => {
    const made = make({ id: "worked", measures: WORKED }, DEFAULT_CHOICES, null);
    const summary = summaryOf(made, 23);
    expect(summary).toMatchObject({ id: "worked", verdict: "sound", estimated: 4, sheets: 23 });
    const lengths = {
      front_raglan: 315.0916,
      back_raglan: 333.3046,
      side: 274.1414,
      underarm: 369.4517,
      neckline_opening: 487.9222,
      neckband_cut_length: 393.9016,
      neckband_cut_height: 50.7,
      cuff_cut_length: 167.7,
      cuff_cut_height: 114.3,
      hem_band_cut_length: 1022.7,
      hem_band_cut_height: 165.1,
    };
    for (const [column, length] of Object.entries(lengths))
      expect(Number(Object.entries(summary).find(([name]) => name === column)?.[1])).toBeCloseTo(
        length,
        3,
      );
    expect(summaryLine(summary).split(",")).toHaveLength(HEADINGS.split(",").length);
  });
});

/** What upsets tables, and some letters between. */
const LETTER = fc.constantFrom(..."\",;\n\r\t =+-@'a1é\u0000", "🧵");

describe("a cell", () => {
  test.each(["=1+1", "+1", "-5", "@sum", "\tx", "\rx"])("that starts like %j is text", (cell) => {
    const [[read = ""] = []] = Papa.parse<string[]>(csvCell(cell), { delimiter: "," }).data;
    expect(read).toBe(`'${cell}`);
  });

  test("that is a number stays one", () => {
    expect([csvCell(-5), csvCell(1022.7), csvCell("1022.7")]).toEqual(["-5", "1022.7", "1022.7"]);
  });

  test("of any text comes back from a line of CSV", () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: LETTER, maxLength: 20 }), { minLength: 2, maxLength: 8 }),
        (cells) => {
          const line = cells.map(csvCell).join(",");
          const read = Papa.parse<string[]>(`${line}\n`, { newline: "\n", delimiter: "," }).data[0];
          expect(read?.map((cell) => cell.replace(/^'(?=[=+\-@\t\r])/u, ""))).toEqual(
            cells.map((cell) => cell.replace(/^'(?=[=+\-@\t\r])/u, "")),
          );
        },
      ),
    );
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { LONGEST_SHEET, PAPERS } from "../../src/export/data/paper.ts";
import { toDxf } from "../../src/export/dxf.ts";
import { layOut } from "../../src/export/layout.ts";
import { openPdf } from "../../src/export/pdfFile.ts";
import { make } from "../../src/project/make.ts";
import { exampleBody } from "../drafting/bodies.ts";
import { SHEET_RUNS } from "./worked/sheets.ts";
import { expectWorked, workedCheck, workedChecks } from "./workedChecks.ts";

/** Worked checks of data/worked-checks.json on sheets and files, each with its own source. */
describe("worked checks on sheets", () => {
  test.each(workedChecks.filter(({ id }) => SHEET_RUNS[id] !== undefined))(
    "$id: $title",
    (check) => {
      expectWorked(check, SHEET_RUNS[check.id]?.(check) ?? []);
    },
  );
});

test("U10: a roll is cut before it is longer than a PDF page may be", () => {
  expect(LONGEST_SHEET).toBeLessThan(workedCheck("U10").expected[0] ?? Number.NaN);
});

test("P01: A0 is the ideal sheet of a square metre, to the whole millimetre", () => {
  const ideal = workedCheck("P01").expected.map(Math.round);
  expect([PAPERS.a0.width, PAPERS.a0.height]).toEqual(ideal);
});

describe("the page box of a PDF", () => {
  const font = readFileSync(new URL("../../assets/fonts/NotoSans-subset.ttf", import.meta.url));

  /** Width and height in points, read back from the file. */
  const pageBox = async (width: number, height: number): Promise<readonly number[]> => {
    const pdf = await openPdf({ font, title: "Page box", date: null, width, height });
    pdf.addPage(width, height, "");
    const text = new TextDecoder("latin1").decode(pdf.bytes());
    return (/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(text) ?? []).slice(1).map(Number);
  };
  /** The file writes points to four decimals: 0.00002 mm. */
  const DECIMALS = 4;

  test("U06: A4 in PDF points", async () => {
    const check = workedCheck("U06");
    const [width = NaN, height = NaN] = check.numbers("value");
    const box = await pageBox(width, height);
    expect(box).toHaveLength(2);
    check.expected.forEach((wanted, i) => {
      expect(box[i]).toBeCloseTo(wanted, DECIMALS - 1);
    });
  });

  test("U05: PDF points in a millimetre, over a page of a metre", async () => {
    const [points = NaN] = workedCheck("U05").expected;
    const [width = NaN] = await pageBox(1000, 500);
    expect(width / 1000).toBeCloseTo(points, DECIMALS + 2);
  });
});

test("U11: a DXF says millimetres in the code that readers know", () => {
  const made = make(exampleBody(), DEFAULT_CHOICES, null);
  const dxf = toDxf(made, layOut(made.garment.pieces, "a0"));
  const [, code = ""] = /\$INSUNITS\r\n\s*70\r\n\s*(\d+)\r\n/.exec(dxf) ?? [];
  // The check lists the codes of unitless, in, mm, cm and m in this order.
  expect(Number(code)).toBe(workedCheck("U11").expected[2]);
});

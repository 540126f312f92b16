import { describe, expect, test } from "vitest";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { printFaults } from "../../src/export/printFaults.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import type { FieldId } from "../../src/studio/fields/fields.ts";
import { fieldOf } from "../../src/studio/fields/fields.ts";
import { ownSizeOf, withPaper, withPrint } from "../../src/studio/fields/printFields.ts";
import { wordField } from "../../src/studio/fields/wordFields.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { rangeNow, takeTyped } from "../../src/studio/state/refusing.ts";

const work = choirWork();
const mm = printIn("mm", "en");
const typed = (id: FieldId, text: string, on = work) => {
  const taken = takeTyped(id, text, on, mm);
  if (!("refused" in taken)) return taken.value;
  return `${taken.refused.lead} ${taken.refused.cure}`.replaceAll("\u00a0", " ");
};

describe("bad input about paper is refused in words, and the work stays as it was", () => {
  const own = withPaper(work, "210x330");
  test("paper smaller than the test square", () => {
    expect(typed("sheet.width", "40", own)).toBe(
      "40 mm is refused; the table still shows 210 mm. Width of the sheet must be 190 mm to 1600 mm. Give a value in that range. The test square of 50 mm, the ruled scale and the title page must go on it.",
    );
    expect(typed("sheet.height", "40", own)).toContain("Height of the sheet must be 254");
  });
  test("margins larger than the sheet", () => {
    expect(typed("print.left", "150")).toBe(
      "150 mm is refused; the table still shows 10 mm. Margin at the left must be 0 mm to 28 mm. Give a value in that range. A ruled scale of 150 mm must go between the margins.",
    );
  });
  test("overlap over half a sheet", () => {
    expect(typed("print.overlap", "120")).toBe(
      "120 mm is refused; the table still shows 10 mm. Overlap must be 10 mm to 95 mm. Give a value in that range. Half of what a sheet prints is the most.",
    );
  });
  test.each(["0", "300"])("a measured square of %s mm", (text) => {
    expect(typed("print.along", text)).toContain(
      `${text} mm is refused; the table still shows 50 mm. Test square along the feed must be 45 mm to 55 mm.`,
    );
  });
  test("whatever a number may be is printed: no field lets through what the sheets refuse", () => {
    const fields: readonly FieldId[] = [
      "print.top",
      "print.right",
      "print.bottom",
      "print.left",
      "print.overlap",
      "print.along",
      "print.across",
    ];
    for (const paper of [...PAPER_NAMES, "190x254", "1600x4900"] as const) {
      const on = withPaper(work, paper);
      for (const id of fields) {
        const { least, most } = rangeNow(id, on);
        for (const value of [least, most]) {
          const next = fieldOf(id).write(on, value);
          expect(printFaults(next.paper, next.print), `${paper} ${id} ${value}`).toEqual([]);
        }
      }
    }
  });
});

describe("another paper", () => {
  test("keeps margins and overlap where they go on it, else takes what every printer does", () => {
    const wide = withPrint(withPaper(work, "a0"), { overlap: 200 });
    expect(withPaper(wide, "ansi-e").print.overlap).toBe(200);
    expect(withPaper(wide, "a4").print.overlap).toBe(10);
  });
  test("of one's own begins as large as the last", () => {
    expect(ownSizeOf("a4")).toBe("210x297");
    expect(ownSizeOf("roll-610")).toBe("610x330");
    const own = wordField("paper.name").write(work, "own");
    expect(own.paper).toBe("210x297");
    expect(fieldOf("sheet.height").write(own, 330).paper).toBe("210x330");
  });
  test("voids the sheets that were asked for: their names mean other sheets now", () => {
    const some = withPrint(work, { only: ["A1"] });
    expect(some.print.only).toEqual(["A1"]);
    expect(withPaper(some, "a3").print.only).toEqual([]);
    expect(fieldOf("print.left").write(some, 5).print.only).toEqual([]);
  });
});

test("a printed square is read in millimetres whatever the unit is", () => {
  const inches = printIn("in", "en");
  expect(takeTyped("print.along", "49.3", work, inches)).toEqual({ value: 49.3 });
});

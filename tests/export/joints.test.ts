import { describe, expect, test } from "vitest";
import { cornerMarks, markLetter, neighboursOf } from "../../src/export/joints.ts";
import { rowLetter, sheetName } from "../../src/export/tiles.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { laidOn } from "../support/sheetSubjects.ts";

/** Three sheets round a corner of A4, the fourth left out. */
const CORNER = bareSheets({
  count: 5,
  rows: 2,
  columns: 2,
  pages: [
    { page: 3, x: -10, y: -10, row: 0, column: 0 },
    { page: 4, x: 170, y: -10, row: 0, column: 1 },
    { page: 5, x: -10, y: 257, row: 1, column: 0 },
  ],
});

describe("the names of sheets and marks", () => {
  test("count rows by letters and columns by numbers", () => {
    expect(sheetName(1, 2)).toBe("B3");
    expect([0, 25, 26, 27, 52].map(rowLetter)).toEqual(["A", "Z", "AA", "AB", "BA"]);
  });

  test("letter marks without i, l and o, and go on with two letters", () => {
    const letters = Array.from({ length: 60 }, (_, i) => markLetter(i));
    expect(new Set(letters).size).toBe(60);
    expect(letters.join("")).not.toMatch(/[ilo]/);
    expect(letters[22]).toBe("z");
    expect(letters[23]).toBe("aa");
  });
});

describe("corner marks", () => {
  test("stand where two printed sheets or more meet, in the middle of their overlap", () => {
    expect(cornerMarks(CORNER)).toEqual([
      { at: { x: 185, y: 5 }, letter: "a" },
      { at: { x: 5, y: 272 }, letter: "b" },
      { at: { x: 185, y: 272 }, letter: "c" },
    ]);
  });

  test("lie in the window of each sheet that meets there", () => {
    const { sheets } = laidOn("a4");
    for (const { at } of cornerMarks(sheets)) {
      const seen = sheets.pages.filter(({ x, y }) => {
        const [u, v] = [at.x - x, at.y - y];
        return u > 10 && u < 200 && v > 10 && v < 287;
      });
      expect(seen.length).toBeGreaterThanOrEqual(2);
    }
  });
});

describe("neighbours of a sheet", () => {
  test("are named where they are printed, and null where they are left out", () => {
    const [, second] = CORNER.pages;
    if (!second) throw new Error("no sheet");
    expect(neighboursOf(CORNER, second)).toEqual({
      left: "A1",
      right: null,
      above: null,
      below: null,
    });
  });
});

import { describe, expect, test } from "vitest";
import type { SheetPage } from "../../src/export/sheets.ts";
import { readWanted, turnedOver, wantedText } from "../../src/studio/table/wantedSheets.ts";

/** Eight sheets in three rows; B2 holds nothing. */
const PAGES: readonly SheetPage[] = ["A1", "A2", "A3", "B1", "B3", "C1", "C2", "C3"].map(
  (name, i) => ({
    page: i + 3,
    x: 0,
    y: 0,
    row: "ABC".indexOf(name.charAt(0)),
    column: Number(name.charAt(1)) - 1,
  }),
);

describe("sheets as they are typed", () => {
  test.each([
    ["", []],
    ["1-3, 7", ["A1", "A2", "A3", "C2"]],
    ["7, 1 – 3", ["A1", "A2", "A3", "C2"]],
    ["b3 A2", ["A2", "B3"]],
    ["A3-B3;8", ["A3", "B1", "B3", "C3"]],
    ["1,1,1", ["A1"]],
    ["1-8", []],
  ])("%j", (text, names) => {
    expect(readWanted(text, PAGES)).toEqual({ names });
  });
  test.each([
    ["9", "9"],
    ["0", "0"],
    ["1-4, B2", "B2"],
    ["3-1", "3-1"],
    ["2-", "2-"],
    ["all", "all"],
    ["1.5", "1.5"],
  ])("%j is refused, and the part that is at fault is named", (text, bad) => {
    expect(readWanted(text, PAGES)).toEqual({ bad });
  });
  test.each(["1-3, 7", "2", "1, 3, 5, 7", "4-6"])("%s comes back as it was", (text) => {
    const read = readWanted(text, PAGES);
    expect("names" in read && wantedText(read.names, PAGES)).toBe(text);
  });
});

describe("a sheet pressed on the map", () => {
  test("is left out of all, and taken in again", () => {
    const seven = turnedOver([], "B3", PAGES);
    expect(seven).toEqual(["A1", "A2", "A3", "B1", "C1", "C2", "C3"]);
    expect(turnedOver(seven, "B3", PAGES)).toEqual([]);
  });
  test("is not left out where it is the last", () => {
    expect(turnedOver(["C1"], "C1", PAGES)).toEqual(["C1"]);
  });
});

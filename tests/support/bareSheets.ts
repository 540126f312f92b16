import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import { gridOf } from "../../src/export/tiles.ts";

/** Sheets of A4 with nothing on them, or with what a test wants on them. */
export const bareSheets = (wanted: Partial<Sheets> = {}): Sheets => {
  const { width = 210, height = 297 } = wanted;
  return {
    paper: "a4",
    print: DEFAULT_PRINT,
    lying: false,
    grid: gridOf(width, height),
    count: 0,
    width,
    height,
    pages: [],
    placements: [],
    rows: 0,
    columns: 0,
    ...wanted,
  };
};

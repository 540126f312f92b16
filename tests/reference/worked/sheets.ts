import { MARGIN, OVERLAP } from "../../../src/export/data/paper.ts";
import { gridOf, windowOf } from "../../../src/export/tiles.ts";
import type { Run, Runs } from "./run.ts";

/** How many sheets in a row reach over a stretch of the layout, by the windows that they show. */
const sheetsOver = (length: number, reach: (sheet: number) => number): number => {
  let sheets = 1;
  while (reach(sheets - 1) < length) sheets += 1;
  return sheets;
};

const tiles: Run = (check) => {
  if (check.number("margin") !== MARGIN || check.number("overlap") !== OVERLAP) return [];
  const grid = gridOf(check.number("paperWidth"), check.number("paperHeight"));
  const columns = sheetsOver(check.number("width"), (i) => windowOf(grid, 0, i).right);
  const rows = sheetsOver(check.number("height"), (i) => windowOf(grid, i, 0).bottom);
  return [columns, rows, columns * rows];
};

export const SHEET_RUNS: Runs = {
  P05: tiles,
  P06: tiles,
  P07: tiles,
  P08: tiles,
  P09: tiles,
  P10: tiles,
};

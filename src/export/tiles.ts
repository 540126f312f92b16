import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { LONGEST_SHEET, MARGIN, OVERLAP, PAPERS, type PaperName } from "./data/paper.ts";

/** How one layout is cut into sheets: what a sheet shows, and how far it is to the next. */
export type Grid = {
  readonly sheetWidth: Mm;
  readonly sheetHeight: Mm;
  /** The printed part: the sheet less its margins. */
  readonly windowWidth: Mm;
  readonly windowHeight: Mm;
  readonly stepX: Mm;
  readonly stepY: Mm;
};

export const gridOf = (sheetWidth: Mm, sheetHeight: Mm): Grid => {
  const [windowWidth, windowHeight] = [sheetWidth - 2 * MARGIN, sheetHeight - 2 * MARGIN];
  return {
    sheetWidth,
    sheetHeight,
    windowWidth,
    windowHeight,
    stepX: windowWidth - OVERLAP,
    stepY: windowHeight - OVERLAP,
  };
};

/** The grid of a paper. A roll counts as the longest sheet that may be cut from it. */
export const paperGrid = (name: PaperName): Grid =>
  gridOf(PAPERS[name].width, PAPERS[name].height ?? LONGEST_SHEET);

/** What the sheet in this row and column (from 0) shows of the layout. */
export const windowOf = (grid: Grid, row: number, column: number): Box => {
  const [left, top] = [column * grid.stepX, row * grid.stepY];
  return { left, top, right: left + grid.windowWidth, bottom: top + grid.windowHeight };
};

/** The first column (or row) whose window touches a stretch of the layout. */
export const firstTouched = (from: Mm, step: Mm, windowSize: Mm): number =>
  Math.max(0, Math.ceil((from - windowSize) / step));
export const lastTouched = (to: Mm, step: Mm): number => Math.max(0, Math.floor(to / step));

/** A, B ... Z, AA, AB ... */
export const rowLetter = (row: number): string =>
  row < 26
    ? String.fromCharCode(65 + row)
    : rowLetter(Math.floor(row / 26) - 1) + rowLetter(row % 26);

/** The name of a sheet: A1, B3. Rows and columns count from 0 here, from 1 on paper. */
export const sheetName = (row: number, column: number): string => `${rowLetter(row)}${column + 1}`;

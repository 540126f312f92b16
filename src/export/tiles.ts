import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { LONGEST_SHEET, TEST_SQUARE } from "./data/paper.ts";
import { type PaperChoice, paperOf } from "./paperSize.ts";
import { DEFAULT_PRINT, type Margins, type PrintChoices } from "./printChoices.ts";

/**
 * How one layout is cut into sheets: what a sheet shows, and how far it is to the next. Lengths are
 * those of the sheet as it leaves the printer. On the page of the file a millimetre of it is drawn
 * `drawnX` and `drawnY` long: 1, or more where the printer makes everything shorter.
 */
export type Grid = {
  readonly sheetWidth: Mm;
  readonly sheetHeight: Mm;
  /** From the sheet's upper left corner to the printed part's. */
  readonly left: Mm;
  readonly top: Mm;
  /** The printed part: the sheet less its margins. */
  readonly windowWidth: Mm;
  readonly windowHeight: Mm;
  readonly stepX: Mm;
  readonly stepY: Mm;
  readonly overlap: Mm;
  readonly drawnX: number;
  readonly drawnY: number;
};

type Ways = Pick<PrintChoices, "margins" | "overlap" | "square">;

/** How large the printer makes a millimetre, along and across its feed. */
const printedSize = ({ square }: Ways) => ({
  along: square.along / TEST_SQUARE,
  across: square.across / TEST_SQUARE,
});

/** Drivers turn a page either way: on its side it keeps the wider of two opposite margins twice. */
const turnedMargins = ({ top, right, bottom, left }: Margins): Margins => {
  const [ends, sides] = [Math.max(top, bottom), Math.max(left, right)];
  return { top: sides, bottom: sides, left: ends, right: ends };
};

/** The grid of a page of this size, as it is read; `lying`: it goes through the printer on its side. */
export const gridOf = (
  pageWidth: Mm,
  pageHeight: Mm,
  ways: Ways = DEFAULT_PRINT,
  lying = false,
): Grid => {
  const { along, across } = printedSize(ways);
  const [printedX, printedY] = lying ? [along, across] : [across, along];
  const { top, right, bottom, left } = lying ? turnedMargins(ways.margins) : ways.margins;
  // A printer that makes things larger prints no more of the sheet for it.
  const [reachX, reachY] = [Math.min(printedX, 1), Math.min(printedY, 1)];
  const windowWidth = (pageWidth - (left + right)) * reachX;
  const windowHeight = (pageHeight - (top + bottom)) * reachY;
  return {
    sheetWidth: pageWidth * reachX,
    sheetHeight: pageHeight * reachY,
    left: left * reachX,
    top: top * reachY,
    windowWidth,
    windowHeight,
    stepX: windowWidth - ways.overlap,
    stepY: windowHeight - ways.overlap,
    overlap: ways.overlap,
    drawnX: 1 / printedX,
    drawnY: 1 / printedY,
  };
};

/** The grid of a paper. A roll counts as the longest sheet that may be cut from it, and never lies. */
export const paperGrid = (choice: PaperChoice, ways: Ways = DEFAULT_PRINT, lying = false): Grid => {
  const { width, height } = paperOf(choice);
  if (height === null) return gridOf(width, LONGEST_SHEET, ways);
  return lying ? gridOf(height, width, ways, true) : gridOf(width, height, ways);
};

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

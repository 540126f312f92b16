import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import type { SheetPage, Sheets } from "./sheets.ts";
import { type Grid, sheetName } from "./tiles.ts";

/** Sheets are joined in the middle of their overlap: so far inside their windows. */
export const jointIn = ({ overlap }: Grid): Mm => overlap / 2;

/** Letters that cannot be taken for a digit or for one another. */
const LETTERS = "abcdefghjkmnpqrstuvwxyz";

/** a, b ... z, aa, ab ... without i, l and o. */
export const markLetter = (index: number): string => {
  const count = LETTERS.length;
  const last = LETTERS[index % count] ?? "";
  return index < count ? last : markLetter(Math.floor(index / count) - 1) + last;
};

export const isPrintedAt = ({ pages }: Sheets, row: number, column: number): boolean =>
  pages.some((page) => page.row === row && page.column === column);

/** The printed sheets beside a sheet, by name; null: none is printed there. */
export type Neighbours = {
  readonly left: string | null;
  readonly right: string | null;
  readonly above: string | null;
  readonly below: string | null;
};

export const neighboursOf = (sheets: Sheets, { row, column }: SheetPage): Neighbours => {
  const at = (r: number, c: number): string | null =>
    isPrintedAt(sheets, r, c) ? sheetName(r, c) : null;
  return {
    left: at(row, column - 1),
    right: at(row, column + 1),
    above: at(row - 1, column),
    below: at(row + 1, column),
  };
};

/** Where corners of sheets meet: the same letter stands there on each of them. */
export type CornerMark = { readonly at: Point; readonly letter: string };

const cornerAt = (grid: Grid, row: number, column: number): Point => ({
  x: column * grid.stepX + jointIn(grid),
  y: row * grid.stepY + jointIn(grid),
});

/** The marks of a layout, in reading order, wherever two printed sheets or more meet. */
export const cornerMarks = (sheets: Sheets): readonly CornerMark[] => {
  const found: CornerMark[] = [];
  for (let row = 0; row <= sheets.rows; row++) {
    for (let column = 0; column <= sheets.columns; column++) {
      const around = [
        isPrintedAt(sheets, row - 1, column - 1),
        isPrintedAt(sheets, row - 1, column),
        isPrintedAt(sheets, row, column - 1),
        isPrintedAt(sheets, row, column),
      ];
      if (around.filter(Boolean).length < 2) continue;
      found.push({ at: cornerAt(sheets.grid, row, column), letter: markLetter(found.length) });
    }
  }
  return found;
};

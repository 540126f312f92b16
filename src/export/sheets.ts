import type { PieceName } from "../drafting/piece.ts";
import type { Degrees, Mm } from "../geometry/units.ts";
import type { PaperName } from "./data/paper.ts";

/** Where a piece stands in the one layout (contract, "sheets"): turned first, then moved. */
export type Placement = {
  readonly piece: PieceName;
  readonly x: Mm;
  readonly y: Mm;
  readonly turn: Degrees;
};

/** PDF page `page` shows layout point (X, Y) at (X - x, Y - y) from the sheet's top left corner. */
export type SheetPage = {
  readonly page: number;
  readonly x: Mm;
  readonly y: Mm;
  /** Place in the page map, from 0: row A, B, ... and column 1, 2, ... */
  readonly row: number;
  readonly column: number;
};

export type Sheets = {
  readonly paper: PaperName;
  /** Of all PDF pages, title and map included. */
  readonly count: number;
  readonly width: Mm;
  readonly height: Mm;
  /** Only the sheets that carry a line. */
  readonly pages: readonly SheetPage[];
  readonly placements: readonly Placement[];
  readonly rows: number;
  readonly columns: number;
};

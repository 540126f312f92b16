import type { Mm } from "../geometry/units.ts";
import type { PaperChoice } from "./paperSize.ts";
import type { Placement } from "./placement.ts";
import type { PrintChoices } from "./printChoices.ts";
import type { Grid } from "./tiles.ts";

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
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  /** Of all PDF pages, title and map included. */
  readonly count: number;
  /** Of a page of the file, as it is read. */
  readonly width: Mm;
  readonly height: Mm;
  /** The page lies on its side when it goes through the printer. */
  readonly lying: boolean;
  readonly grid: Grid;
  /** Every sheet that carries a line, wanted or not. */
  readonly pages: readonly SheetPage[];
  readonly placements: readonly Placement[];
  readonly rows: number;
  readonly columns: number;
};

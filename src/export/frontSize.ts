import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { PAPERS } from "./data/paper.ts";
import { DEFAULT_PRINT, type PrintChoices } from "./printChoices.ts";
import type { Sheets } from "./sheets.ts";
import { type Grid, gridOf } from "./tiles.ts";

/** A page that carries no pattern; its grid tells its margins and how large it is drawn. */
export type FrontSize = {
  readonly width: Mm;
  readonly height: Mm;
  readonly print: PrintChoices;
  readonly grid: Grid;
};

/** Wider sheets are for a print shop, and nobody wants a title page a metre high. */
const WIDEST: Mm = 300;

/**
 * Title and map stand upright, as large as the sheets and made for the same printer; before A0 and
 * roll sheets they are A4, for a printer that is true.
 */
export const frontSize = ({ width, height, lying, print }: Sheets): FrontSize => {
  const [across, along] = lying ? [height, width] : [width, height];
  if (across > WIDEST) {
    const { a4 } = PAPERS;
    const [w, h] = [a4.width, a4.height];
    return { width: w, height: h, print: DEFAULT_PRINT, grid: gridOf(w, h) };
  }
  return { width: across, height: along, print, grid: gridOf(across, along, print) };
};

/** What may be printed of a page. */
export const insideMargins = ({ grid }: FrontSize): Box => ({
  left: grid.left,
  top: grid.top,
  right: grid.left + grid.windowWidth,
  bottom: grid.top + grid.windowHeight,
});

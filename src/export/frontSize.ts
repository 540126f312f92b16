import type { Box } from "../geometry/outline.ts";
import { MARGIN, PAPERS } from "./data/paper.ts";
import type { Sheets } from "./sheets.ts";

/** A page that carries no pattern. */
export type FrontSize = { readonly width: number; readonly height: number };

/** Wider sheets are for a print shop, and nobody wants a title page a metre high. */
const WIDEST = 300;

/** Title and map are as large as the sheets; before A0 and roll sheets they are A4. */
export const frontSize = ({ width, height }: Sheets): FrontSize =>
  width <= WIDEST ? { width, height } : { width: PAPERS.a4.width, height: PAPERS.a4.height };

/** What may be printed of a page. */
export const insideMargins = ({ width, height }: FrontSize): Box => ({
  left: MARGIN,
  top: MARGIN,
  right: width - MARGIN,
  bottom: height - MARGIN,
});

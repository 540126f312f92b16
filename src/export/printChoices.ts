import type { Mm } from "../geometry/units.ts";
import { MARGIN, OVERLAP, TEST_SQUARE } from "./data/paper.ts";
import type { Placement } from "./placement.ts";

/** What a printer leaves bare along each edge of a sheet that stands upright in it. */
export type Margins = {
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly left: Mm;
};

/** How the test square of 50 mm came out of a printer. */
type MeasuredSquare = {
  /** In the direction of the feed: along the long side of a sheet of A4, however the page lies. */
  readonly along: Mm;
  /** Across the feed. */
  readonly across: Mm;
};

/** How sheets are printed, besides the paper's name. Every one has a default. */
export type PrintChoices = {
  readonly margins: Margins;
  /** Overlap: cut off left and above, laid on the sheet before. Butt: cut off all round, edge to edge. */
  readonly join: "overlap" | "butt";
  /** How far a sheet repeats what its neighbour shows; half of it lies outside the joint. */
  readonly overlap: Mm;
  /** Which way the page lies. Fewest: whichever needs fewer sheets. A roll lies as it is cut. */
  readonly turn: "portrait" | "landscape" | "fewest";
  /** 50 and 50: the printer is true. Else the sheets are drawn so that this printer makes them true. */
  readonly square: MeasuredSquare;
  /** Names of the sheets wanted, such as A1; none: all of them, with title and map. */
  readonly only: readonly string[];
  /** Pieces that the maker has laid by hand; the others lie where the program lays them. */
  readonly placed: readonly Placement[];
};

export const DEFAULT_PRINT: PrintChoices = {
  margins: { top: MARGIN, right: MARGIN, bottom: MARGIN, left: MARGIN },
  join: "overlap",
  overlap: OVERLAP,
  turn: "portrait",
  square: { along: TEST_SQUARE, across: TEST_SQUARE },
  only: [],
  placed: [],
};

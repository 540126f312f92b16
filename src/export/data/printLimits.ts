import type { Mm } from "../../geometry/units.ts";
import { OVERLAP, TEST_SQUARE } from "./paper.ts";

/** From the least to the most, in mm, and why no more and no less. */
type Limit = { readonly least: Mm; readonly most: Mm; readonly why: string };

/**
 * What a sheet's own size may be, upright. The scale along two edges of every sheet is 150 mm long
 * or more (contract, "sheets"), and the title page wants the height. The most: 1.6 m is the widest
 * of common plotters (practice, no source), and viewers stop at 5.08 m.
 */
export const OWN_SIZE = {
  width: { least: 190, most: 1600, why: "the scale of 150 mm along the foot" },
  height: { least: 254, most: 4900, why: "the title page, and what viewers show" },
} as const satisfies Record<string, Limit>;

/** What a printer leaves bare. 0: it prints to the edge. Ours. */
export const MARGIN_LIMIT: Limit = { least: 0, most: 60, why: "no printer leaves more bare" };

/**
 * What must be left between the margins: across, a scale of 150 mm with its corner marks; along, the
 * title page with its squares of 100 mm, the list of pieces and the cautions. Ours.
 */
export const LEAST_WINDOW = { across: 172, along: 234 } as const satisfies Record<string, Mm>;

/** Scales and words stand in half of it; the most is half of what a sheet prints. Ours. */
export const LEAST_OVERLAP: Mm = OVERLAP;

/**
 * What a printed test square may measure. A tenth more or less is no printer's error but a scaling
 * that was switched on. Ours.
 */
export const SQUARE_LIMIT: Limit = {
  least: TEST_SQUARE - 5,
  most: TEST_SQUARE + 5,
  why: "more is no printer's error but scaling that is switched on",
};

/** The most sheets that may be named one by one. Ours; no garment comes near it. */
export const MOST_WANTED = 500;

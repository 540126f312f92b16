import type { Degrees, Mm } from "./units.ts";

/** A handle shorter than this gives no direction: the next point does (method 1.1). */
export const NO_DIRECTION: Mm = 1e-9;
/** A cut this near to a joint is at the joint, or a part of no length would be left (method 1.3). */
export const AT_JOINT: Mm = 1e-9;
/** What a length on a drawn line may be out by; a thousand times finer than a seam is compared. */
export const LENGTH_ERROR: Mm = 1e-9;
/** Where Newton's rule for the parameter at a length may stop (method 1.3). */
export const AT_LENGTH: Mm = 1e-11;
/** A crossing may lie this far outside a segment's ends and still be one at its end (method 1.3). */
export const PARAMETER_SLACK = 1e-9;
/** Solves end here, ten thousand times below what a seam is compared to (method 1.7). */
export const SOLVED: Mm = 1e-10;
/** A drawn offset strays from the true one by no more than this at the points tried (method 1.4). */
export const OFFSET_ERROR: Mm = 0.005;
/** Two edges that turn by less run on straight: no corner to cut or to fill (method 1.4, 4). */
export const RUNS_ON: Degrees = 0.05;
/** A mitre longer than this many allowances is cut off: it would be a spike of cloth (method 1.4). */
export const MITRE_LIMIT = 4;
/** Two sewn edges are drawn equal; more than this shows at the machine (method 6). */
export const SEAM_MEETS: Mm = 0.1;
/** How far a maker's own edges may stand apart at a corner and still be joined (method 2.7). */
export const EDGE_GAP: Mm = 0.5;
/** Parts shorter than this are left over from cutting and are dropped (method 2.7). */
export const CRUMB: Mm = 0.005;

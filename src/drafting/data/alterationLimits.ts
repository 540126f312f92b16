import type { Degrees, Mm, Ratio } from "../../geometry/units.ts";

/** What holds an alteration so that its lines can still be drawn (method 3). Ours, practice. */
export const ALTERATION = {
  /** The neckline is widened by at most this part of the shortest raglan edge. */
  widenMost: 0.3 as Ratio,
  /** Nearer than this a corner lies level with the fold, and depths cannot be scaled. */
  level: 1 as Mm,
  /** A side is moved along the raglan's own end, up to this slope. */
  steepest: 30 as Degrees,
  /** What is left of a side under the raised hem, and of the sleeve above its end. */
  sideLeft: 60 as Mm,
  sleeveLeft: 60 as Mm,
  /** Sides further apart than this are drawn to their mean. */
  sidesApart: 0.1 as Mm,
  /** The V takes at most this part of the front neckline. */
  vWidthMost: 0.6 as Ratio,
  /** The V's point stays this far above the hem. */
  vAboveHem: 60 as Mm,
  /** And this far below its top, or the V would cross the neckline. */
  vLeast: 10 as Mm,
  /** The V's allowance takes at most this part of its half width. */
  vAllowanceMost: 0.5 as Ratio,
  /** Cut away, the sewn point stays this far above the hem. */
  cutAwayAboveHem: 20 as Mm,
} as const;

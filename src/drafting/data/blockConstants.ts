import type { Degrees, Mm, Ratio } from "../../geometry/units.ts";

/**
 * The constants of the raglan block (method 2.1), with the ground of each beside it.
 * "Geometry": our own. "Practice": common practice, no source. "Memory": textbook rules of flat
 * pattern drafting, from memory, no source.
 */
export const BLOCK = {
  /** Neck half-width at the neck base = neckBase / 6. Memory. */
  neckDiv: 6,
  /** The block's neckline stands this far outside the neck base: a 19 band, 11 of air. Practice. */
  neckOut: 30 as Mm,
  /** The neck half-width takes at most this part of the quarter chest. Geometry. */
  neckWidthMost: 0.55 as Ratio,
  /** Neck point above the nape = neckBase / 16. Memory. */
  riseDiv: 16,
  /** Slope of the shoulder. Memory: 19° to 23° in textbooks. */
  slope: 21 as Degrees,
  /** Neckline below the nape at centre back. Practice. */
  backDrop: 16 as Mm,
  /** Front neck depth at the neck base = neckBase / 6 + 16. Memory. */
  frontOut: 16 as Mm,
  /** Handles of the back neckline, as parts of its width and depth. Geometry. */
  nb1: 0.7,
  nb2: 0.7,
  /** Handles of the front neckline. Geometry. */
  nf1: 0.56,
  nf2: 0.5,
  /** Raglan corner along the neckline from the neck point, as a part of neckBase. Practice. */
  cornerBack: 0.055,
  cornerFront: 0.125,
  /** Underarm of a close block below the armpit. Practice (survey bridge). */
  scyeClose: 25 as Mm,
  /** And lowered further by this part of the chest's ease. Practice. */
  scyeOut: 0.25 as Ratio,
  /** The underarm lies this far below the raglan corner, in parts of its way across. Geometry. */
  scyeLeast: 0.5,
  scyeMost: 2,
  /** The hem's ease as a part of the chest's. Practice. */
  hipOut: 0.6 as Ratio,
  /** The side is at least this long. Geometry. */
  sideLeast: 120 as Mm,
  /** The side seam may lean inward or outward by this part of its height. Geometry. */
  leanIn: 0.04,
  leanOut: 0.085,
  /** Bow and handles of the body's raglan. Geometry. */
  bodyRaglan: { bow: 4 as Degrees, start: 0.36, end: 0.24 },
  /** Bow and handles of the sleeve's raglan. Geometry. */
  sleeveRaglan: { bow: 2 as Degrees, start: 0.36, end: 0.26 },
  /** Handles of the sleeve's neck edge, as parts of its chord. Geometry. */
  neckEdge: 0.36,
  /** Largest angle of that edge off its chord. Geometry. */
  neckMax: 70 as Degrees,
  /** Half the sleeve at the underarm, at most this part of the shorter raglan. Geometry. */
  sleeveWidthMost: 0.88,
  /** Wrist girth of the block = the larger of wrist + 60 and hand + 15. Practice. */
  wristOut: 60 as Mm,
  handOut: 15 as Mm,
  /** And at most this part of the sleeve's width. Geometry. */
  wristMost: 0.85,
  /** The sleeve below the underarm is at least this long. Geometry. */
  sleeveLeast: 120 as Mm,
  /** Brackets of the solves of 2.5, as parts of the raglan and of the neck edge. Geometry. */
  capLeast: 0.2,
  spanLeast: 0.35,
  /** The span where no span gives the neck edge its length. Geometry. */
  spanElse: 0.8,
} as const;

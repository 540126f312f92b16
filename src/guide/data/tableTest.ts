import type { Mm, Ratio } from "../../geometry/units.ts";

/**
 * The rib's table test (reference: rib bands, section 7; loads from memory, the rest our own). The
 * load is twice 0.0876 N per mm of one layer: the loose-fitting load of ASTM D2594, from memory.
 */
export const TEST = {
  /** How long the scrap is across, and what is marked on it. */
  scrap: 180 as Mm,
  marked: 100 as Mm,
  /** Newton for each mm of folded width. */
  loadPerMm: 0.175,
  /** Newton of a kilogram: standard gravity, exact by definition. */
  gravity: 9.80665,
  /** Ticks of the printed arc: from `least` to `most`, `step` apart. */
  ticks: { least: 110 as Mm, most: 140 as Mm, step: 5 as Mm },
  /** How far the arc runs on beyond its last tick. */
  beyond: 5 as Mm,
  /** Less than this a minute after a stretch looks loose just after dressing. */
  minute: 0.85 as Ratio,
  /** What the draft reckons the fold bears (method 5.2, limit 1.03). */
  slack: 0.03 as Ratio,
  /** How far a tick reaches outward of the arc. */
  tick: 5 as Mm,
} as const;

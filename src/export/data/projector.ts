import type { Mm } from "../../geometry/units.ts";

/**
 * How a projector's file is drawn. Ours, tried on screens: on a dark ground light lines spread, so
 * they are thick enough to be seen in a lit room and thin enough to cut along their middle.
 */
export const PROJECTOR = {
  /** 0 black to 1 white. */
  ground: 0.05,
  lines: 1,
  /** Lines of the pattern are so much thicker, and their dashes so much longer, than on paper. */
  thicker: 3,
  /** Every 50 mm a fine line, every 100 mm a stronger one with its number. */
  grid: {
    every: 50 as Mm,
    fine: { width: 0.4 as Mm, light: 0.28 },
    strong: { width: 0.8 as Mm, light: 0.45 },
  },
  /** The lines by which the projector is set: long, so that a small fault shows. */
  gauge: { length: 500 as Mm, width: 2 as Mm, tick: 12 as Mm },
  margins: { top: 90 as Mm, right: 25 as Mm, bottom: 25 as Mm, left: 60 as Mm },
} as const;

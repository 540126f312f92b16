import type { Mm } from "../../geometry/units.ts";
import type { Pixel } from "./picture.ts";

/** A mark on the table as it is seen in a picture. */
export type SeenMark = {
  /** A to G for a printed mark; any name for one that was clicked. */
  readonly name: string;
  readonly at: Pixel;
  /**
   * The middle of a circle's picture is not the picture of its middle: it is drawn aside by r². The
   * mean r² of the circles that `at` was found by, in mm²; 0 for a mark that is a point.
   */
  readonly radiusSquared: number;
  /** How far out `at` may be, in pixels (one standard deviation). */
  readonly unsure: number;
};

/** A measured distance between the middles of two marks. */
export type Distance = { readonly from: string; readonly to: string; readonly length: Mm };

/** A clicked mark may be out by this much; half a pixel is a careful click (method: STACK 7). Ours. */
const CLICK_UNSURE = 0.7;
/** A printed mark that the tool found itself. Measured on pictures made by program. */
export const FOUND_UNSURE = 0.1;

/** A mark clicked by hand. */
export const clicked = (name: string, at: Pixel): SeenMark => ({
  name,
  at,
  radiusSquared: 0,
  unsure: CLICK_UNSURE,
});

/** The six distances between the corners of a sheet, clicked in order round it. */
export const sheetDistances = (
  names: readonly [string, string, string, string],
  width: Mm,
  height: Mm,
): readonly Distance[] => {
  const [a, b, c, d] = names;
  const across = Math.hypot(width, height);
  return [
    { from: a, to: b, length: width },
    { from: b, to: c, length: height },
    { from: c, to: d, length: width },
    { from: d, to: a, length: height },
    { from: a, to: c, length: across },
    { from: b, to: d, length: across },
  ];
};

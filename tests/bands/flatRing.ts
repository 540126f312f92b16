import { measurePieces } from "../../src/drafting/finishedPieces.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { endOf, reversed, startOf, straight } from "../../src/geometry/path.ts";
import { type Point, times } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { ellipse } from "../reference/worked/fineCurves.ts";
import { DRAFTED } from "../support/workedGarment.ts";

const DOWN = Math.PI / 2;

/** Round a circle about the origin, from one angle back to a smaller one, as a neckline runs. */
const arc = (radius: number, from: number, to: number): Path =>
  reversed(ellipse(radius, radius, to, from));

/** A seam straight out from the circle. */
const outward = (from: Point): Path => straight(from, times(from, 3));

/**
 * The neck opening of a flat circular cape, cut into front, sleeve and back along its radii. On a
 * plane all is known: it is 2πr round, it turns by 2π, and every mark turns as far as it goes.
 */
export const flatRing = (
  radius: number,
  parts: { readonly back: number; readonly front: number },
) => {
  const sleeve = Math.PI - parts.back - parts.front;
  const back = arc(radius, DOWN, DOWN - parts.back);
  const front = arc(radius, DOWN, DOWN - parts.front);
  const top = arc(radius, DOWN + sleeve / 2, DOWN - sleeve / 2);
  const block: Block = {
    front: { ...DRAFTED.front, neckline: front, raglan: outward(endOf(front)) },
    back: { ...DRAFTED.back, neckline: back, raglan: outward(endOf(back)) },
    sleeve: {
      ...DRAFTED.sleeve,
      neckline: top,
      raglanFront: outward(endOf(top)),
      raglanBack: reversed(outward(startOf(top))),
    },
  };
  const finished = measurePieces(block, null);
  return { finished, wholeFront: finished.front.neckline };
};

import { measurePieces } from "../../src/drafting/finishedPieces.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { endOf, reversed, startOf, straight } from "../../src/geometry/path.ts";
import { type Point, plus, times } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { ellipse } from "../reference/worked/fineCurves.ts";
import { DRAFTED } from "../support/workedGarment.ts";

const DOWN = Math.PI / 2;

/** Round a circle about the origin, from one angle back to a smaller one, as a neckline runs. */
const arc = (radius: number, from: number, to: number): Path =>
  reversed(ellipse(radius, radius, to, from));

/** A direction turned by an angle, clockwise on the page. */
const turned = (by: number, { x, y }: Point): Point => ({
  x: x * Math.cos(by) - y * Math.sin(by),
  y: x * Math.sin(by) + y * Math.cos(by),
});

type Parts = {
  readonly back: number;
  readonly front: number;
  /** By how much the sleeve's seams are set askew: the ring then turns over them. */
  readonly askew?: { readonly back: number; readonly front: number };
};

/**
 * The neck opening of a flat circular cape, cut into front, sleeve and back along its radii. On a
 * plane all is known: it is 2πr round, it turns by 2π, and every mark turns as far as it goes.
 */
export const flatRing = (radius: number, { back: b, front: f, askew }: Parts) => {
  const sleeve = Math.PI - b - f;
  const back = arc(radius, DOWN, DOWN - b);
  const front = arc(radius, DOWN, DOWN - f);
  const top = arc(radius, DOWN + sleeve / 2, DOWN - sleeve / 2);
  const seam = (from: Point, by: number): Path =>
    straight(from, plus(from, turned(by, times(from, 2))));
  const block: Block = {
    front: { ...DRAFTED.front, neckline: front, raglan: seam(endOf(front), 0) },
    back: { ...DRAFTED.back, neckline: back, raglan: seam(endOf(back), 0) },
    sleeve: {
      ...DRAFTED.sleeve,
      neckline: top,
      raglanFront: seam(endOf(top), askew?.front ?? 0),
      raglanBack: reversed(seam(startOf(top), -(askew?.back ?? 0))),
    },
  };
  const finished = measurePieces(block, null);
  return { finished, wholeFront: finished.front.neckline };
};

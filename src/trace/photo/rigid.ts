import type { Point } from "../../geometry/point.ts";
import type { Mm, Radians } from "../../geometry/units.ts";

/** A turn and a shift that keep every length. */
export type Rigid = {
  readonly turn: Radians;
  readonly moved: (p: Point) => Point;
  /** How far the farthest pair of points stays apart, in mm. */
  readonly worst: Mm;
};

const middleOf = (points: readonly Point[]): Point => {
  let [x, y] = [0, 0];
  for (const p of points) [x, y] = [x + p.x / points.length, y + p.y / points.length];
  return { x, y };
};

/**
 * The turn and shift that bring `from` onto `to`, point by point, with the least sum of squared
 * distances (Procrustes' problem in the plane; the angle has a closed form). Needs two points.
 */
export const rigidFrom = (from: readonly Point[], to: readonly Point[]): Rigid => {
  const [p, q] = [middleOf(from), middleOf(to)];
  let [along, across] = [0, 0];
  for (const [i, a] of from.entries()) {
    const b = to[i] ?? q;
    const [ax, ay, bx, by] = [a.x - p.x, a.y - p.y, b.x - q.x, b.y - q.y];
    along += ax * bx + ay * by;
    across += ax * by - ay * bx;
  }
  const turn = Math.atan2(across, along);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const moved = ({ x, y }: Point): Point => ({
    x: q.x + c * (x - p.x) - s * (y - p.y),
    y: q.y + s * (x - p.x) + c * (y - p.y),
  });
  let worst = 0;
  for (const [i, a] of from.entries()) {
    const [there, b] = [moved(a), to[i] ?? q];
    worst = Math.max(worst, Math.hypot(there.x - b.x, there.y - b.y));
  }
  return { turn, moved, worst };
};

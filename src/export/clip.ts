import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

/** One side of a rectangle: which share of a straight lies inside of it. */
const narrow = (share: [number, number], move: number, room: number): boolean => {
  if (move === 0) return room >= 0;
  const at = room / move;
  if (move < 0) share[0] = Math.max(share[0], at);
  else share[1] = Math.min(share[1], at);
  return share[0] <= share[1];
};

/** Whether the straight from `a` to `b` comes into a rectangle. Liang and Barsky's clipping. */
export const crossesBox = (a: Point, b: Point, box: Box): boolean => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share: [number, number] = [0, 1];
  return (
    narrow(share, -dx, a.x - box.left) &&
    narrow(share, dx, box.right - a.x) &&
    narrow(share, -dy, a.y - box.top) &&
    narrow(share, dy, box.bottom - a.y)
  );
};

/** Whether any of the lines, each a run of points, comes into a rectangle. */
export const anyCrosses = (lines: readonly (readonly Point[])[], box: Box): boolean =>
  lines.some((points) =>
    points.some((to, i) => {
      const from = points[i - 1];
      return from !== undefined && crossesBox(from, to, box);
    }),
  );

/** Whether a point lies inside a closed run of points. By the lines that a ray to the right meets. */
export const isInside = (points: readonly Point[], { x, y }: Point): boolean => {
  let inside = false;
  points.forEach((to, i) => {
    const from = points[i - 1] ?? points[points.length - 1] ?? to;
    if (from.y > y === to.y > y) return;
    if (x < from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)) inside = !inside;
  });
  return inside;
};

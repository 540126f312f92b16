import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

/**
 * Whether the straight from `a` to `b` comes into a rectangle: Liang and Barsky's clipping, in bare
 * numbers, as it is asked for each line at each place that a square might stand.
 */
export const crossesBox = (a: Point, b: Point, { left, top, right, bottom }: Box): boolean => {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  // The shares of the straight between which it lies inside.
  let from = 0;
  let to = 1;
  if (dx !== 0) {
    const enters = ((dx > 0 ? left : right) - a.x) / dx;
    const leaves = ((dx > 0 ? right : left) - a.x) / dx;
    from = Math.max(from, enters);
    to = Math.min(to, leaves);
    if (from > to) return false;
  } else if (a.x < left || a.x > right) return false;
  if (dy === 0) return a.y >= top && a.y <= bottom;
  from = Math.max(from, ((dy > 0 ? top : bottom) - a.y) / dy);
  to = Math.min(to, ((dy > 0 ? bottom : top) - a.y) / dy);
  return from <= to;
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

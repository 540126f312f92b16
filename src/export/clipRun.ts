import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";

type Side = { readonly isIn: (p: Point) => boolean; readonly meet: (a: Point, b: Point) => Point };

const upright = (x: number, keep: 1 | -1): Side => ({
  isIn: (p) => keep * (p.x - x) >= 0,
  meet: (a, b) => ({ x, y: a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) }),
});

const level = (y: number, keep: 1 | -1): Side => ({
  isIn: (p) => keep * (p.y - y) >= 0,
  meet: (a, b) => ({ x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y }),
});

const sidesOf = ({ left, top, right, bottom }: Box): readonly Side[] => [
  upright(left, 1),
  upright(right, -1),
  level(top, 1),
  level(bottom, -1),
];

/** What of an area lies in a rectangle. Sutherland and Hodgman's clipping. */
export const clipArea = (points: readonly Point[], box: Box): readonly Point[] =>
  sidesOf(box).reduce<readonly Point[]>((left, { isIn, meet }) => {
    const kept: Point[] = [];
    left.forEach((to, i) => {
      const from = left[i - 1] ?? left[left.length - 1] ?? to;
      if (isIn(from) !== isIn(to)) kept.push(meet(from, to));
      if (isIn(to)) kept.push(to);
    });
    return kept;
  }, points);

/** A straight cut at one side; null where nothing of it is left. */
const cutAt = (
  ends: readonly [Point, Point] | null,
  { isIn, meet }: Side,
): readonly [Point, Point] | null => {
  if (!ends) return null;
  const [a, b] = ends;
  if (isIn(a) && isIn(b)) return ends;
  if (isIn(a)) return [a, meet(a, b)];
  return isIn(b) ? [meet(a, b), b] : null;
};

/** What of a run of points lies in a rectangle: it may fall into parts. */
export const clipRun = (points: readonly Point[], box: Box): readonly (readonly Point[])[] => {
  const sides = sidesOf(box);
  const runs: Point[][] = [];
  let under: Point[] | null = null;
  points.forEach((to, i) => {
    const from = points[i - 1];
    if (!from) return;
    const whole: readonly [Point, Point] = [from, to];
    const left = sides.reduce<readonly [Point, Point] | null>(cutAt, whole);
    if (!left) {
      under = null;
      return;
    }
    const [a, b] = left;
    if (under && a === from) under.push(b);
    else {
      under = [a, b];
      runs.push(under);
    }
    if (b !== to) under = null;
  });
  return runs;
};

import { along, apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";

/** Points along a line, one every `step` mm and its end; a ring ends where it starts. */
export const resampled = (points: readonly Point[], step: Mm): readonly Point[] => {
  const [first] = points;
  if (!first) return [];
  const taken: Point[] = [first];
  let left = step;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1] ?? first, points[i] ?? first];
    const length = apart(a, b);
    let at = left;
    while (at <= length && length > 0) {
      taken.push(along(a, b, at / length));
      at += step;
    }
    left = at - length;
  }
  const last = points[points.length - 1] ?? first;
  const end = taken[taken.length - 1] ?? first;
  if (apart(end, last) > step / 2) taken.push(last);
  return taken;
};

/** Every point the mean of those within `reach` places of it; ends of an open line stay. */
export const smoothed = (
  points: readonly Point[],
  reach: number,
  closed: boolean,
): readonly Point[] => {
  const count = points.length;
  return points.map((p, i) => {
    const room = closed ? reach : Math.min(reach, i, count - 1 - i);
    let [x, y] = [0, 0];
    for (let k = i - room; k <= i + room; k++) {
      const q = points[(k + count) % count] ?? p;
      x += q.x;
      y += q.y;
    }
    return { x: x / (2 * room + 1), y: y / (2 * room + 1) };
  });
};

/** The unit vector across a line at a place, to its left as it runs; from points `reach` away. */
export const acrossAt = (points: readonly Point[], i: number, reach: number): Point => {
  const a = points[Math.max(0, i - reach)] ?? { x: 0, y: 0 };
  const b = points[Math.min(points.length - 1, i + reach)] ?? a;
  const size = apart(a, b) || 1;
  return { x: (b.y - a.y) / size, y: -(b.x - a.x) / size };
};

export const middleValue = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

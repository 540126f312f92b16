import { pointAt } from "../geometry/curve.ts";
import type { Point } from "../geometry/point.ts";
import type { Cubic, Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";

const bend = (a: Point, b: Point, c: Point): number => {
  const [x, y] = [a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y];
  return Math.sqrt(x * x + y * y);
};

/**
 * How many equal steps in t keep a cubic's chords within `within` mm of it. A chord strays by at
 * most |B''|/8n², and |B''| is at most six times the larger bend of three handles in a row.
 */
const stepsOf = (c: Cubic, within: Mm): number => {
  const most = Math.max(
    bend(c.start, c.startHandle, c.endHandle),
    bend(c.startHandle, c.endHandle, c.end),
  );
  return Math.max(1, Math.ceil(Math.sqrt((6 * most) / (8 * within))));
};

/** A path as points with straights between them, nowhere further than `within` mm from it. */
export const flattened = (path: Path, within: Mm): readonly Point[] => {
  const points: Point[] = [path[0].start];
  for (const segment of path) {
    if (segment.kind === "cubic") {
      const steps = stepsOf(segment, within);
      for (let i = 1; i < steps; i++) points.push(pointAt(segment, i / steps));
    }
    points.push(segment.end);
  }
  return points;
};

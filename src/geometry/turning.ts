import { directionAt } from "./curve.ts";
import { type Point, turn } from "./point.ts";
import type { Path } from "./segment.ts";
import type { Radians } from "./units.ts";

const EIGHTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8] as const;

/**
 * How far a path turns in all: the sum of turns between its tangents at each eighth of each
 * segment (method 5.1). Where `from` is given the first turn is from that direction.
 */
export const turningOf = (path: Path, from?: Point): Radians => {
  let before = from;
  let sum = 0;
  for (const segment of path) {
    for (const eighth of EIGHTHS) {
      const next = directionAt(segment, eighth / 8);
      if (before) sum += turn(before, next);
      before = next;
    }
  }
  return sum;
};

import { type Point, turn } from "../../geometry/point.ts";
import { type Degrees, type Mm, radians } from "../../geometry/units.ts";

/** A corner turns by at least this much; a tight neckline turns by less over the same arms. Ours. */
const LEAST_TURN: Degrees = 30;
/** Directions are those of the points from ARM_FROM to ARM_TO mm away to both sides. */
const ARM_FROM: Mm = 2;
const ARM_TO: Mm = 11;
/** Two corners are at least this far apart. */
const APART: Mm = 14;

const wayOf = (a: Point, b: Point): Point => ({ x: b.x - a.x, y: b.y - a.y });

/** How sharply a closed line turns at each of its points, which are `step` mm apart. */
const turnsOf = (ring: readonly Point[], step: Mm): readonly number[] => {
  const [near, far] = [Math.round(ARM_FROM / step), Math.round(ARM_TO / step)];
  const at = (i: number): Point => ring[(i + ring.length) % ring.length] ?? { x: 0, y: 0 };
  return ring.map((_, i) =>
    turn(wayOf(at(i - far), at(i - near)), wayOf(at(i + near), at(i + far))),
  );
};

/**
 * Places in a closed line of evenly spaced points at which it has a corner, in order. The line is
 * to be smooth to about a millimetre.
 */
export const cornersOf = (ring: readonly Point[], step: Mm): readonly number[] => {
  const turns = turnsOf(ring, step);
  const places = turns
    .map((angle, i) => ({ i, size: Math.abs(angle) }))
    .filter(({ size }) => size >= radians(LEAST_TURN))
    .sort((a, b) => b.size - a.size);
  const kept: number[] = [];
  for (const { i } of places) {
    const clear = kept.every((k) => {
      const between = Math.abs(i - k);
      return Math.min(between, ring.length - between) * step >= APART;
    });
    if (clear) kept.push(i);
  }
  return kept.sort((a, b) => a - b);
};

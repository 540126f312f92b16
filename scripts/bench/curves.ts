import { derivativeAt, secondDerivativeAt } from "../../src/geometry/curve.ts";
import { point } from "../../src/geometry/point.ts";
import { type Cubic, cubic } from "../../src/geometry/segment.ts";

/** The same numbers every time: a bench is compared with the one before it. */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

/** What a length or a point must be right to when speeds are compared. */
export const EQUAL = 1e-6; // mm

const COUNT = 200;
const SHORTEST = 50; // mm between the ends
const LONGEST = 600;
/** As tight as the edge of a sewn garment is drawn; tighter turns are kept apart. */
const SMOOTH_RADIUS = 25; // mm
const STEPS = 512;

/** The least radius of a curve, in mm. */
const leastRadius = (c: Cubic): number => {
  let least = Infinity;
  for (let i = 0; i <= STEPS; i++) {
    const [d, dd] = [derivativeAt(c, i / STEPS), secondDerivativeAt(c, i / STEPS)];
    const bent = Math.abs(d.x * dd.y - d.y * dd.x);
    if (bent > 0) least = Math.min(least, Math.hypot(d.x, d.y) ** 3 / bent);
  }
  return least;
};

/** How far handles stray, as parts of the chord: as necklines and raglans have it; wild; tight turns. */
const BENDS = [0.35, 1.2, 3] as const;

/** Curves of 50 to 600 mm, a third of each kind. */
const drawCurves = (): readonly Cubic[] => {
  const chance = seeded(7);
  return Array.from({ length: COUNT }, (_, i) => {
    const long = SHORTEST + (LONGEST - SHORTEST) * chance();
    const bend = BENDS[i % BENDS.length] ?? BENDS[0];
    const off = (): number => (2 * chance() - 1) * bend * long;
    return cubic(
      point(0, 0),
      point(long / 3 + off() / 3, off() / 2),
      point((2 * long) / 3 + off() / 3, off() / 2),
      point(long, 0),
    );
  });
};

export const CURVES = drawCurves();
export const SMOOTH = CURVES.map((c) => leastRadius(c) >= SMOOTH_RADIUS);
export const SMOOTH_CURVES = CURVES.filter((_, i) => SMOOTH[i]);

const PANELS = 32_768;

/** Length by Simpson's rule on 32,768 panels: slow, plain, and unlike anything that is timed. */
export const referenceLength = (c: Cubic, from = 0, to = 1): number => {
  const speed = (t: number): number => {
    const d = derivativeAt(c, t);
    return Math.sqrt(d.x * d.x + d.y * d.y);
  };
  const step = (to - from) / PANELS;
  let sum = speed(from) + speed(to);
  for (let i = 1; i < PANELS; i++) sum += (i % 2 === 0 ? 2 : 4) * speed(from + i * step);
  return (sum * step) / 3;
};

import { simpson } from "./simpson.ts";

/**
 * Lines read from path data and measured without any of the program's code: what a test holds the
 * program's own lengths against. Millimetres.
 */
export type Spot = readonly [number, number];
/** Two spots are a straight, four a cubic. */
export type Stretch = readonly [Spot, Spot] | readonly [Spot, Spot, Spot, Spot];

/** Absolute M, L and C, as the contract has them: numbers after a mark, in pairs. */
export const stretchesOf = (data: string): readonly Stretch[] => {
  const found: Stretch[] = [];
  let from: Spot = [Number.NaN, Number.NaN];
  for (const [, mark = "", rest = ""] of data.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const [a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN, ...more] = rest
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    if (more.length > 0) throw new Error(`Too many numbers after ${mark} in ${data}`);
    if (mark === "L") found.push([from, [a, b]]);
    else if (mark === "C") found.push([from, [a, b], [c, d], [e, f]]);
    else if (mark !== "M") throw new Error(`The mark ${mark} in ${data}`);
    from = mark === "C" ? [e, f] : [a, b];
  }
  return found;
};

const between = (a: Spot, b: Spot, t: number): Spot => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
];
const away = (a: Spot, b: Spot): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** De Casteljau's steps: the spot at t, and three times the last chord, which is dB/dt. */
const stepsTo = (stretch: Stretch, t: number): { readonly spot: Spot; readonly pace: Spot } => {
  const [p, q] = stretch;
  if (stretch.length === 2) return { spot: between(p, q, t), pace: [q[0] - p[0], q[1] - p[1]] };
  const [, , r, e] = stretch;
  const [pq, qr, re] = [between(p, q, t), between(q, r, t), between(r, e, t)];
  const [one, two] = [between(pq, qr, t), between(qr, re, t)];
  return {
    spot: between(one, two, t),
    pace: [3 * (two[0] - one[0]), 3 * (two[1] - one[1])],
  };
};

/** Length of one stretch between two parameters, to a ten-thousand-millionth of a millimetre. */
const lengthOfStretch = (stretch: Stretch, from = 0, to = 1): number => {
  if (stretch.length === 2) return (to - from) * away(stretch[0], stretch[1]);
  return simpson((t) => Math.hypot(...stepsTo(stretch, t).pace), from, to, 1e-10);
};

export const lengthOfData = (data: string): number =>
  stretchesOf(data).reduce((sum, stretch) => sum + lengthOfStretch(stretch), 0);

/** The same line after the wash: what is left across and down. */
export const lengthAfter = (data: string, across: number, down: number): number =>
  stretchesOf(data)
    .map((stretch) => stretch.map(([x, y]): Spot => [x * across, y * down]))
    .reduce((sum, [p = NO_SPOT, q = NO_SPOT, r, e]) => {
      return sum + lengthOfStretch(r && e ? [p, q, r, e] : [p, q]);
    }, 0);
const NO_SPOT: Spot = [Number.NaN, Number.NaN];

export const firstSpot = (stretches: readonly Stretch[]): Spot =>
  stretches[0]?.[0] ?? [Number.NaN, Number.NaN];
export const lastSpot = (stretches: readonly Stretch[]): Spot =>
  stretches.at(-1)?.at(-1) ?? [Number.NaN, Number.NaN];

/** A spot on a line, and which way is outward there: to the left of travel. */
export type Sample = { readonly spot: Spot; readonly outward: Spot };

/** Spots about `step` mm apart all along, both ends among them. */
export const samplesOf = (stretches: readonly Stretch[], step: number): readonly Sample[] =>
  stretches.flatMap((stretch) => {
    const spots = stretch.map((spot) => spot);
    const rough = spots.slice(1).reduce((sum, spot, i) => sum + away(spots[i] ?? spot, spot), 0);
    const parts = Math.max(stretch.length === 2 ? 1 : 4, Math.ceil(rough / step));
    return Array.from({ length: parts + 1 }, (_, i) => {
      const { spot, pace } = stepsTo(stretch, i / parts);
      const speed = Math.hypot(...pace);
      const outward: Spot = speed > 0 ? [pace[1] / speed, -pace[0] / speed] : [NaN, NaN];
      return { spot, outward };
    });
  });

/** Where a line has a corner between two of its stretches, by more than a hundredth of a radian. */
export const cornersWithin = (stretches: readonly Stretch[]): readonly Spot[] =>
  stretches.slice(1).flatMap((next, i) => {
    const before = stretches[i] ?? next;
    const [[ax, ay], [bx, by]] = [stepsTo(before, 1).pace, stepsTo(next, 0).pace];
    const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
    return turn > 0.01 ? [next[0]] : [];
  });

/** A run of spots joined by straights, kept so that distances to it are quick to find. */
export type Polyline = Float64Array;

export const polylineOf = (stretches: readonly Stretch[], step: number): Polyline =>
  Float64Array.from(
    stretches.flatMap((stretch) =>
      stretch.length === 2
        ? stretch.flatMap((spot) => [...spot])
        : samplesOf([stretch], step).flatMap(({ spot }) => [...spot]),
    ),
  );

/** How far a spot lies from the nearest straight of a polyline. */
export const distanceTo = (polyline: Polyline, [x, y]: Spot): number => {
  let least = Infinity;
  for (let i = 0; i + 3 < polyline.length; i += 2) {
    const [ax, ay] = [polyline[i] ?? 0, polyline[i + 1] ?? 0];
    const [ux, uy] = [(polyline[i + 2] ?? 0) - ax, (polyline[i + 3] ?? 0) - ay];
    const size = ux * ux + uy * uy;
    const share = size > 0 ? ((x - ax) * ux + (y - ay) * uy) / size : 0;
    const t = Math.min(1, Math.max(0, share));
    const [dx, dy] = [ax + ux * t - x, ay + uy * t - y];
    least = Math.min(least, dx * dx + dy * dy);
  }
  return Math.sqrt(least);
};

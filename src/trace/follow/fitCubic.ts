import { derivativeAt, directionAt, pointAt, secondDerivativeAt } from "../../geometry/curve.ts";
import { apart, dot, out, type Point, stepped } from "../../geometry/point.ts";
import { type Cubic, cubic } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { solveLinear } from "../algebra/linear.ts";

/** How a fitted cubic ends: where the points let it, or at a point along a unit vector. */
export type End =
  | { readonly kind: "free" }
  | { readonly kind: "held"; readonly at: Point; readonly way: Point };

export type Fit = {
  readonly cubic: Cubic;
  /** How far the farthest point lies from it, and which point that is. */
  readonly error: Mm;
  readonly worst: number;
};

/** Fits and parameters are worked out in turn, so many times at most, until no handle moves. */
const ROUNDS = 80;
const AT_REST: Mm = 0.001;
/** Rounds in which misses count in all directions, until the curve lies near the points. */
const ROUGH_ROUNDS = 4;
/** After them, a miss along the curve counts this much of one across. */
const ALONG = 0.1;

/** Unknowns of one end in x and in y, and what is known of it, for weights of point and handle. */
type Terms = {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly knownX: number;
  readonly knownY: number;
};

const termsOf = (end: End, point: number, handle: number, sign: number): Terms => {
  if (end.kind === "free") {
    return { x: [point, 0, handle, 0], y: [0, point, 0, handle], knownX: 0, knownY: 0 };
  }
  const both = point + handle;
  return {
    x: [sign * handle * end.way.x],
    y: [sign * handle * end.way.y],
    knownX: both * end.at.x,
    knownY: both * end.at.y,
  };
};

/** One row of the equations added to the normal equations. */
const addRow = (
  normal: number[][],
  right: number[],
  row: readonly number[],
  value: number,
): void => {
  for (let i = 0; i < row.length; i++) {
    const line = normal[i];
    for (let k = 0; line && k < row.length; k++) {
      line[k] = (line[k] ?? 0) + (row[i] ?? 0) * (row[k] ?? 0);
    }
    right[i] = (right[i] ?? 0) + (row[i] ?? 0) * value;
  }
};

/** The end and handle that some unknowns tell; null where a held handle would run backward. */
const endOf = (end: End, unknowns: readonly number[], sign: number) => {
  const [a = 0, b = 0, c = 0, d = 0] = unknowns;
  if (end.kind === "free") return { point: { x: a, y: b }, handle: { x: c, y: d } };
  return a > 0 ? { point: end.at, handle: stepped(end.at, end.way, sign * a) } : null;
};

/** The cubic of least squares for points at given parameters; null where they do not fix one. */
const fitAt = (
  points: readonly Point[],
  at: readonly number[],
  ends: { readonly start: End; readonly end: End },
  across: readonly Point[] | null,
): Cubic | null => {
  const { start, end } = ends;
  const first = start.kind === "free" ? 4 : 1;
  const count = first + (end.kind === "free" ? 4 : 1);
  const normal = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  const right = new Array<number>(count).fill(0);
  for (const [i, p] of points.entries()) {
    const t = at[i] ?? 0;
    const u = 1 - t;
    const one = termsOf(start, u * u * u, 3 * u * u * t, 1);
    const two = termsOf(end, t * t * t, 3 * u * t * t, -1);
    const x = [...one.x, ...two.x];
    const y = [...one.y, ...two.y];
    const [px, py] = [p.x - one.knownX - two.knownX, p.y - one.knownY - two.knownY];
    // Both ends stay where their points are: nothing else holds them along the curve.
    const n = i > 0 && i < points.length - 1 ? across?.[i] : undefined;
    if (!n) {
      addRow(normal, right, x, px);
      addRow(normal, right, y, py);
      continue;
    }
    // Misses across the curve count in full, misses along it hardly: a parameter mends those.
    const way = (nx: number, ny: number): void =>
      addRow(
        normal,
        right,
        x.map((v, k) => nx * v + ny * (y[k] ?? 0)),
        nx * px + ny * py,
      );
    way(n.x, n.y);
    way(-ALONG * n.y, ALONG * n.x);
  }
  const unknowns = solveLinear(normal, right);
  const from = unknowns && endOf(start, unknowns.slice(0, first), 1);
  const to = unknowns && endOf(end, unknowns.slice(first), -1);
  return from && to ? cubic(from.point, from.handle, to.handle, to.point) : null;
};

/** Lengths along the points as parts of the whole. */
const byChords = (points: readonly Point[]): readonly number[] => {
  const sums = [0];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    sums.push((sums[i - 1] ?? 0) + (a && b ? apart(a, b) : 0));
  }
  const whole = sums[sums.length - 1] || 1;
  return sums.map((sum) => sum / whole);
};

/** A parameter moved towards the place nearest to its point, by one step of Newton's rule. */
const nearer = (curve: Cubic, p: Point, t: number): number => {
  const at = pointAt(curve, t);
  const first = derivativeAt(curve, t);
  const second = secondDerivativeAt(curve, t);
  const [x, y] = [at.x - p.x, at.y - p.y];
  const slope = first.x * first.x + first.y * first.y + x * second.x + y * second.y;
  if (!(slope > 0)) return t;
  return Math.min(1, Math.max(0, t - (x * first.x + y * first.y) / slope));
};

const errorOf = (curve: Cubic, points: readonly Point[], at: readonly number[]): Fit => {
  let [error, worst] = [0, 0];
  for (const [i, p] of points.entries()) {
    const off = apart(pointAt(curve, at[i] ?? 0), p);
    if (off > error) [error, worst] = [off, i];
  }
  return { cubic: curve, error, worst };
};

const movedBy = (a: Cubic, b: Cubic): Mm =>
  apart(a.startHandle, b.startHandle) + apart(a.endHandle, b.endHandle);

/** Curve and parameters worked out in turn; `sure` where misses along the curve count less. */
const workedOut = (
  points: readonly Point[],
  ends: { readonly start: End; readonly end: End },
  sure: boolean,
): Fit | null => {
  let at = byChords(points);
  let curve = fitAt(points, at, ends, null);
  for (let round = 0; curve && round < ROUNDS; round++) {
    const now: Cubic = curve;
    at = at.map((t, i) => {
      const p = points[i];
      return p && i > 0 && i < points.length - 1 ? nearer(now, p, t) : t;
    });
    const isRough = !sure || round < ROUGH_ROUNDS;
    const across = isRough ? null : at.map((t) => out(directionAt(now, t)));
    curve = fitAt(points, at, ends, across) ?? now;
    if (round > ROUGH_ROUNDS && movedBy(now, curve) < AT_REST) break;
  }
  if (!curve) return null;
  const last: Cubic = curve;
  const feet = at.map((t, i) => {
    const p = points[i];
    return p ? nearer(last, p, nearer(last, p, t)) : t;
  });
  return errorOf(last, points, feet);
};

const TENTHS = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1] as const;

/** Whether a curve turns back on itself: along a nearly straight run nothing else holds its handles. */
const turnsBack = (curve: Cubic, points: readonly Point[]): boolean => {
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last) return true;
  const chord = { x: last.x - first.x, y: last.y - first.y };
  return TENTHS.some((t) => dot(derivativeAt(curve, t), chord) < 0);
};

/**
 * One cubic through points in order, by least squares, parameters and curve worked out in turn
 * (Schneider, Graphics Gems, 1990, from memory; here the ends may be free too, and misses across the
 * curve count more than those along it). Null where the points do not fix one.
 */
export const fitCubic = (points: readonly Point[], start: End, end: End): Fit | null => {
  const fit = workedOut(points, { start, end }, true);
  if (fit && !turnsBack(fit.cubic, points)) return fit;
  return workedOut(points, { start, end }, false);
};

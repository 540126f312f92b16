import { derivativeAt, pointAt } from "./curve.ts";
import { apart, cross, minus, type Point, plus, times } from "./point.ts";
import type { Path, Segment } from "./segment.ts";

/** Steps in t to a cubic when it is drawn as a polyline to look for crossings (method 1.6). */
const STEPS = 64;
/** A refined parameter that moves by less has come to rest (method 1.6). */
const AT_REST = 1e-14;
const ROUNDS = 30;
/** Straights that touch at their very ends cross there, whatever rounding says of it. */
const TOUCH = 1e-9;

/** A place on a path: which segment, and where on it. */
export type PlaceOn = { readonly index: number; readonly t: number };
export type Crossing = { readonly point: Point; readonly on: PlaceOn; readonly other: PlaceOn };

type Chord = {
  readonly from: Point;
  readonly to: Point;
  readonly index: number;
  readonly t: number;
  readonly step: number;
};

/** A path as chords: one to a straight, 64 to a cubic. */
export const chordsOf = (path: Path): readonly Chord[] =>
  path.flatMap((segment, index) => {
    const steps = segment.kind === "line" ? 1 : STEPS;
    const points = Array.from({ length: steps + 1 }, (_, i) => pointAt(segment, i / steps));
    return points.slice(1).map((to, i) => ({
      from: points[i] ?? to,
      to,
      index,
      t: i / steps,
      step: 1 / steps,
    }));
  });

const isShare = (s: number): boolean => s >= -TOUCH && s <= 1 + TOUCH;

/** Where two straights cross, as shares of each; null where they are parallel or miss. */
export const sharesOfCrossing = (
  a: { readonly from: Point; readonly to: Point },
  b: { readonly from: Point; readonly to: Point },
): readonly [number, number] | null => {
  const [u, v] = [minus(a.to, a.from), minus(b.to, b.from)];
  const size = cross(u, v);
  if (size === 0) return null;
  const w = minus(b.from, a.from);
  const [s, t] = [cross(w, v) / size, cross(w, u) / size];
  return isShare(s) && isShare(t) ? [s, t] : null;
};

const boxesMiss = (a: Chord, b: Chord): boolean =>
  Math.max(a.from.x, a.to.x) + TOUCH < Math.min(b.from.x, b.to.x) ||
  Math.max(b.from.x, b.to.x) + TOUCH < Math.min(a.from.x, a.to.x) ||
  Math.max(a.from.y, a.to.y) + TOUCH < Math.min(b.from.y, b.to.y) ||
  Math.max(b.from.y, b.to.y) + TOUCH < Math.min(a.from.y, a.to.y);

type Reach = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** The rectangle round chords, and a touch more. */
const reachOf = (chords: readonly Chord[]): Reach => {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { from, to } of chords) {
    left = Math.min(left, from.x, to.x);
    top = Math.min(top, from.y, to.y);
    right = Math.max(right, from.x, to.x);
    bottom = Math.max(bottom, from.y, to.y);
  }
  return { left: left - TOUCH, top: top - TOUCH, right: right + TOUCH, bottom: bottom + TOUCH };
};

/**
 * The chords that come into a rectangle. Two long edges meet near a corner: without this every chord of
 * one is held against every chord of the other, millions where a block was traced in short parts.
 */
const chordsIn = (chords: readonly Chord[], { left, top, right, bottom }: Reach) =>
  chords.filter(
    ({ from, to }) =>
      Math.max(from.x, to.x) >= left &&
      Math.min(from.x, to.x) <= right &&
      Math.max(from.y, to.y) >= top &&
      Math.min(from.y, to.y) <= bottom,
  );

/** Newton's rule in both parameters, each held to its segment. */
const refined = (a: Segment, b: Segment, s: number, t: number): readonly [number, number] => {
  let [u, v] = [s, t];
  for (let round = 0; round < ROUNDS; round++) {
    const miss = minus(pointAt(b, v), pointAt(a, u));
    const [da, db] = [derivativeAt(a, u), derivativeAt(b, v)];
    const size = cross(da, db);
    if (size === 0) break;
    const [du, dv] = [cross(miss, db) / size, cross(miss, da) / size];
    u = Math.min(1, Math.max(0, u + du));
    v = Math.min(1, Math.max(0, v + dv));
    if (Math.abs(du) < AT_REST && Math.abs(dv) < AT_REST) break;
  }
  return [u, v];
};

/** Of the crossings of two paths the one nearest `near`, or null (method 1.6). */
export const crossingNearest = (path: Path, other: Path, near: Point): Crossing | null => {
  let best: { a: Chord; b: Chord; s: number; t: number; away: number } | null = null;
  const all = chordsOf(other);
  const chords = chordsIn(chordsOf(path), reachOf(all));
  const others = chordsIn(all, reachOf(chords));
  for (const a of chords) {
    for (const b of others) {
      if (boxesMiss(a, b)) continue;
      const shares = sharesOfCrossing(a, b);
      if (!shares) continue;
      const at = plus(a.from, times(minus(a.to, a.from), shares[0]));
      const away = apart(at, near);
      if (!best || away < best.away) best = { a, b, s: shares[0], t: shares[1], away };
    }
  }
  if (!best) return null;
  const { a, b } = best;
  const [on, onOther] = [path[a.index] ?? path[0], other[b.index] ?? other[0]];
  const [u, v] = refined(on, onOther, a.t + best.s * a.step, b.t + best.t * b.step);
  return {
    point: pointAt(on, u),
    on: { index: a.index, t: u },
    other: { index: b.index, t: v },
  };
};

/** Where the lines through `p` along `u` and through `q` along `v` meet; null where parallel. */
export const meeting = (p: Point, u: Point, q: Point, v: Point): Point | null => {
  const size = cross(u, v);
  if (Math.abs(size) < 1e-12) return null;
  return plus(p, times(u, cross(minus(q, p), v) / size));
};

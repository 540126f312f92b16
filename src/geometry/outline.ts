import { chordsOf, sharesOfCrossing } from "./intersect.ts";
import { along, minus, norm, type Point } from "./point.ts";
import type { Path, Segment } from "./segment.ts";
import type { Mm } from "./units.ts";

/** Twice the area between a segment and the origin; exact (Green's theorem on the cubic). */
const twiceSwept = (s: Segment): number => {
  const { start: p, end: e } = s;
  if (s.kind === "line") return p.x * e.y - e.x * p.y;
  const { startHandle: q, endHandle: r } = s;
  const swept = (a: Point, b: Point): number => a.x * b.y - b.x * a.y;
  return (
    (6 * swept(p, q) +
      3 * swept(p, r) +
      swept(p, e) +
      3 * swept(q, r) +
      3 * swept(q, e) +
      6 * swept(r, e)) /
    10
  );
};

/** Area inside a closed path, in mm²; positive where it runs clockwise on the page. Exact. */
export const areaOf = (path: Path): number => {
  let twice = 0;
  for (const segment of path) twice += twiceSwept(segment);
  return twice / 2;
};

export type Box = {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
};

/** Where the coordinate of a cubic stands still, in t. */
const extremes = (p: number, q: number, r: number, e: number): readonly number[] => {
  const [a, b, c] = [e - 3 * r + 3 * q - p, 2 * (r - 2 * q + p), q - p];
  if (Math.abs(a) < 1e-12) return b === 0 ? [] : [-c / b];
  const inside = b * b - 4 * a * c;
  if (inside < 0) return [];
  const root = Math.sqrt(inside);
  return [(-b + root) / (2 * a), (-b - root) / (2 * a)];
};

const valuesOf = (s: Segment, of: (p: Point) => number): readonly number[] => {
  const ends = [of(s.start), of(s.end)];
  if (s.kind === "line") return ends;
  const [p, q, r, e] = [of(s.start), of(s.startHandle), of(s.endHandle), of(s.end)];
  const inner = extremes(p, q, r, e)
    .filter((t) => t > 0 && t < 1)
    .map((t) => {
      const u = 1 - t;
      return u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * e;
    });
  return [...ends, ...inner];
};

/** The smallest upright rectangle round a path. Exact. */
export const boundsOf = (path: Path): Box => {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const segment of path) {
    for (const x of valuesOf(segment, (p) => p.x))
      [left, right] = [Math.min(left, x), Math.max(right, x)];
    for (const y of valuesOf(segment, (p) => p.y))
      [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  return { left, top, right, bottom };
};

/** A touch this near a shared corner is the corner itself, not a crossing. */
const SHARED: Mm = 1e-6;

type Placed = {
  readonly from: Point;
  readonly to: Point;
  readonly place: number;
  readonly left: Mm;
  readonly right: Mm;
};

/** The chords of a path from left to right, so that each is held only against those beside it. */
const fromLeftToRight = (path: Path): readonly Placed[] =>
  chordsOf(path)
    .filter(({ from, to }) => norm(minus(to, from)) > SHARED)
    .map(({ from, to }, place) => ({
      from,
      to,
      place,
      left: Math.min(from.x, to.x),
      right: Math.max(from.x, to.x),
    }))
    .sort((a, b) => a.left - b.left);

/**
 * A point at which a closed path crosses itself, or null. Looked for on 64 chords a cubic
 * (method 1.6): a loop smaller than a chord is not seen.
 */
export const crossesItself = (path: Path): Point | null => {
  const chords = fromLeftToRight(path);
  const last = chords.length - 1;
  for (const [i, a] of chords.entries()) {
    for (let k = i + 1; k < chords.length; k++) {
      const b = chords[k];
      if (!b || b.left > a.right) break;
      const between = Math.abs(a.place - b.place);
      if (between === 1 || between === last) continue;
      if (Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y)) continue;
      if (Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)) continue;
      const shares = sharesOfCrossing(a, b);
      if (shares) return along(a.from, a.to, shares[0]);
    }
  }
  return null;
};

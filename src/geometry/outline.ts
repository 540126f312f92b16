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

/** The value of one coordinate of a cubic at `t` where that lies inside; no value elsewhere. */
const inside = (p: number, q: number, r: number, e: number, t: number): number => {
  if (!(t > 0 && t < 1)) return -Infinity;
  const u = 1 - t;
  return u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * e;
};

/** The greatest value of one coordinate of a cubic: at an end, or where it stands still. */
const greatest = (p: number, q: number, r: number, e: number): number => {
  const atEnds = Math.max(p, e);
  // No curve leaves the hull of its ends and handles.
  if (q <= atEnds && r <= atEnds) return atEnds;
  const a = e - 3 * r + 3 * q - p;
  const b = 2 * (r - 2 * q + p);
  const c = q - p;
  const under = b * b - 4 * a * c;
  if (under < 0) return atEnds;
  // The root of larger size first, the other by the product: no loss by cancelling where t³ is all
  // but nil, as in a quadratic that was raised to a cubic.
  const far = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  return Math.max(atEnds, inside(p, q, r, e, far / a), inside(p, q, r, e, c / far));
};

/** The smallest upright rectangle round a path. Exact. */
export const boundsOf = (path: Path): Box => {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const s of path) {
    const { start: p, end: e } = s;
    if (s.kind === "line") {
      left = Math.min(left, p.x, e.x);
      top = Math.min(top, p.y, e.y);
      right = Math.max(right, p.x, e.x);
      bottom = Math.max(bottom, p.y, e.y);
    } else {
      const { startHandle: q, endHandle: r } = s;
      left = Math.min(left, -greatest(-p.x, -q.x, -r.x, -e.x));
      top = Math.min(top, -greatest(-p.y, -q.y, -r.y, -e.y));
      right = Math.max(right, greatest(p.x, q.x, r.x, e.x));
      bottom = Math.max(bottom, greatest(p.y, q.y, r.y, e.y));
    }
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

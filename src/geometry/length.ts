import { type GaussRule, MOST_NODES, ruleOf } from "./gauss.ts";
import { apart } from "./point.ts";
import type { Cubic, Path, Segment } from "./segment.ts";
import { AT_LENGTH, LENGTH_ERROR } from "./tolerance.ts";
import type { Mm } from "./units.ts";

/**
 * dB/dt of the cubic that is being measured, as a quadratic in t read as a complex number x + iy,
 * and its roots. The speed |dB/dt| is smooth but for those roots, so they say how many nodes a
 * length takes. One place for all curves: it is filled and read within one call of this file, some
 * three hundred times a draft, and a new object each time would cost more than the sums.
 */
const speed = new Float64Array(11);
const [AX, AY, BX, BY, CX, CY] = [0, 1, 2, 3, 4, 5] as const;
/** Real and imaginary parts of the roots; the first counts only where ROOTS is 1 or more. */
const [RE1, IM1, RE2, IM2, ROOTS] = [6, 7, 8, 9, 10] as const;

/** Below this a leading term cannot be told from rounding, and its root lies far away. */
const NEGLIGIBLE = 1e-13;
/** A root so near the real line, in t, is a cusp: the speed is |t - root| times a smooth factor. */
const CUSP = 1e-9;
/** Parts of a curve shorter than this, in t, cannot change a length by LENGTH_ERROR. */
const LEAST_PART = 1e-10;

const putRoots = (count: 0 | 1 | 2, re1: number, im1: number, re2: number, im2: number): void => {
  speed[RE1] = re1;
  speed[IM1] = im1;
  speed[RE2] = re2;
  speed[IM2] = im2;
  speed[ROOTS] = count;
};

/** Fills `speed` for a cubic. */
const look = ({ start: p, startHandle: q, endHandle: r, end: e }: Cubic): void => {
  const ax = 3 * (e.x - 3 * r.x + 3 * q.x - p.x);
  const ay = 3 * (e.y - 3 * r.y + 3 * q.y - p.y);
  const bx = 6 * (r.x - 2 * q.x + p.x);
  const by = 6 * (r.y - 2 * q.y + p.y);
  const cx = 3 * (q.x - p.x);
  const cy = 3 * (q.y - p.y);
  speed[AX] = ax;
  speed[AY] = ay;
  speed[BX] = bx;
  speed[BY] = by;
  speed[CX] = cx;
  speed[CY] = cy;
  // The roots of a quadratic with complex factors: the larger first, the other by their product.
  const a2 = ax * ax + ay * ay;
  const b2 = bx * bx + by * by;
  const c2 = cx * cx + cy * cy;
  if (a2 <= NEGLIGIBLE * (b2 + c2)) {
    if (b2 <= NEGLIGIBLE * c2) putRoots(0, 0, 0, 0, 0);
    else putRoots(1, -(cx * bx + cy * by) / b2, -(cy * bx - cx * by) / b2, 0, 0);
    return;
  }
  // d = √(b² - 4ac), then q = -(b ± d) / 2 with the sign that does not cancel.
  const x = bx * bx - by * by - 4 * (ax * cx - ay * cy);
  const y = 2 * bx * by - 4 * (ax * cy + ay * cx);
  const size = Math.sqrt(x * x + y * y);
  const far = Math.sqrt((size + Math.abs(x)) / 2);
  const near = far === 0 ? 0 : Math.abs(y) / (2 * far);
  const dx = x >= 0 ? far : near;
  const dy = (x >= 0 ? near : far) * (y < 0 ? -1 : 1);
  const sign = bx * dx + by * dy >= 0 ? 1 : -1;
  const qx = -(bx + sign * dx) / 2;
  const qy = -(by + sign * dy) / 2;
  const q2 = qx * qx + qy * qy;
  const re1 = (qx * ax + qy * ay) / a2;
  const im1 = (qy * ax - qx * ay) / a2;
  if (q2 === 0) putRoots(2, re1, im1, re1, im1);
  else putRoots(2, re1, im1, (cx * qx + cy * qy) / q2, (cy * qx - cx * qy) / q2);
};

/** The integral of the speed over [from, to] by one rule. */
const integrate = (from: number, to: number, { nodes, weights }: GaussRule): Mm => {
  const ax = speed[AX] ?? 0;
  const ay = speed[AY] ?? 0;
  const bx = speed[BX] ?? 0;
  const by = speed[BY] ?? 0;
  const cx = speed[CX] ?? 0;
  const cy = speed[CY] ?? 0;
  const half = (to - from) / 2;
  const mid = (from + to) / 2;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const t = mid + half * (nodes[i] ?? 0);
    const x = (ax * t + bx) * t + cx;
    const y = (ay * t + by) * t + cy;
    sum += (weights[i] ?? 0) * Math.sqrt(x * x + y * y);
  }
  return sum * half;
};

/**
 * Half the sum of the ways from both ends of [from, to] to a root, over half its length: the longer
 * half axis of the Bernstein ellipse through the root. Infinite where the root does not matter.
 */
const halfAxis = (re: number, im: number, from: number, to: number): number => {
  const isCusp = Math.abs(im) < CUSP;
  if (isCusp && (Math.abs(re - from) < CUSP || Math.abs(re - to) < CUSP)) return Infinity;
  const toFrom = Math.sqrt((re - from) * (re - from) + im * im);
  const toEnd = Math.sqrt((re - to) * (re - to) + im * im);
  return (toFrom + toEnd) / (to - from);
};

/**
 * How many nodes a length takes: the error of n nodes falls as ρ^(-2n), where ρ is the sum of the half
 * axes of the ellipse (Trefethen, Approximation Theory, thm 19.3, from memory). Two to spare; an even
 * number, more than MOST_NODES where no rule here is good enough.
 */
const nodesFor = (axis: number, size: Mm): number => {
  const rho = axis + Math.sqrt(Math.max(0, axis * axis - 1));
  const byTwo = rho * rho * rho * rho;
  const wanted = Math.max(2, size / LENGTH_ERROR);
  let nodes = 4;
  for (let reached = byTwo; reached < wanted && nodes <= MOST_NODES; reached *= byTwo) nodes += 2;
  return nodes;
};

/** The length of the cubic in `speed` between two parameters. */
const measure = (from: number, to: number): Mm => {
  if (to - from <= 0) return 0;
  const roots = speed[ROOTS] ?? 0;
  const re1 = speed[RE1] ?? 0;
  const re2 = speed[RE2] ?? 0;
  const axis1 = roots > 0 ? halfAxis(re1, speed[IM1] ?? 0, from, to) : Infinity;
  const axis2 = roots > 1 ? halfAxis(re2, speed[IM2] ?? 0, from, to) : Infinity;
  const bent =
    Math.abs(speed[AX] ?? 0) +
    Math.abs(speed[AY] ?? 0) +
    Math.abs(speed[BX] ?? 0) +
    Math.abs(speed[BY] ?? 0);
  const size = bent * (to - from) + Math.abs(speed[CX] ?? 0) + Math.abs(speed[CY] ?? 0);
  const nodes = nodesFor(Math.min(axis1, axis2), size);
  if (nodes <= MOST_NODES || to - from < LEAST_PART) return integrate(from, to, ruleOf(nodes));
  const re = axis1 <= axis2 ? re1 : re2;
  const cut = re > from + CUSP && re < to - CUSP ? re : (from + to) / 2;
  return measure(from, cut) + measure(cut, to);
};

/** Length of a cubic between two parameters. Error below 1e-9 mm, cusps included. */
export const cubicLength = (c: Cubic, from = 0, to = 1): Mm => {
  look(c);
  return measure(from, to);
};

/** Length of a segment, in mm. Error below 1e-9 mm. */
export const segmentLength = (s: Segment): Mm =>
  s.kind === "line" ? apart(s.start, s.end) : cubicLength(s);

/** Length of a path, in mm. Error below 1e-9 mm a segment. */
export const lengthOf = (path: Path): Mm => {
  let sum = 0;
  for (const segment of path) sum += segmentLength(segment);
  return sum;
};

const STEPS = 100;

/**
 * The parameter at which a segment has run `distance` mm from its start, by Newton's rule kept
 * inside a bracket (method 1.3). Error below 1e-11 mm where the speed allows it.
 */
export const parameterAtLength = (s: Segment, distance: Mm, whole = segmentLength(s)): number => {
  if (distance <= 0 || whole <= 0) return 0;
  if (distance >= whole) return 1;
  if (s.kind === "line") return distance / whole;
  look(s);
  let low = 0;
  let high = 1;
  let t = distance / whole;
  let known = 0;
  let at = 0;
  for (let step = 0; step < STEPS; step++) {
    // Only the way from the last parameter to this one is measured anew.
    known += t >= at ? measure(at, t) : -measure(t, at);
    at = t;
    const over = known - distance;
    if (Math.abs(over) < AT_LENGTH) return t;
    if (over > 0) high = t;
    else low = t;
    const x = ((speed[AX] ?? 0) * t + (speed[BX] ?? 0)) * t + (speed[CX] ?? 0);
    const y = ((speed[AY] ?? 0) * t + (speed[BY] ?? 0)) * t + (speed[CY] ?? 0);
    const next = t - over / Math.sqrt(x * x + y * y);
    t = next > low && next < high ? next : (low + high) / 2;
    if (t === low || t === high) return t;
  }
  return t;
};

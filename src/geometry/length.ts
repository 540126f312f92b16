import { type GaussRule, MOST_NODES, ruleOf } from "./gauss.ts";
import { apart } from "./point.ts";
import type { Cubic, Path, Segment } from "./segment.ts";
import { AT_LENGTH, LENGTH_ERROR } from "./tolerance.ts";
import type { Mm } from "./units.ts";

/**
 * dB/dt of a cubic as a quadratic in t, read as a complex number x + iy, with its two roots.
 * The speed |dB/dt| is smooth but for those roots, so they say how many nodes a length takes.
 */
type Speed = {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
  /** Real and imaginary parts of the roots; the first counts only where `count` is 1 or more. */
  readonly re1: number;
  readonly im1: number;
  readonly re2: number;
  readonly im2: number;
  readonly count: 0 | 1 | 2;
};

/** Below this a leading term cannot be told from rounding, and its root lies far away. */
const NEGLIGIBLE = 1e-13;
/** A root so near the real line, in t, is a cusp: the speed is |t - root| times a smooth factor. */
const CUSP = 1e-9;
/** Parts of a curve shorter than this, in t, cannot change a length by LENGTH_ERROR. */
const LEAST_PART = 1e-10;

/** One or two roots of the quadratic, or none. */
type Roots = Pick<Speed, "re1" | "im1" | "re2" | "im2" | "count">;

const NO_ROOTS: Roots = { re1: 0, im1: 0, re2: 0, im2: 0, count: 0 };

// No pairs are taken apart in this file: it is the innermost loop of every draft, and an array
// made and read again for each curve takes ten times the time of the sum itself.
type Quadratic = Pick<Speed, "ax" | "ay" | "bx" | "by" | "cx" | "cy">;

/** The roots of a quadratic with complex factors: the larger first, the other by their product. */
const rootsOf = ({ ax, ay, bx, by, cx, cy }: Quadratic): Roots => {
  const a2 = ax * ax + ay * ay;
  const b2 = bx * bx + by * by;
  const c2 = cx * cx + cy * cy;
  if (a2 <= NEGLIGIBLE * (b2 + c2)) {
    if (b2 <= NEGLIGIBLE * c2) return NO_ROOTS;
    const re1 = -(cx * bx + cy * by) / b2;
    return { re1, im1: -(cy * bx - cx * by) / b2, re2: 0, im2: 0, count: 1 };
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
  if (q2 === 0) return { re1, im1, re2: re1, im2: im1, count: 2 };
  return { re1, im1, re2: (cx * qx + cy * qy) / q2, im2: (cy * qx - cx * qy) / q2, count: 2 };
};

const speedOf = (c: Cubic): Speed => {
  const p = c.start;
  const q = c.startHandle;
  const r = c.endHandle;
  const e = c.end;
  const ax = 3 * (e.x - 3 * r.x + 3 * q.x - p.x);
  const ay = 3 * (e.y - 3 * r.y + 3 * q.y - p.y);
  const bx = 6 * (r.x - 2 * q.x + p.x);
  const by = 6 * (r.y - 2 * q.y + p.y);
  const cx = 3 * (q.x - p.x);
  const cy = 3 * (q.y - p.y);
  const { re1, im1, re2, im2, count } = rootsOf({ ax, ay, bx, by, cx, cy });
  return { ax, ay, bx, by, cx, cy, re1, im1, re2, im2, count };
};

/** The integral of the speed over [from, to] by one rule. */
const integrate = (s: Speed, from: number, to: number, rule: GaussRule): Mm => {
  const nodes = rule.nodes;
  const weights = rule.weights;
  const half = (to - from) / 2;
  const mid = (from + to) / 2;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const t = mid + half * (nodes[i] ?? 0);
    const x = (s.ax * t + s.bx) * t + s.cx;
    const y = (s.ay * t + s.by) * t + s.cy;
    sum += (weights[i] ?? 0) * Math.sqrt(x * x + y * y);
  }
  return sum * half;
};

/** log ρ of the Bernstein ellipse of [from, to] through a root; infinite where it does not matter. */
const logEllipse = (re: number, im: number, from: number, to: number): number => {
  const half = (to - from) / 2;
  const isCusp = Math.abs(im) < CUSP;
  if (isCusp && (Math.abs(re - from) < CUSP || Math.abs(re - to) < CUSP)) return Infinity;
  const sum =
    (Math.sqrt((re - from) * (re - from) + im * im) + Math.sqrt((re - to) * (re - to) + im * im)) /
    (2 * half);
  return Math.log(sum + Math.sqrt(Math.max(0, sum * sum - 1)));
};

const measure = (s: Speed, from: number, to: number): Mm => {
  if (to - from <= 0) return 0;
  const l1 = s.count > 0 ? logEllipse(s.re1, s.im1, from, to) : Infinity;
  const l2 = s.count > 1 ? logEllipse(s.re2, s.im2, from, to) : Infinity;
  const least = Math.min(l1, l2);
  // The error of n nodes falls as ρ^(-2n) (Trefethen, Approximation Theory, thm 19.3, from memory).
  const size = (Math.abs(s.ax) + Math.abs(s.ay) + Math.abs(s.bx) + Math.abs(s.by)) * (to - from);
  const wanted = Math.log(Math.max(2, (size + Math.abs(s.cx) + Math.abs(s.cy)) / LENGTH_ERROR));
  const nodes = wanted / (2 * least) + 2;
  if (nodes <= MOST_NODES || to - from < LEAST_PART) return integrate(s, from, to, ruleOf(nodes));
  const re = l1 <= l2 ? s.re1 : s.re2;
  const cut = re > from + CUSP && re < to - CUSP ? re : (from + to) / 2;
  return measure(s, from, cut) + measure(s, cut, to);
};

/** Length of a cubic between two parameters. Error below 1e-9 mm, cusps included. */
export const cubicLength = (c: Cubic, from = 0, to = 1): Mm => measure(speedOf(c), from, to);

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
  const speed = speedOf(s);
  let low = 0;
  let high = 1;
  let t = distance / whole;
  let known = 0;
  let at = 0;
  for (let step = 0; step < STEPS; step++) {
    // Only the way from the last parameter to this one is measured anew.
    known += t >= at ? measure(speed, at, t) : -measure(speed, t, at);
    at = t;
    const over = known - distance;
    if (Math.abs(over) < AT_LENGTH) return t;
    if (over > 0) high = t;
    else low = t;
    const x = (speed.ax * t + speed.bx) * t + speed.cx;
    const y = (speed.ay * t + speed.by) * t + speed.cy;
    const next = t - over / Math.sqrt(x * x + y * y);
    t = next > low && next < high ? next : (low + high) / 2;
    if (t === low || t === high) return t;
  }
  return t;
};

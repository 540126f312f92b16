/** a t³ + b t² + c t + d. */
export type Polynomial = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
};

const valueAt = ({ a, b, c, d }: Polynomial, t: number): number => ((a * t + b) * t + c) * t + d;
const slopeAt = ({ a, b, c }: Polynomial, t: number): number => (3 * a * t + 2 * b) * t + c;

/** Where the slope of a cubic is nil inside (from, to), in order. */
const levels = (p: Polynomial, from: number, to: number): readonly number[] => {
  const [qa, qb, qc] = [3 * p.a, 2 * p.b, p.c];
  if (qa === 0) return qb === 0 ? [] : [-qc / qb].filter((t) => t > from && t < to);
  const inside = qb * qb - 4 * qa * qc;
  if (inside < 0) return [];
  // The root of larger size first, the other by the product: no loss by cancelling.
  const q = -(qb + (qb < 0 ? -1 : 1) * Math.sqrt(inside)) / 2;
  const both = q === 0 ? [0] : [q / qa, qc / q];
  return both.filter((t) => t > from && t < to).sort((m, n) => m - n);
};

/** The root of a cubic that rises or falls all along [low, high] and changes its sign there. */
const bracketed = (p: Polynomial, from: number, to: number): number => {
  const rises = valueAt(p, from) < 0;
  let [low, high] = [from, to];
  let t = (from + to) / 2;
  for (let step = 0; step < 200; step++) {
    const value = valueAt(p, t);
    if (value === 0) return t;
    if (value < 0 === rises) low = t;
    else high = t;
    const next = t - value / slopeAt(p, t);
    const held = next > low && next < high ? next : (low + high) / 2;
    if (held === t || high - low < Number.EPSILON * Math.abs(t)) return held;
    t = held;
  }
  return t;
};

/** A value that is nil but for rounding, against the size of the terms. */
const isNil = (p: Polynomial, value: number): boolean =>
  Math.abs(value) <= 1e-14 * (Math.abs(p.a) + Math.abs(p.b) + Math.abs(p.c) + Math.abs(p.d));

/** Real roots in [from, to] in order, a touching one once. None where the cubic is nil all along. */
export const rootsBetween = (p: Polynomial, from: number, to: number): readonly number[] => {
  if (p.a === 0 && p.b === 0 && p.c === 0) return [];
  const marks = [from, ...levels(p, from, to), to];
  const found: number[] = [];
  const add = (t: number): void => {
    const last = found[found.length - 1];
    if (last === undefined || t - last > 1e-12) found.push(t);
  };
  for (const [i, low] of marks.entries()) {
    const value = valueAt(p, low);
    if (isNil(p, value)) add(low);
    const high = marks[i + 1];
    if (high === undefined) break;
    const next = valueAt(p, high);
    if (!isNil(p, value) && !isNil(p, next) && value < 0 !== next < 0) add(bracketed(p, low, high));
  }
  return found;
};

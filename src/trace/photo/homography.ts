import { leastSquares } from "../algebra/leastSquares.ts";
import { solveLinear } from "../algebra/linear.ts";
import type { Pixel } from "./picture.ts";

/**
 * How a plane is seen by a camera without a lens's bending: x' = (ax + by + c) / w,
 * y' = (dx + ey + f) / w, w = gx + hy + i (Hartley and Zisserman, Multiple View Geometry, 2.3, from
 * memory).
 */
export type Homography = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
  readonly g: number;
  readonly h: number;
  readonly i: number;
};

/** A place on one plane and the place on the other that it falls on. */
export type Pair = { readonly from: Pixel; readonly to: Pixel };

export const SAME: Homography = { a: 1, b: 0, c: 0, d: 0, e: 1, f: 0, g: 0, h: 0, i: 1 };

export const seen = (m: Homography, { x, y }: Pixel): Pixel => {
  const w = m.g * x + m.h * y + m.i;
  return { x: (m.a * x + m.b * y + m.c) / w, y: (m.d * x + m.e * y + m.f) / w };
};

/** Below nought (or nought) where a place lies behind the camera's eye: no picture shows it. */
export const depthOf = (m: Homography, { x, y }: Pixel): number => m.g * x + m.h * y + m.i;

/** The way back: the adjugate, which needs no division by the determinant. */
export const inverse = (m: Homography): Homography => ({
  a: m.e * m.i - m.f * m.h,
  b: m.c * m.h - m.b * m.i,
  c: m.b * m.f - m.c * m.e,
  d: m.f * m.g - m.d * m.i,
  e: m.a * m.i - m.c * m.g,
  f: m.c * m.d - m.a * m.f,
  g: m.d * m.h - m.e * m.g,
  h: m.b * m.g - m.a * m.h,
  i: m.a * m.e - m.b * m.d,
});

/** First `first`, then `then`. */
export const after = (first: Homography, then: Homography): Homography => ({
  a: then.a * first.a + then.b * first.d + then.c * first.g,
  b: then.a * first.b + then.b * first.e + then.c * first.h,
  c: then.a * first.c + then.b * first.f + then.c * first.i,
  d: then.d * first.a + then.e * first.d + then.f * first.g,
  e: then.d * first.b + then.e * first.e + then.f * first.h,
  f: then.d * first.c + then.e * first.f + then.f * first.i,
  g: then.g * first.a + then.h * first.d + then.i * first.g,
  h: then.g * first.b + then.h * first.e + then.i * first.h,
  i: then.g * first.c + then.h * first.f + then.i * first.i,
});

/** Places moved and scaled so that their middle is nought and their mean distance from it 1. */
const normalising = (places: readonly Pixel[]): Homography => {
  let [x, y] = [0, 0];
  for (const p of places) [x, y] = [x + p.x / places.length, y + p.y / places.length];
  let mean = 0;
  for (const p of places) mean += Math.hypot(p.x - x, p.y - y) / places.length;
  const by = mean > 0 ? 1 / mean : 1;
  return { ...SAME, a: by, c: -x * by, e: by, f: -y * by };
};

const ofEight = (v: readonly number[]): Homography => ({
  a: v[0] ?? 0,
  b: v[1] ?? 0,
  c: v[2] ?? 0,
  d: v[3] ?? 0,
  e: v[4] ?? 0,
  f: v[5] ?? 0,
  g: v[6] ?? 0,
  h: v[7] ?? 0,
  i: 1,
});

const eightOf = ({ a, b, c, d, e, f, g, h, i }: Homography): readonly number[] =>
  [a, b, c, d, e, f, g, h].map((v) => v / i);

/** Two linear rows a pair: u·w - (ax + by + c) = 0 and the like for v. */
const linearRows = ({ from: { x, y }, to: { x: u, y: v } }: Pair) => [
  { row: [x, y, 1, 0, 0, 0, -u * x, -u * y], right: u },
  { row: [0, 0, 0, x, y, 1, -v * x, -v * y], right: v },
];

const linearAnswer = (pairs: readonly Pair[]): readonly number[] | null => {
  const rows = pairs.flatMap(linearRows);
  const eight = [0, 1, 2, 3, 4, 5, 6, 7];
  const sum = (of: (row: readonly number[], right: number) => number): number =>
    rows.reduce((total, { row, right }) => total + of(row, right), 0);
  return solveLinear(
    eight.map((i) => eight.map((k) => sum((row) => (row[i] ?? 0) * (row[k] ?? 0)))),
    eight.map((i) => sum((row, right) => (row[i] ?? 0) * right)),
  );
};

/**
 * The homography that brings four or more places onto others: the linear answer on normalised
 * places, then the least sum of squared distances on the second plane. Null where three of four
 * places lie on one line. Exact for four pairs.
 */
export const fitHomography = (pairs: readonly Pair[]): Homography | null => {
  const before = normalising(pairs.map(({ from }) => from));
  const behind = normalising(pairs.map(({ to }) => to));
  const moved = pairs.map(({ from, to }) => ({ from: seen(before, from), to: seen(behind, to) }));
  const linear = linearAnswer(moved);
  if (!linear) return null;
  const { at } = leastSquares({
    start: linear,
    steps: linear.map(() => 1e-6),
    residuals: (x) => {
      const m = ofEight(x);
      return moved.flatMap(({ from, to }) => {
        const p = seen(m, from);
        return [p.x - to.x, p.y - to.y];
      });
    },
  });
  const whole = after(after(before, ofEight(at)), inverse(behind));
  return Math.abs(whole.i) > 0 ? ofEight(eightOf(whole)) : null;
};

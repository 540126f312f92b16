import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Matrix, mirrored, sweep } from "../../src/drafting/sweep.ts";

const at = (matrix: Matrix, row: number, column: number): number => matrix[row]?.[column] ?? NaN;
const times = (a: Matrix, b: Matrix): Matrix =>
  a.map((row) => b.map((_, j) => row.reduce((sum, value, k) => sum + value * at(b, k, j), 0)));

const size = 5;
const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const square = fc.array(fc.array(coordinate, { minLength: size, maxLength: size }), {
  minLength: size,
  maxLength: size,
});
/** A·Aᵀ + I has no direction of no spread, so it is a covariance. */
const aCovariance = square.map((a) =>
  a.map((row, i) =>
    a.map((other, j) =>
      row.reduce((sum, value, k) => sum + value * (other[k] ?? 0), i === j ? 1 : 0),
    ),
  ),
);

describe("the sweep of a covariance", () => {
  test("of variances 4 and 9 with covariance 3 on the first leaves 9 − 3²/4 and the slope 3/4", () => {
    // Regression of one variable on another: slope cov/var, what is left var − cov²/var. Any textbook.
    const swept = sweep(
      [
        [4, 3],
        [3, 9],
      ],
      0,
    );
    expect(swept).toEqual([
      [-1 / 4, 3 / 4],
      [3 / 4, 9 - 9 / 4],
    ]);
  });

  test("on every place gives the inverse with its sign changed", () => {
    fc.assert(
      fc.property(aCovariance, (covariance) => {
        const inverse = [...covariance.keys()].reduce(sweep, covariance);
        const product = times(covariance, inverse);
        for (let i = 0; i < size; i += 1)
          for (let j = 0; j < size; j += 1)
            expect(at(product, i, j)).toBeCloseTo(i === j ? -1 : 0, 9);
      }),
      { seed: 101, endOnFailure: true },
    );
  });

  test("does not depend on the order of the places", () => {
    fc.assert(
      fc.property(aCovariance, (covariance) => {
        const there = [0, 2, 3].reduce(sweep, covariance);
        const back = [3, 0, 2].reduce(sweep, covariance);
        for (let i = 0; i < size; i += 1)
          for (let j = 0; j < size; j += 1) expect(at(back, i, j)).toBeCloseTo(at(there, i, j), 9);
      }),
      { seed: 102, endOnFailure: true },
    );
  });
});

test("a lower half is mirrored over its diagonal", () => {
  expect(mirrored([[1], [2, 3], [4, 5, 6]])).toEqual([
    [1, 2, 4],
    [2, 3, 5],
    [4, 5, 6],
  ]);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Polynomial, rootsBetween } from "../../src/geometry/roots.ts";
import { someShare } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

/** s (t - r1)(t - r2)(t - r3), multiplied out. */
const withRoots = (r1: number, r2: number, r3: number, s = 1): Polynomial => ({
  a: s,
  b: -s * (r1 + r2 + r3),
  c: s * (r1 * r2 + r2 * r3 + r3 * r1),
  d: -s * r1 * r2 * r3,
});

const expectRoots = (found: readonly number[], wanted: readonly number[], digits = 9): void => {
  expect(found).toHaveLength(wanted.length);
  found.forEach((root, i) => {
    expect(root).toBeCloseTo(wanted[i] ?? Number.NaN, digits);
  });
};

describe("the roots of a cubic in a range", () => {
  test("are all three where all three lie in it, in order", () => {
    expectRoots(rootsBetween(withRoots(0.9, 0.1, 0.4, -7), 0, 1), [0.1, 0.4, 0.9]);
  });

  test("leave out those beyond its ends", () => {
    expectRoots(rootsBetween(withRoots(-0.5, 0.3, 1.5), 0, 1), [0.3]);
  });

  test("count one at an end of the range", () => {
    expectRoots(rootsBetween(withRoots(0, 0.5, 1), 0, 1), [0, 0.5, 1]);
  });

  test("count one that only touches once", () => {
    expectRoots(rootsBetween(withRoots(0.5, 0.5, 3), 0, 1), [0.5], 6);
  });

  test("count a threefold one once", () => {
    expectRoots(rootsBetween(withRoots(0.5, 0.5, 0.5), 0, 1), [0.5], 4);
  });

  test("are those of a quadratic, and of a line, where the higher terms are nought", () => {
    expectRoots(rootsBetween({ a: 0, b: 1, c: -1, d: 0.21 }, 0, 1), [0.3, 0.7]);
    expectRoots(rootsBetween({ a: 0, b: 0, c: 2, d: -1 }, 0, 1), [0.5]);
  });

  test("are none where it is level, even where it is nought all along", () => {
    expect(rootsBetween({ a: 0, b: 0, c: 0, d: 0 }, 0, 1)).toEqual([]);
    expect(rootsBetween({ a: 0, b: 0, c: 0, d: 5 }, 0, 1)).toEqual([]);
  });

  test("are none where it stays on one side", () => {
    expect(rootsBetween({ a: 0, b: 1, c: 0, d: 1 }, 0, 1)).toEqual([]);
  });

  test("are found wherever three lie apart in it", () => {
    const apart = fc
      .tuple(someShare, someShare, someShare)
      .map((roots) => [...roots].sort((a, b) => a - b))
      .filter(([a = 0, b = 0, c = 0]) => b - a > 1e-3 && c - b > 1e-3);
    holdsFor(1301, fc.tuple(apart, fc.integer({ min: 1, max: 1000 })), ([wanted, size]) => {
      const [a = 0, b = 0, c = 0] = wanted;
      expectRoots(rootsBetween(withRoots(a, b, c, size), -0.1, 1.1), wanted, 8);
    });
  });

  test("are places where it is nought", () => {
    const someTerm = fc.double({ min: -100, max: 100, noNaN: true });
    holdsFor(1302, fc.tuple(someTerm, someTerm, someTerm, someTerm), ([a, b, c, d]) => {
      for (const t of rootsBetween({ a, b, c, d }, 0, 1)) {
        expect(Math.abs(((a * t + b) * t + c) * t + d)).toBeLessThan(1e-9);
      }
    });
  });
});

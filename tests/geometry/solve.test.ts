import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { solve, solveNear } from "../../src/geometry/solve.ts";
import { holdsFor } from "../support/law.ts";

const GOLDEN = (1 + Math.sqrt(5)) / 2;

describe.each([
  ["solving in a bracket", solve],
  ["solving from a place nearby", (e: Parameters<typeof solve>[0]) => solveNear(e, 1.5)],
])("%s", (_, find) => {
  test("finds the golden section as the root of x² - x - 1", () => {
    expect(find({ of: (x) => x * x - x - 1, low: 0, high: 2 })).toBeCloseTo(GOLDEN, 9);
  });

  test("finds a root that falls as well as one that rises", () => {
    expect(find({ of: (x) => 2 - x * x * x, low: 0, high: 10 })).toBeCloseTo(Math.cbrt(2), 9);
  });

  test("finds a root that lies at an end of the bracket", () => {
    expect(find({ of: (x) => x - 3, low: 3, high: 10 })).toBeCloseTo(3, 9);
    expect(find({ of: (x) => x - 3, low: -10, high: 3 })).toBeCloseTo(3, 9);
  });

  test("is null where both ends of the bracket lie on one side", () => {
    expect(find({ of: (x) => x * x + 1, low: -1, high: 2 })).toBeNull();
  });

  test("is not thrown off by a function that is flat on one side and steep on the other", () => {
    const of = (x: number): number => Math.expm1(30 * (x - 1.9));
    expect(find({ of, low: 0, high: 2 })).toBeCloseTo(1.9, 9);
  });
});

describe("solving from a place nearby", () => {
  test("finds the same root as the bracket, wherever it begins", () => {
    const equation = { of: (x: number) => Math.sinh(x) - 3, low: -1, high: 4 };
    const wanted = Math.asinh(3);
    holdsFor(1401, fc.double({ min: -10, max: 10, noNaN: true }), (near) => {
      expect(solveNear(equation, near)).toBeCloseTo(wanted, 9);
    });
    expect(solve(equation)).toBeCloseTo(wanted, 9);
  });

  test("asks for the function a few times where the place is near", () => {
    const of = vi.fn((x: number) => x + 0.01 * x * x - 50);
    solveNear({ of, low: 0, high: 100 }, 36);
    expect(of.mock.calls.length).toBeLessThan(8);
  });
});

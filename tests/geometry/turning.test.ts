import { describe, expect, test } from "vitest";
import { pathOf, reversed } from "../../src/geometry/path.ts";
import { dir, point } from "../../src/geometry/point.ts";
import { turningOf } from "../../src/geometry/turning.ts";
import { ellipse } from "../reference/worked/fineCurves.ts";
import { aPath, someCubic } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const RIGHT = point(1, 0);

describe("how far a path turns in all", () => {
  test("is a quarter turn over a quarter of an ellipse, whatever its shape", () => {
    expect(turningOf(ellipse(300, 40, 0, Math.PI / 2))).toBeCloseTo(Math.PI / 2, 6);
  });

  test("is the whole turn over a closed oval", () => {
    expect(turningOf(ellipse(90, 60))).toBeCloseTo(2 * Math.PI, 6);
  });

  test("is nothing over a straight, and its corners where there are any", () => {
    expect(turningOf(aPath("M0 0 L10 10"))).toBe(0);
    expect(turningOf(aPath("M0 0 L10 0 L10 10 L0 10"))).toBeCloseTo(Math.PI, 12);
  });

  test("is negative anticlockwise on the page", () => {
    expect(turningOf(aPath("M0 0 L10 0 L10 -10"))).toBeCloseTo(-Math.PI / 2, 12);
  });

  test("begins with the turn from a direction that is given", () => {
    expect(turningOf(aPath("M0 0 L10 10"), RIGHT)).toBeCloseTo(Math.PI / 4, 12);
    expect(turningOf(aPath("M0 0 L10 10"), dir(Math.PI / 4))).toBeCloseTo(0, 12);
  });

  test("is the same the other way round, with its sign changed", () => {
    holdsFor(1501, someCubic(), (c) => {
      const path = pathOf([c]);
      expect(turningOf(reversed(path))).toBeCloseTo(-turningOf(path), 9);
    });
  });

  test("counts a whole loop, which its end directions alone would not show", () => {
    const loop = aPath("M0 0 C300 200 -200 200 100 0");
    expect(Math.abs(turningOf(loop))).toBeGreaterThan(Math.PI);
  });
});

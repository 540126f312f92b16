import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { crossingsAlong, crossingsOf, parametersWhere } from "../../src/geometry/crossings.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { pointAlong } from "../../src/geometry/split.ts";
import { aLine, aPath, somePath } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

/** Across a valley: down one side and up the other. */
const VALLEY = aPath("M0 0 C0 100 100 100 100 0");

describe("the lengths at which a path has a coordinate", () => {
  test("of a valley are two, the same from either end", () => {
    const [first = NaN, second = NaN, ...more] = crossingsOf(VALLEY, "y", 30);
    expect(more).toEqual([]);
    expect(first + second).toBeCloseTo(lengthOf(VALLEY), 9);
    expect(pointAlong(VALLEY, first).y).toBeCloseTo(30, 9);
  });

  // The valley's floor is at y = 75, half way: B(½) = (0 + 3·100 + 3·100 + 0)/8.
  test("at the floor of a valley is one, half way", () => {
    const found = crossingsOf(VALLEY, "y", 75);
    expect(found.length).toBeGreaterThan(0);
    for (const s of found) expect(Math.abs(s - lengthOf(VALLEY) / 2)).toBeLessThan(1e-3);
    expect(crossingsOf(VALLEY, "y", 75.001)).toEqual([]);
  });

  test("are in order along several segments", () => {
    expect(crossingsOf(aPath("M0 0 L10 0 L10 10 L0 10 L0 -5"), "x", 5)).toEqual([5, 25]);
  });

  test("count an end that lies there, within a thousand-millionth", () => {
    expect(crossingsOf(aPath("M0 0 L10 10"), "y", 10)[0]).toBeCloseTo(Math.SQRT2 * 10, 9);
    expect(crossingsOf(aPath("M0 0 L10 10"), "y", 10 + 5e-9)).toHaveLength(1);
    expect(crossingsOf(aPath("M0 0 L10 10"), "y", 10 + 5e-8)).toHaveLength(0);
  });

  test("count an end of a curve in the same way", () => {
    const curve = aPath("M0 0 C10 20 20 30 30 40");
    expect(crossingsOf(curve, "y", 40 + 5e-9)).toHaveLength(1);
    expect(crossingsOf(curve, "y", -5e-9)).toHaveLength(1);
    expect(crossingsOf(curve, "y", 40 + 5e-7)).toHaveLength(0);
    expect(crossingsOf(curve, "y", 40 + 5e-9)[0]).toBeCloseTo(lengthOf(curve), 9);
  });

  test("of a straight that runs along the value are none", () => {
    expect(crossingsOf(aPath("M0 5 L10 5"), "y", 5)).toEqual([]);
    expect(parametersWhere(aLine([0, 5], [10, 5]), { x: 0, y: 1 }, 5)).toEqual([]);
  });

  test("along a slant are where the path is so far along that slant", () => {
    const axis = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
    expect(crossingsAlong(aPath("M0 0 L10 0"), axis, Math.SQRT1_2 * 4)[0]).toBeCloseTo(4, 12);
  });

  test("are places that have the value, at least one wherever the ends lie on both sides", () => {
    const value = fc.integer({ min: -500, max: 500 });
    holdsFor(1901, fc.tuple(somePath(), value), ([path, x]) => {
      const found = crossingsOf(path, "x", x);
      for (const s of found) expect(pointAlong(path, s).x).toBeCloseTo(x, 5);
      expect([...found]).toEqual([...found].sort((a, b) => a - b));
      const between = startOf(path).x - x < 0 !== endOf(path).x - x < 0;
      if (between) expect(found.length).toBeGreaterThan(0);
    });
  });
});

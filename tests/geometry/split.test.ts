import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pointAt } from "../../src/geometry/curve.ts";
import { lengthOf, segmentLength } from "../../src/geometry/length.ts";
import { endOf, endTangent, startOf } from "../../src/geometry/path.ts";
import { apart, minus, turn } from "../../src/geometry/point.ts";
import { pointAlong, prolonged, splitAt, take } from "../../src/geometry/split.ts";
import { aCubic, aPath, HARD_CUBICS, somePath, someShare } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const onPath = fc.tuple(somePath(), someShare);
const L_SHAPE = aPath("M0 0 L30 0 L30 40");

describe("a point a length along a path", () => {
  test("lies round the corner where the length goes round it", () => {
    expect(pointAlong(L_SHAPE, 30)).toEqual({ x: 30, y: 0 });
    expect(pointAlong(L_SHAPE, 45)).toEqual({ x: 30, y: 15 });
  });

  test("is held to the ends", () => {
    expect(pointAlong(L_SHAPE, -5)).toEqual({ x: 0, y: 0 });
    expect(pointAlong(L_SHAPE, 500)).toEqual({ x: 30, y: 40 });
  });

  test("is where the path up to it ends", () => {
    holdsFor(1601, onPath, ([path, share]) => {
      const distance = share * lengthOf(path);
      expect(apart(pointAlong(path, distance), endOf(take(path, distance)))).toBeLessThan(1e-6);
    });
  });

  test.each(HARD_CUBICS.filter(([name]) => name !== "one point"))(
    "has as much of the curve before it as was asked for, on %s",
    (_, c) => {
      const whole = segmentLength(c);
      for (const share of [0.1, 0.5, 0.9]) {
        const [first] = splitAt([c], share * whole);
        expect(Math.abs(lengthOf(first) - share * whole)).toBeLessThan(1e-7);
      }
    },
  );
});

describe("a path cut at a length", () => {
  test("is as long in its parts as it was whole, and they join", () => {
    holdsFor(1602, onPath, ([path, share]) => {
      const whole = lengthOf(path);
      const [first, second] = splitAt(path, share * whole);
      expect(Math.abs(lengthOf(first) - share * whole)).toBeLessThan(1e-7);
      expect(Math.abs(lengthOf(second) - (1 - share) * whole)).toBeLessThan(1e-7);
      expect(apart(endOf(first), startOf(second))).toBeLessThan(1e-9);
      expect(startOf(first)).toEqual(startOf(path));
      expect(endOf(second)).toEqual(endOf(path));
    });
  });

  // Method 1.3: a cut within 1e-9 mm of a joint is at the joint, or a crumb would be left.
  test.each([30, 30 + 5e-10, 30 - 5e-10])(
    "at a joint, or within 1e-9 of it, cuts there: %s",
    (s) => {
      const [first, second] = splitAt(L_SHAPE, s);
      expect(first).toEqual(aPath("M0 0 L30 0"));
      expect(second).toEqual(aPath("M30 0 L30 40"));
    },
  );

  test("a thousandth of a millimetre from a joint leaves that thousandth", () => {
    const [first, second] = splitAt(L_SHAPE, 30 - 1e-3);
    expect([first.length, second.length]).toEqual([1, 2]);
    expect(lengthOf(second)).toBeCloseTo(40.001, 9);
  });

  test("at its start or end leaves a path of no length there", () => {
    const [before, all] = splitAt(L_SHAPE, 0);
    expect([lengthOf(before), startOf(before), all]).toEqual([0, { x: 0, y: 0 }, L_SHAPE]);
    const [whole, after] = splitAt(L_SHAPE, 70);
    expect([whole, lengthOf(after), endOf(after)]).toEqual([L_SHAPE, 0, { x: 30, y: 40 }]);
  });

  test("twice gives the piece between, as a part of the curve itself", () => {
    const whole = aCubic([0, 0], [80, -30], [60, 90], [140, 70]);
    const [, rest] = splitAt([whole], 40);
    const [middle] = splitAt(rest, 50);
    expect(lengthOf(middle)).toBeCloseTo(50, 9);
    const half = pointAt(middle[0], 0.5);
    const nearest = Math.min(
      ...Array.from({ length: 20001 }, (_, i) => apart(pointAt(whole, i / 20000), half)),
    );
    expect(nearest).toBeLessThan(0.005);
  });
});

describe("the first part of a path", () => {
  test("is prolonged straight along its end tangent where more is asked for than there is", () => {
    holdsFor(1603, fc.tuple(somePath(), fc.double({ min: 1, max: 200, noNaN: true })), (drawn) => {
      const [path, more] = drawn;
      const long = take(path, lengthOf(path) + more);
      expect(lengthOf(long)).toBeCloseTo(lengthOf(path) + more, 6);
      const step = minus(endOf(long), endOf(path));
      expect(Math.abs(turn(endTangent(path), step))).toBeLessThan(1e-6);
    });
  });

  test("is one line still where its last line is made longer", () => {
    expect(prolonged(L_SHAPE, 10)).toEqual(aPath("M0 0 L30 0 L30 50"));
    expect(prolonged(aPath("M0 0 C10 0 20 0 30 0"), 10)).toEqual(
      aPath("M0 0 C10 0 20 0 30 0 L40 0"),
    );
  });

  test("made longer by nothing is itself", () => {
    expect(prolonged(L_SHAPE, 0)).toBe(L_SHAPE);
    expect(prolonged(L_SHAPE, -3)).toBe(L_SHAPE);
  });

  test("keeps every whole segment before the cut as it was", () => {
    holdsFor(1604, onPath, ([path, share]) => {
      const taken = take(path, share * lengthOf(path));
      const whole = taken.slice(0, -1);
      expect(whole).toEqual(path.slice(0, whole.length));
    });
  });
});

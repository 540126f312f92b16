import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { onFrom, upTo } from "../../src/geometry/cut.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { apart } from "../../src/geometry/point.ts";
import { aPath, somePath, someShare } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const L_SHAPE = aPath("M0 0 L30 0 L30 40");

describe("a path cut at a place on it", () => {
  test("is what comes before the place and what comes after", () => {
    const place = { index: 1, t: 0.25 };
    expect(upTo(L_SHAPE, place)).toEqual(aPath("M0 0 L30 0 L30 10"));
    expect(onFrom(L_SHAPE, place)).toEqual(aPath("M30 10 L30 40"));
  });

  test("at a joint leaves no part of no length beside another", () => {
    expect(upTo(L_SHAPE, { index: 0, t: 1 })).toEqual(aPath("M0 0 L30 0"));
    expect(upTo(L_SHAPE, { index: 1, t: 0 })).toEqual(aPath("M0 0 L30 0"));
    expect(onFrom(L_SHAPE, { index: 0, t: 1 })).toEqual(aPath("M30 0 L30 40"));
    expect(onFrom(L_SHAPE, { index: 1, t: 0 })).toEqual(aPath("M30 0 L30 40"));
  });

  test("at its very start or end leaves a dot there", () => {
    expect(lengthOf(upTo(L_SHAPE, { index: 0, t: 0 }))).toBe(0);
    expect(startOf(upTo(L_SHAPE, { index: 0, t: 0 }))).toEqual({ x: 0, y: 0 });
    expect(lengthOf(onFrom(L_SHAPE, { index: 1, t: 1 }))).toBe(0);
    expect(endOf(onFrom(L_SHAPE, { index: 1, t: 1 }))).toEqual({ x: 30, y: 40 });
  });

  test("is as long in both parts as it was whole, and they meet", () => {
    const place = fc.record({ index: fc.nat(4), t: someShare });
    holdsFor(1801, fc.tuple(somePath(), place), ([path, { index, t }]) => {
      const on = { index: index % path.length, t };
      const [before, after] = [upTo(path, on), onFrom(path, on)];
      expect(lengthOf(before) + lengthOf(after)).toBeCloseTo(lengthOf(path), 6);
      expect(apart(endOf(before), startOf(after))).toBeLessThan(1e-9);
    });
  });
});

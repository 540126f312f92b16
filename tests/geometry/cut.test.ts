import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { onFrom, partBetween, upTo } from "../../src/geometry/cut.ts";
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

describe("what lies between two places on a path", () => {
  test("is the path itself where both are its own ends", () => {
    expect(partBetween(L_SHAPE, null, null)).toBe(L_SHAPE);
  });

  test("is cut at the one place, or at both", () => {
    const [a, b] = [
      { index: 0, t: 0.5 },
      { index: 1, t: 0.25 },
    ];
    expect(partBetween(L_SHAPE, null, b)).toEqual(aPath("M0 0 L30 0 L30 10"));
    expect(partBetween(L_SHAPE, a, null)).toEqual(aPath("M15 0 L30 0 L30 40"));
    expect(partBetween(L_SHAPE, a, b)).toEqual(aPath("M15 0 L30 0 L30 10"));
  });

  test("is the same part of a curve whichever end is cut first", () => {
    const curve = aPath("M0 0 C40 60 80 -60 120 0");
    const part = partBetween(curve, { index: 0, t: 0.2 }, { index: 0, t: 0.7 });
    const other = onFrom(curve, { index: 0, t: 0.2 });
    const again = upTo(other, { index: 0, t: (0.7 - 0.2) / (1 - 0.2) });
    expect(part && lengthOf(part)).toBeCloseTo(lengthOf(again), 9);
    expect(part && apart(endOf(part), endOf(again))).toBeLessThan(1e-9);
  });

  test("is nothing where the places overlap", () => {
    expect(partBetween(L_SHAPE, { index: 1, t: 0 }, { index: 0, t: 0.9 })).toBeNull();
    expect(partBetween(L_SHAPE, { index: 0, t: 0.6 }, { index: 0, t: 0.6 })).toBeNull();
    expect(partBetween(L_SHAPE, { index: 0, t: 0.6 }, { index: 0, t: 0.5 })).toBeNull();
  });
});

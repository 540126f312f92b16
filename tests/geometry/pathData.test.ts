import { describe, expect, test } from "vitest";
import { lengthOf } from "../../src/geometry/length.ts";
import { coordinate, readPathData, toPathData } from "../../src/geometry/pathData.ts";
import { apart } from "../../src/geometry/point.ts";
import { aCubic, aLine, aPath, somePath } from "../support/curves.ts";
import { lengthOfData } from "../support/independent/lines.ts";
import { holdsFor } from "../support/law.ts";

const faultOf = (text: string): string => {
  const read = readPathData(text);
  return "fault" in read ? read.fault : "none";
};

describe("a coordinate as it is written", () => {
  test.each([
    [0, "0.000000"],
    [-0, "0.000000"],
    [-1e-9, "0.000000"],
    [0.9999999, "1.000000"],
    [-0.9999999, "-1.000000"],
    [12.3456789, "12.345679"],
    [-12.3456781, "-12.345678"],
    [1234.000001, "1234.000001"],
    [0.05, "0.050000"],
  ])("%s is %s", (value, text) => {
    expect(coordinate(value)).toBe(text);
  });

  test("is within half a millionth of the number it stands for", () => {
    holdsFor(2301, somePath(3000), (path) => {
      for (const { start } of path) {
        expect(Math.abs(Number(coordinate(start.x)) - start.x)).toBeLessThan(0.50001e-6);
      }
    });
  });
});

describe("a path written as path data", () => {
  test("has an absolute M, then L and C in order", () => {
    expect(toPathData([aLine([0, 0], [10, 0.5]), aCubic([10, 0.5], [1, 2], [3, 4], [5, 6])])).toBe(
      "M0.000000 0.000000 L10.000000 0.500000 C1.000000 2.000000 3.000000 4.000000 5.000000 6.000000",
    );
  });

  test("is read back within a millionth of a millimetre, segment by segment", () => {
    holdsFor(2302, somePath(3000), (path) => {
      const back = aPath(toPathData(path));
      expect(back.map(({ kind }) => kind)).toEqual(path.map(({ kind }) => kind));
      back.forEach((segment, i) => {
        const was = path[i] ?? path[0];
        expect(apart(segment.start, was.start)).toBeLessThan(1e-6);
        expect(apart(segment.end, was.end)).toBeLessThan(1e-6);
      });
    });
  });

  test("is as long, read by another reader and measured by another rule, to a thousandth", () => {
    holdsFor(2303, somePath(), (path) => {
      expect(Math.abs(lengthOfData(toPathData(path)) - lengthOf(path))).toBeLessThan(1e-3);
    });
  });
});

describe("path data as others write it", () => {
  test.each([
    ["M0,0L10,5", "commas and no blanks"],
    ["  M 0 0\n L 10 5 ", "blanks and new lines"],
    ["M0 0 10 5", "a second pair after M"],
  ])("%s is read (%s)", (text) => {
    expect(readPathData(text)).toEqual({ path: [aLine([0, 0], [10, 5])] });
  });

  test("signs, exponents and leading points part numbers without a blank", () => {
    expect(readPathData("M+1-2L1e1.5e1")).toEqual({ path: [aLine([1, -2], [10, 5])] });
  });

  test("numbers after the first six of C draw another curve", () => {
    const twice = aPath("M0 0 C1 1 2 2 3 3 4 4 5 5 6 6");
    expect(twice).toEqual([
      aCubic([0, 0], [1, 1], [2, 2], [3, 3]),
      aCubic([3, 3], [4, 4], [5, 5], [6, 6]),
    ]);
  });
});

describe("path data that is refused", () => {
  test.each([
    ["", "draws nothing"],
    ["M0 0", "draws nothing"],
    ["L10 0", "does not begin with M"],
    ["10 0 L5 5", "10"],
    ["M0 0 L1 1 M5 5 L6 6", "second M"],
    ["M0 0 l10 0", "“l” is not M, L or C"],
    ["M0 0 H10", "“H” is not M, L or C"],
    ["M0 0 L10 0 Z", "“Z” is not M, L or C"],
    ["M0 0 A5 5 0 0 1 10 10", "“A” is not M, L or C"],
    ["M0 0 Q5 5 10 0", "“Q” is not M, L or C"],
    ["M0 0 L10", "after “L” stand 1 numbers"],
    ["M0 0 C1 2 3 4", "after “C” stand 4 numbers"],
    ["M0 0 L", "after “L” stand 0 numbers"],
    ["M0 0 L1e999 0", "a number has no end"],
    ["M0 0 L1;2", "“;” is no mark or number"],
    ["M0 0 LNaN 1", "after “L” stand 0 numbers"],
  ])("%s: %s", (text, words) => {
    expect(faultOf(text)).toContain(words);
  });
});

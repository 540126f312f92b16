import { describe, expect, test } from "vitest";
import { lengthOf } from "../../src/geometry/length.ts";
import {
  endOf,
  endTangent,
  joined,
  lastOf,
  mapPath,
  mirroredPath,
  pathOf,
  prolongedBackward,
  reversed,
  startOf,
  startTangent,
  straight,
} from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { aLine, aPath, somePath } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const BENT = aPath("M0 0 L30 0 C40 0 50 10 50 20");

describe("a path", () => {
  test("has the start of its first segment and the end of its last", () => {
    expect(startOf(BENT)).toEqual({ x: 0, y: 0 });
    expect(endOf(BENT)).toEqual({ x: 50, y: 20 });
    expect(startTangent(BENT)).toEqual({ x: 1, y: 0 });
    expect(endTangent(BENT)).toEqual({ x: 0, y: 1 });
    expect(lastOf(BENT).kind).toBe("cubic");
  });

  test("of no segments is our own mistake, and is thrown", () => {
    expect(() => pathOf([])).toThrow("A path needs a segment.");
  });

  test("turned round twice is itself, and as long either way", () => {
    holdsFor(1701, somePath(), (path) => {
      expect(reversed(reversed(path))).toEqual(path);
      expect(lengthOf(reversed(path))).toBeCloseTo(lengthOf(path), 7);
      expect(startOf(reversed(path))).toEqual(endOf(path));
    });
  });

  test("mirrored is as long, and mirrored twice itself", () => {
    holdsFor(1702, somePath(), (path) => {
      expect(mirroredPath(mirroredPath(path))).toEqual(path);
      expect(lengthOf(mirroredPath(path))).toBeCloseTo(lengthOf(path), 7);
    });
  });

  test("mapped moves every point, handles too", () => {
    expect(mapPath(BENT, ({ x, y }) => point(x + 1, y * 2))).toEqual(
      aPath("M1 0 L31 0 C41 0 51 20 51 40"),
    );
  });

  test("is joined from several in their order", () => {
    expect(joined(straight(point(0, 0), point(1, 0)), BENT).map(({ kind }) => kind)).toEqual([
      "line",
      "line",
      "cubic",
    ]);
  });
});

describe("a path made longer before its start", () => {
  test("is begun further back, straight along its start", () => {
    expect(prolongedBackward(BENT, 10)).toEqual(aPath("M-10 0 L30 0 C40 0 50 10 50 20"));
    const curved = aPath("M0 0 C0 10 10 20 30 20");
    expect(prolongedBackward(curved, 5)).toEqual([aLine([0, -5], [0, 0]), ...curved]);
  });

  test("by nothing is itself", () => {
    expect(prolongedBackward(BENT, 0)).toBe(BENT);
  });
});

import { describe, expect, test } from "vitest";
import type { Point } from "../../src/geometry/point.ts";
import {
  type Degrees,
  degrees,
  type Kilopascal,
  MM_PER_CM,
  MM_PER_INCH,
  type Mm,
  type Radians,
  type Ratio,
  radians,
} from "../../src/geometry/units.ts";

/** Each of these takes one unit and no other; what a wrong call would do is told by the compiler. */
const lengthen = (by: Mm): Mm => by;
const swing = (by: Radians): Radians => by;
const stretch = (by: Ratio): Ratio => by;
const onPiece = (p: Point<"piece">): Point<"piece"> => p;

const angle: Radians = 1;
const slope: Degrees = 57;
const length: Mm = 25.4;
const share: Ratio = 0.8;
const pressure: Kilopascal = 1.5;
const onSheet: Point<"sheet"> = { x: 1, y: 2, frame: "sheet" };

describe("a value of one unit", () => {
  // `tsc` fails where one of these lines compiles: an expected error that is none is an error.
  test("is never taken for another by the compiler", () => {
    // @ts-expect-error radians are no length
    lengthen(angle);
    // @ts-expect-error a share is no length
    lengthen(share);
    // @ts-expect-error a pressure is no length
    lengthen(pressure);
    // @ts-expect-error degrees are not radians
    swing(slope);
    // @ts-expect-error a length is no share
    stretch(length);
    // @ts-expect-error a point of a sheet is no point of a piece
    onPiece(onSheet);
    expect([lengthen(length), swing(angle), stretch(share)]).toEqual([25.4, 1, 0.8]);
  });

  test("may be given as a plain number, which is the caller's word for it", () => {
    expect(lengthen(10)).toBe(10);
    expect(onPiece({ x: 1, y: 2 })).toEqual({ x: 1, y: 2 });
  });
});

describe("what units are worth", () => {
  test("an inch is 25.4 mm since the agreement of 1959 (NIST SP 811, appendix B)", () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(MM_PER_CM).toBe(10);
  });

  test("half a turn is 180 degrees, and the way back is the same", () => {
    expect(degrees(Math.PI)).toBe(180);
    expect(radians(180)).toBe(Math.PI);
    expect(degrees(radians(21))).toBeCloseTo(21, 13);
  });
});

import { describe, expect, test } from "vitest";
import {
  sidesOfBand,
  sidesOfBody,
  sidesOfInsert,
  sidesOfSleeve,
  tightestFold,
} from "../../src/drafting/allowances.ts";
import { aPath } from "../support/curves.ts";
import { DRAFTED, given } from "../support/workedGarment.ts";

const A = { raglan: 9, side: 8, underarm: 7, bands: 6, v: 5 };
const short = (sides: ReturnType<typeof sidesOfBody>) =>
  sides.map(({ name, allowance, corner }) => [name, allowance, corner]);

/** Method 4: which edge takes what, and how its end is shaped. */
describe("the sides of a piece and what they are given", () => {
  test("of a front with a V go from the V to the hem, without the fold", () => {
    const front = { ...DRAFTED.front, v: aPath("M0 135 L25 80") };
    expect(given(front.v)).toBe(front.v);
    expect(short(sidesOfBody(front, A))).toEqual([
      ["v", 5, "seam-before"],
      ["neckline", 6, "seam-follows"],
      ["raglan", 9, "mitre"],
      ["side", 8, "seam-before"],
      ["hem", 6, "mitre"],
    ]);
  });

  test("of a back begin with the neckline", () => {
    expect(short(sidesOfBody(DRAFTED.back, A))[0]).toEqual(["neckline", 6, "seam-follows"]);
  });

  test("of a sleeve end true to the raglan at the neck and to the underarm at the wrist", () => {
    expect(short(sidesOfSleeve(DRAFTED.sleeve, A))).toEqual([
      ["neckline", 6, "seam-follows"],
      ["raglanFront", 9, "mitre"],
      ["underarmFront", 7, "seam-before"],
      ["wrist", 6, "seam-follows"],
      ["underarmBack", 7, "mitre"],
      ["raglanBack", 9, "seam-before"],
    ]);
  });

  test("of an insert end true to the V and in a mitre at its point", () => {
    const edges = {
      top: aPath("M-5 0 L5 0"),
      right: aPath("M5 0 L0 9"),
      left: aPath("M0 9 L-5 0"),
    };
    expect(short(sidesOfInsert(edges, A))).toEqual([
      ["top", 6, "seam-follows"],
      ["right", 5, "mitre"],
      ["left", 5, "seam-before"],
    ]);
  });

  test("of a band are the same all round", () => {
    const e = aPath("M0 0 L1 0");
    const sides = sidesOfBand({ top: e, endB: e, bottom: e, endA: e }, A);
    expect(new Set(sides.map(({ allowance }) => allowance))).toEqual(new Set([6]));
    expect(sides).toHaveLength(4);
  });
});

describe("the tightest fold of an allowance", () => {
  // y = x²/40 has a radius of 20 at its foot, y = x²/20 one of 10.
  const hollow = (radius: number) => {
    const r = 2 * radius;
    return aPath(`M${r} ${r} C${r / 3} ${-r / 3} ${-r / 3} ${-r / 3} ${-r} ${r}`);
  };
  const side = (radius: number, allowance: number) =>
    ({ name: "hem", path: hollow(radius), allowance, corner: "mitre" }) as const;

  test("is the smallest radius that its allowance does not fit, with that allowance", () => {
    const fold = tightestFold([side(20, 25), side(10, 12), side(30, 5)]);
    expect(fold?.radius).toBeCloseTo(10, 6);
    expect(fold?.allowance).toBe(12);
  });

  test("is none where every allowance fits", () => {
    expect(tightestFold([side(20, 19), side(10, 9)])).toBeNull();
  });
});

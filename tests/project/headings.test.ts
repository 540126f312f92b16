import { describe, expect, test } from "vitest";
import { leftAlone, MEASURE_HEADINGS, nearlyHeading } from "../../src/project/headings.ts";
import { lettersOff, nearest } from "../../src/project/nearest.ts";

describe("a heading", () => {
  test.each([
    ["Upper Arm", "upperArm"],
    ["upper_arm", "upperArm"],
    ["CHEST", "chest"],
    [" hip", "hip"],
    ["Sex", "sex"],
  ])("%j is %s but for case and blanks", (heading, meant) => {
    expect(nearlyHeading(heading)).toBe(meant);
  });

  test.each([
    ["hieght", "height"],
    ["scyeDepht", "scyeDepth"],
    ["sholder", "shoulder"],
    ["armLenght", "armLength"],
    ["Neck bse", "neckBase"],
    ["wrists", "wrist"],
    ["heigt", "height"],
  ])("%j is a slip of the pen for %s", (heading, meant) => {
    expect(nearlyHeading(heading)).toBe(meant);
  });

  test.each([
    "weight",
    "Weight",
    "why",
    "hips",
    "header",
    "artist",
    "surname",
    "notes",
    "",
    "bust",
  ])("%j is one of its own", (heading) => {
    expect(nearlyHeading(heading)).toBe(null);
  });

  test("that is a measure is never taken for another", () => {
    for (const heading of MEASURE_HEADINGS) expect(nearlyHeading(heading)).toBe(heading);
  });
});

describe("what is left alone", () => {
  test("is told in one notice, or in none", () => {
    expect(leftAlone([])).toEqual([]);
    expect(leftAlone(["why", "neck", "shoes"])).toEqual([
      "Not known and left alone: why, neck (nearest measure: neckBase), shoes.",
    ]);
  });
});

describe("letters off", () => {
  /** The textbook pair: three changes, as every description of the edit distance has it. */
  test("are 3 from kitten to sitting", () => {
    expect(lettersOff("kitten", "sitting")).toBe(3);
    expect(lettersOff("sitting", "kitten")).toBe(3);
  });

  test("are all of them where the other word is empty", () => {
    expect([lettersOff("", "hip"), lettersOff("hip", ""), lettersOff("", "")]).toEqual([3, 3, 0]);
  });

  test("choose the first of the nearest words, and none that is too far", () => {
    expect(nearest("drat", ["batch", "draft"], 2)).toBe("draft");
    expect(nearest("zzzz", ["batch", "draft"], 2)).toBe(null);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printLength, printPercent, printWithUnit } from "../../src/studio/units/printLength.ts";
import { readLength, readShare } from "../../src/studio/units/readLength.ts";
import { snapped, UNITS } from "../../src/studio/units/unit.ts";

const read = (typed: string, unit: "mm" | "cm" | "in" = "mm") => {
  const found = readLength(typed, unit);
  return found.ok ? found.value : found.why;
};

describe("a length as typed", () => {
  test.each([
    ["57", "mm", 57],
    ["12.7", "mm", 12.7],
    ["12,7", "mm", 12.7],
    ["18.5cm", "mm", 185],
    ["18,5 cm", "mm", 185],
    ["18.5", "cm", 185],
    ["7 1/2", "in", 190.5],
    ["7½", "in", 190.5],
    ["7 ½", "in", 190.5],
    ["1/16", "in", 1.5875],
    ["11/16", "in", 17.4625],
    ["11⁄16", "in", 17.4625],
    ["2 1/4 in", "mm", 57.15],
    ['2"', "mm", 50.8],
    ["2 Zoll", "mm", 50.8],
    ["1 inch", "cm", 25.4],
    ["-3", "mm", -3],
    ["−3", "mm", -3],
    [".5", "in", 12.7],
    ["≈ 1/2", "in", 12.7],
    ["  960 mm ", "cm", 960],
  ] as const)("%j in %s is %d mm", (typed, unit, mm) => {
    expect(read(typed, unit)).toBeCloseTo(mm, 9);
  });

  test.each(["abc", "12 furlongs", "1/0", "1 2", "1//2", "12.7.1", "--3", "NaN", "1e3", "/", "½½"])(
    "%j is refused",
    (typed) => expect(read(typed)).toBe("notANumber"),
  );

  test.each(["", "   ", "\u00a0"])("%j is empty", (typed) => expect(read(typed)).toBe("empty"));

  test("with a plus is so much more than it was", () => {
    expect(readLength("+3", "mm")).toEqual({ ok: true, value: 3, added: true });
    expect(readLength("3", "mm")).toEqual({ ok: true, value: 3, added: false });
  });

  test("that was printed reads back as what was shown, in every unit and language", () => {
    const length = fc.double({ min: -300, max: 2000, noNaN: true });
    fc.assert(
      fc.property(
        length,
        fc.constantFrom(...UNITS),
        fc.constantFrom("en", "de"),
        (mm, unit, language) => {
          const back = read(printLength(mm, unit, language === "de" ? "de" : "en"), unit);
          expect(typeof back).toBe("number");
          expect(Math.abs(Number(back) - mm)).toBeLessThanOrEqual(unit === "in" ? 0.8 : 0.051);
        },
      ),
      { seed: 5, endOnFailure: true },
    );
  });
});

describe("a share as typed", () => {
  test.each([
    ["25 %", true, 0.25],
    ["25", true, 0.25],
    ["12,5", true, 0.125],
    ["0.78", false, 0.78],
    ["78 %", false, 0.78],
  ])("%j", (typed, percent, share) => {
    expect(readShare(typed, percent)).toEqual({ ok: true, value: share, added: false });
  });
  test("as a word is refused", () => {
    expect(readShare("half", true)).toEqual({ ok: false, why: "notANumber" });
  });
});

describe("a length as shown", () => {
  test.each([
    [12.7, "mm", "12.7"],
    [960, "mm", "960"],
    [12.7, "cm", "1.27"],
    [12.7, "in", "½"],
    [190.5, "in", "7½"],
    [52.3875, "in", "2\u00a01⁄16"],
    [9.525, "in", "⅜"],
    [0, "in", "0"],
    [10, "in", "≈\u00a0⅜"],
    [960, "in", "≈\u00a037\u00a013⁄16"],
    [-25.4, "in", "−1"],
    [-0.01, "mm", "0"],
  ] as const)("%d mm in %s is %j", (mm, unit, text) => {
    expect(printLength(mm, unit, "en")).toBe(text);
  });

  test("in German has a comma, and inches are Zoll", () => {
    expect(printWithUnit(12.7, "mm", "de")).toBe("12,7\u00a0mm");
    expect(printWithUnit(25.4, "in", "de")).toBe("1\u00a0Zoll");
    expect(printPercent(0.125, "de")).toBe("12,5\u00a0%");
  });
});

describe("a dragged length rests on", () => {
  test.each([
    [12.63, "mm", false, 12.5],
    [12.63, "mm", true, 12.6],
    [12.63, "in", false, 12.7],
    [12.63, "in", true, 12.7],
    [12.2, "in", true, 12.303125],
  ] as const)("%d %s fine %s: %d", (mm, unit, fine, rests) => {
    expect(snapped(mm, unit, fine)).toBeCloseTo(rests, 6);
  });
});

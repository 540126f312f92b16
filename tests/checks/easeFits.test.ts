import { describe, expect, test } from "vitest";
import type { Measures } from "../../src/drafting/measures.ts";
import type { Changes } from "../support/choices.ts";
import { near } from "../support/expectations.ts";
import { garmentOf } from "../support/workedGarment.ts";
import { expectCheck } from "./expectCheck.ts";

type Case = readonly [
  verdict: "sound" | "attend" | "stop",
  changes: Changes,
  measures: Partial<Measures>,
  value: number,
  says: string,
];

/** Moved sides add 4 · 12.7 = 50.8 to the chest's ease. */
const CHEST: readonly Case[] = [
  ["sound", {}, {}, 190.8, "1150.8 mm, 190.8 mm more than the body's 960 mm"],
  ["attend", { fit: { chestEase: -20 } }, {}, 30.8, "30.8 mm more"],
  ["stop", { fit: { chestEase: -60 } }, {}, -9.2, "950.8 mm, 9.2 mm less than the body's 960 mm"],
  ["attend", { fit: { chestEase: 300 } }, {}, 350.8, "350.8 mm more"],
  ["stop", { fit: { chestEase: 400 } }, {}, 450.8, "450.8 mm more"],
  ["sound", { fit: { chestEase: 60 }, moveSideSeams: { on: false } }, {}, 60, "60 mm more"],
];

describe("the check of the chest's ease, from 60 to 320", () => {
  test.each(CHEST)("is %s (case %#)", (verdict, changes, measures, value, says) => {
    const check = expectCheck(garmentOf(changes, { measures }), "chest-ease", {
      verdict,
      says: [says, "the range is 60 mm to 320 mm."],
      cure: value < 60 ? "Give the chest more ease" : "Give the chest less ease",
    });
    near(check.value, value, 1e-6);
    expect(check.limit).toBe(60);
  });
});

/** Sides made vertical: the hem is 1150.8 whatever the hip. */
const HIP: readonly Case[] = [
  ["sound", {}, {}, 140.8, "1150.8 mm, 140.8 mm more than the body's 1010 mm"],
  ["attend", {}, { hip: 1140 }, 10.8, "10.8 mm more"],
  ["attend", {}, { hip: 1300 }, -149.2, "149.2 mm less than the body's 1300 mm"],
  ["stop", {}, { hip: 1400 }, -249.2, "249.2 mm less"],
  ["attend", {}, { hip: 600 }, 550.8, "550.8 mm more"],
  ["stop", {}, { hip: 540 }, 610.8, "610.8 mm more"],
];

describe("the check of the hip's ease, from 20 to 450, tighter by half of the cloth's stretch", () => {
  test.each(HIP)("is %s (case %#)", (verdict, changes, measures, value, says) => {
    const check = expectCheck(garmentOf(changes, { measures }), "hip-ease", {
      verdict,
      says: [says, "the range is 20 mm to 450 mm."],
      cure: value < 20 ? "Keep the shaped side seams" : "Give the chest less ease",
    });
    near(check.value, value, 1e-6);
    expect(check.limit).toBe(20);
  });

  // -0.5 · 0.25 · 1315 = -164.4 and -0.5 · 0.25 · 1320 = -165; the garment is 1150.8.
  test("turns from attend to stop where the cloth has no more to give", () => {
    const verdictAt = (hip: number, stretch = 0.25) =>
      expectCheck(garmentOf({ body: { stretch } }, { measures: { hip } }), "hip-ease", {
        verdict: hip <= 1315 || stretch > 0.25 ? "attend" : "stop",
        says: ["mm less"],
        cure: "Keep the shaped side seams",
      });
    verdictAt(1315);
    verdictAt(1316);
    verdictAt(1316, 0.3);
  });
});

const ARM: readonly Case[] = [
  ["sound", {}, {}, 134.6766, "439.7 mm, 134.7 mm more than the body's 305 mm"],
  ["attend", { fit: { upperArmEase: 0 } }, {}, 25.228, "25.2 mm more"],
  [
    "stop",
    { fit: { upperArmEase: -20 }, moveSideSeams: { on: false } },
    {},
    -20,
    "285 mm, 20 mm less than the body's 305 mm",
  ],
  ["attend", { fit: { upperArmEase: 230 } }, {}, 251.215, "251.2 mm more"],
  ["stop", { fit: { upperArmEase: 300, chestEase: 400 } }, {}, 322.385, "322.4 mm more"],
];

describe("the check of the upper arm's ease, from 40 to 220", () => {
  test.each(ARM)("is %s (case %#)", (verdict, changes, measures, value, says) => {
    const check = expectCheck(garmentOf(changes, { measures }), "upper-arm-ease", {
      verdict,
      says: [says, "the range is 40 mm to 220 mm."],
      cure: value < 40 ? "Give the upper arm more ease" : "Give the upper arm less ease",
    });
    near(check.value, value, 1e-3);
    expect(check.limit).toBe(40);
  });
});

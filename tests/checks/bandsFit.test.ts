import { describe, expect, test } from "vitest";
import type { Measures } from "../../src/drafting/measures.ts";
import type { Changes } from "../support/choices.ts";
import { near } from "../support/expectations.ts";
import { checkIn, garmentOf } from "../support/workedGarment.ts";
import { expectCheck } from "./expectCheck.ts";

type Verdict = "sound" | "attend" | "stop";
type Case = readonly [Verdict, Changes, Partial<Measures>, string];

const ribOf = (stretch: number): Changes => ({ rib: { stretch } });

const suite = (id: string, cure: string, cases: readonly Case[]): void => {
  test.each(cases)(`${id} is %s (case %#)`, (verdict, changes, measures, says) => {
    expectCheck(garmentOf(changes, { measures }), id, { verdict, says: [says], cure });
  });
};

const MORE_EASE = "Give the band more ease, or use a rib that stretches more.";

/** 187/155 - 1 = 0.2065. */
describe("the check that the hand passes the cuff", () => {
  suite("hand-passes-cuff", MORE_EASE, [
    ["sound", {}, {}, "The cuff, 155 mm, must stretch by 21 % for the hand, 187 mm (limit 72 %)."],
    ["sound", { cuff: { ease: 60 } }, {}, "215 mm, need not stretch for the hand, 187 mm"],
    ["attend", ribOf(0.22), {}, "(limit 20 %)"],
    ["stop", ribOf(0.2), {}, "(limit 18 %)"],
  ]);
});

/** 243.048/155 - 1 = 0.5681; sound from 0 to 0.75 of the stretch, attend from -0.05 to all of it. */
describe("the check that the cuff holds", () => {
  suite("cuff-holds", "Change the wrist width, or the cuff's ease.", [
    [
      "sound",
      {},
      {},
      "The sleeve's end, 243 mm, stretches the cuff, 155 mm, by 57 % when it is sewn on; the range is 0 % to 60 %.",
    ],
    ["attend", ribOf(0.7), {}, "the range is 0 % to 52 %"],
    ["stop", ribOf(0.5), {}, "the range is 0 % to 38 %"],
    [
      "attend",
      { cuff: { ease: 100 } },
      {},
      "is 5 % shorter than the cuff, 255 mm, that is sewn on; the range is",
    ],
    ["stop", { cuff: { ease: 100 } }, { wrist: 175 }, "is 5 % shorter than the cuff, 275 mm"],
  ]);

  test("has the upper end of its range as its limit", () => {
    near(checkIn(garmentOf(), "cuff-holds").limit, 0.6, 1e-12);
  });
});

/** 716 ε/(s G): at rest a cuff of 129 on a wrist of 155 presses with 1.01 kPa, one of 110 with 2.09. */
describe("the check of what the cuff presses with", () => {
  suite("cuff-pressure", "Give the band more ease.", [
    ["sound", {}, {}, "At rest the cuff presses with 0 kPa; the limit is 1 kPa."],
    ["attend", { cuff: { ease: -26 } }, {}, "1.01 kPa"],
    ["stop", { cuff: { ease: -45 } }, {}, "2.09 kPa"],
  ]);
});

/** 1010/950 - 1 = 0.0632. */
describe("the check that hip and chest pass the hem band", () => {
  suite("hem-band-passes", MORE_EASE, [
    ["sound", {}, {}, "The hem band, 1010 mm, need not stretch for the hip, 1010 mm (limit 72 %)."],
    ["attend", { hemBand: { ease: -60 }, rib: { stretch: 0.065 } }, {}, "by 6 % for the hip"],
    ["stop", { hemBand: { ease: -60 }, rib: { stretch: 0.06 } }, {}, "(limit 5 %)"],
  ]);

  test("names the chest where that is the larger", () => {
    const broad = garmentOf({}, { measures: { chest: 1100 } });
    expectCheck(broad, "hem-band-passes", {
      verdict: "sound",
      says: ["by 9 % for the chest, 1100 mm"],
      cure: MORE_EASE,
    });
  });
});

/** 1150.8/1010 - 1 = 0.1394; sound from 0 to half of the stretch, attend from -0.1 to all of it. */
describe("the check that the hem band holds", () => {
  suite("hem-band-holds", "Change the hem's width, or the band's ease.", [
    [
      "sound",
      {},
      {},
      "The hem, 1150.8 mm, stretches the hem band, 1010 mm, by 14 % when it is sewn on",
    ],
    ["attend", ribOf(0.25), {}, "the range is 0 % to 13 %"],
    ["stop", ribOf(0.1), {}, "the range is 0 % to 5 %"],
    ["attend", { hemBand: { ease: 100 } }, { hip: 1100 }, "is 4 % shorter than the hem band"],
    ["stop", { hemBand: { ease: 100 } }, { hip: 1250 }, "is 15 % shorter than the hem band"],
  ]);
});

describe("the check of what the hem band presses with", () => {
  suite("hem-band-pressure", "Give the band more ease.", [
    ["sound", {}, {}, "At rest the hem band presses with 0 kPa; the limit is 1 kPa."],
    ["attend", { hemBand: { ease: -60 }, rib: { stretch: 0.04 } }, {}, "1.06 kPa"],
    ["stop", { hemBand: { ease: -60 }, rib: { stretch: 0.02 } }, {}, "2.12 kPa"],
  ]);

  // Method 5.3: it is no fault that a band as long as the hip hangs; the maker is told.
  test("tells what would hold a blouse where the band hangs, and not where it holds one", () => {
    const words = "It hangs below the hip; 961.5\u00a0mm or shorter holds a blouse there.";
    expect(checkIn(garmentOf(), "hem-band-pressure").message).toContain(words);
    const short = garmentOf({ hemBand: { ease: -49 } });
    expect(checkIn(short, "hem-band-pressure").message).not.toContain("hangs");
  });
});

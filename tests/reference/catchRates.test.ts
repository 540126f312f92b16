import { describe, expect, test } from "vitest";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import { type Body, MEASURE_IDS, type MeasureId } from "../../src/drafting/measures.ts";
import { fitsBetterSwapped } from "../../src/drafting/waistHipSwap.ts";
import { HELD_OUT, ofGroup, onlyGiven, type SurveyBody } from "./survey.ts";

/**
 * Source: ANSUR II, public release, 2012; see data/ansur2.md. The 1,213 bodies are those that no
 * regression was fitted on, so these are the rates to be expected of strangers. Shares in per cent
 * were first worked by another program (NumPy) on the same bodies.
 */
const THE_FOUR = ["height", "chest", "waist", "hip"] as const satisfies MeasureId[];
const GIRTHS = ["head", "neckBase", "chest", "waist", "hip", "upperArm", "wrist", "hand"] as const;
const JUDGED = MEASURE_IDS.filter((id) => id !== "height");

/** The bodies as their makers would give them: all measures, or the four and one more. */
const GIVEN_IN_FULL = HELD_OUT.map((body) => onlyGiven(body, MEASURE_IDS));
const givenFourAnd = (id: MeasureId) => HELD_OUT.map((body) => onlyGiven(body, [...THE_FOUR, id]));

/** The share of bodies in which anything is doubted when one measure has slipped. */
const shareDoubted = (
  bodies: readonly Body[],
  id: MeasureId,
  slip: (value: number) => number,
): number => {
  const doubted = bodies.filter((body) => {
    const measures = { ...body.measures, [id]: slip(body.measures[id] ?? Number.NaN) };
    return doubtfulMeasures({ ...body, measures }).length > 0;
  });
  return doubted.length / bodies.length;
};

const SLIPS: readonly (readonly [string, (value: number) => number])[] = [
  ["a tenth: centimetres typed as mm", (value) => value / 10],
  ["ten times", (value) => value * 10],
  ["inches typed as cm", (value) => value / 2.54],
  ["centimetres typed as inches", (value) => value * 2.54],
];

describe("a slip in one measure", () => {
  describe.each(SLIPS)("of %s", (_, slip) => {
    test.each(JUDGED)("is caught on every body in %s, all measures given", (id) => {
      expect(shareDoubted(GIVEN_IN_FULL, id, slip)).toBe(1);
    });

    test.each(JUDGED)("is caught on every body in %s, with height, chest, waist and hip", (id) => {
      expect(shareDoubted(givenFourAnd(id), id, slip)).toBe(1);
    });
  });

  test.each(GIRTHS)("of half a girth is caught on every body in %s", (id) => {
    const half = (value: number) => value / 2;
    expect(shareDoubted(GIVEN_IN_FULL, id, half)).toBe(1);
    expect(shareDoubted(givenFourAnd(id), id, half)).toBe(1);
  });

  test("of wrist and hand exchanged is caught on every body", () => {
    for (const body of HELD_OUT) {
      const { wrist, hand } = body.measures;
      const exchanged = { ...body, measures: { ...body.measures, wrist: hand, hand: wrist } };
      const found = doubtfulMeasures(exchanged).find(({ id }) => id === "wrist");
      expect(found?.reason).toBe("logic");
    }
  });

  test("of 20 mm in a chest mostly goes by: measuring twice is the cure", () => {
    expect(shareDoubted(GIVEN_IN_FULL, "chest", (value) => value + 20)).toBeLessThan(0.15);
  });
});

describe("an honest body", () => {
  test("is asked to measure again in 4 to 7 of 100, all measures given", () => {
    // The other program, without waistToHip: 5.6 %.
    const asked = HELD_OUT.filter((body) => doubtfulMeasures(body).length > 0);
    expect(asked.length / HELD_OUT.length).toBeGreaterThan(0.04);
    expect(asked.length / HELD_OUT.length).toBeLessThan(0.07);
  });
});

describe("whether waist and hip are exchanged", () => {
  const shares = (sex: "female" | "male") => {
    const bodies = ofGroup(HELD_OUT, sex);
    const exchanged = bodies.map((body) => {
      const { waist, hip } = body.measures;
      return { ...body, measures: { ...body.measures, waist: hip, hip: waist } };
    });
    const share = (of: readonly SurveyBody[]) => of.filter(fitsBetterSwapped).length / of.length;
    return { caught: share(exchanged), askedInVain: share(bodies) };
  };

  test("is asked of 99 % of the women on whom they are and of 0.25 % on whom they are not", () => {
    expect(shares("female").caught).toBeCloseTo(0.9899, 4);
    expect(shares("female").askedInVain).toBeCloseTo(0.0025, 4);
  });

  test("is asked of 68 % of the men on whom they are and of 0.4 % on whom they are not", () => {
    expect(shares("male").caught).toBeCloseTo(0.6777, 4);
    expect(shares("male").askedInVain).toBeCloseTo(0.0037, 4);
  });
});

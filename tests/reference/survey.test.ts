import { describe, expect, test } from "vitest";
import { MEASURE_NAMES } from "../../src/drafting/data/measureNames.ts";
import { PREDICTOR } from "../../src/drafting/data/predictor.ts";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import { completeMeasures } from "../../src/drafting/estimate.ts";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { percentile } from "./percentile.ts";
import { HELD_OUT, ofGroup, SAMPLE_BODIES, SURVEY } from "./survey.ts";

/** Source: ANSUR II, public release, 2012; see data/ansur2.md. */
describe("the survey", () => {
  test("has 1,986 women and 4,082 men, of whom 397 and 816 were kept to test by", () => {
    expect([ofGroup(SURVEY, "female").length, ofGroup(SURVEY, "male").length]).toEqual([
      1986, 4082,
    ]);
    expect([ofGroup(HELD_OUT, "female").length, ofGroup(HELD_OUT, "male").length]).toEqual([
      397, 816,
    ]);
  });

  test("has no body that breaks an order which must hold", () => {
    const broken = SURVEY.flatMap((body) =>
      doubtfulMeasures(body).filter(({ reason }) => reason === "logic"),
    );
    expect(broken).toEqual([]);
  });

  test("has a waist above the hip on 0.9 % of the women and 9 % of the men, so that is no order", () => {
    const share = (sex: "female" | "male") => {
      const bodies = ofGroup(SURVEY, sex);
      return bodies.filter(({ measures }) => measures.waist > measures.hip).length / bodies.length;
    };
    expect(share("female")).toBeCloseTo(0.0086, 4);
    expect(share("male")).toBeCloseTo(0.0906, 4);
  });

  test("gives every one of its bodies in full, so nothing of them is estimated", () => {
    for (const body of SAMPLE_BODIES) {
      const { measures, estimated } = completeMeasures(body);
      expect(estimated).toEqual([]);
      for (const id of MEASURE_IDS) expect(measures[id]).toBe(body.measures[id]);
    }
  });

  test("lies within the limits beyond which a body is refused", () => {
    for (const id of MEASURE_IDS) {
      const values = SURVEY.map(({ measures }) => measures[id]);
      const { least, most } = MEASURE_NAMES[id].limits;
      expect(Math.min(...values)).toBeGreaterThan(least);
      expect(Math.max(...values)).toBeLessThan(most);
    }
  });
});

describe("the ranges shown to a maker", () => {
  const told = [...MEASURE_IDS, "waistToHip", "torsoGirth"] as const;
  test.each(told)("of %s are the survey's 1st, 50th and 99th percentile to the mm", (id) => {
    for (const [sex, range] of [
      ["female", MEASURE_NAMES[id].usual.women],
      ["male", MEASURE_NAMES[id].usual.men],
    ] as const) {
      const values = ofGroup(SURVEY, sex).map(({ measures }) => measures[id]);
      [0.01, 0.5, 0.99].forEach((share, i) => {
        expect(Math.abs((range[i] ?? NaN) - percentile(values, share))).toBeLessThanOrEqual(0.56);
      });
    }
  });

  test("beyond which an estimate is called a stretch are its 1st and 99th percentile to 0.1 mm", () => {
    for (const group of ["female", "male", "pooled"] as const)
      for (const id of ["height", "chest", "waist", "hip"] as const) {
        const values = ofGroup(SURVEY, group).map(({ measures }) => measures[id]);
        const [least, most] = PREDICTOR[group].validRange[id];
        expect(Math.abs(least - percentile(values, 0.01))).toBeLessThanOrEqual(0.0501);
        expect(Math.abs(most - percentile(values, 0.99))).toBeLessThanOrEqual(0.0501);
      }
  });
});

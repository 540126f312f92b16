import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { completeMeasures } from "../../src/drafting/estimate.ts";
import { type Body, MEASURE_IDS, type MeasureId } from "../../src/drafting/measures.ts";
import { exampleBody, someBody, someMeasures, someSex } from "./bodies.ts";

const THE_FOUR = ["height", "chest", "waist", "hip"] as const satisfies MeasureId[];

const estimateOf = (body: Body, id: MeasureId) =>
  completeMeasures(body).estimated.find((estimate) => estimate.id === id);

describe("completing the measures of a body", () => {
  test("leaves every given measure as it was given and names every other", () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const { measures, estimated } = completeMeasures(body);
        const named = estimated.map(({ id }) => id);
        for (const id of MEASURE_IDS) {
          expect(named.includes(id)).toBe(body.measures[id] === undefined);
          expect(measures[id]).toBe(
            body.measures[id] ?? estimated.find((estimate) => estimate.id === id)?.value,
          );
        }
      }),
      { seed: 201, endOnFailure: true },
    );
  });

  test("estimates nothing where all sixteen are given", () => {
    expect(completeMeasures(exampleBody()).estimated).toEqual([]);
  });

  test("foretells a woman's wrist from the four by the survey's line: 156.34 ± 11.4", () => {
    // ANSUR II, women, least squares: 28.8992 + 0.049302 height + 0.021616 chest + 0.004894 waist
    // + 0.020533 hip, spread 5.70; worked by hand for height 1660, chest 960, waist 840, hip 1010.
    const estimate = estimateOf(exampleBody({}, THE_FOUR, "female"), "wrist");
    expect(estimate?.value).toBeCloseTo(156.34117, 9);
    expect(estimate?.plusMinus).toBeCloseTo(11.4, 9);
  });

  test("with the four given, no further measure changes an estimate", () => {
    fc.assert(
      fc.property(someMeasures, fc.subarray([...MEASURE_IDS]), someSex, (all, more, sex) => {
        const few = exampleBody(all, THE_FOUR, sex);
        for (const { id, value } of completeMeasures(exampleBody(all, [...THE_FOUR, ...more], sex))
          .estimated)
          expect(value).toBeCloseTo(estimateOf(few, id)?.value ?? Number.NaN, 9);
      }),
      { seed: 202, endOnFailure: true },
    );
  });

  test("gives what is kept with the body no say", () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const kept = { elbow: 240, waistToHip: 250, torsoGirth: 2500 };
        const withKept = { ...body, measures: { ...body.measures, ...kept } };
        expect(completeMeasures(withKept)).toEqual(completeMeasures(body));
      }),
      { seed: 203, endOnFailure: true },
    );
  });

  test("says when height, chest, waist or hip lies beyond the survey's 1st to 99th percentile", () => {
    // Women's chest: 784.0 to 1160.2 in ANSUR II; men's 872.8 to 1276.2.
    const isBeyond = (chest: number, sex: "female" | "male") =>
      estimateOf(exampleBody({ chest }, ["height", "chest"], sex), "wrist")?.beyondSurvey;
    expect(isBeyond(784, "female")).toBe(false);
    expect(isBeyond(783.9, "female")).toBe(true);
    expect(isBeyond(1161, "female")).toBe(true);
    expect(isBeyond(1161, "male")).toBe(false);
  });
});

/** Both are laws of the normal distribution, of any textbook on several variables. */
describe("estimating by the normal distribution, waist not given", () => {
  const fewer = fc.subarray(MEASURE_IDS.filter((id) => id !== "waist" && id !== "napeToHip"));

  test("takes an estimate, entered as if measured, as no news", () => {
    fc.assert(
      fc.property(someMeasures, fewer, someSex, (all, given, sex) => {
        const before = completeMeasures(exampleBody(all, given, sex));
        const entered = before.estimated.find(({ id }) => id !== "waist" && id !== "napeToHip");
        if (entered === undefined) return;
        const told = { ...all, [entered.id]: entered.value };
        const after = completeMeasures(exampleBody(told, [...given, entered.id], sex));
        for (const { id, value } of after.estimated)
          expect(value).toBeCloseTo(before.measures[id], 6);
      }),
      { seed: 204, endOnFailure: true },
    );
  });

  test("never grows less sure when one more measure is given", () => {
    fc.assert(
      fc.property(fewer, fc.constantFrom(...MEASURE_IDS), someSex, (given, more, sex) => {
        if (more === "waist" || more === "napeToHip") return;
        const before = exampleBody({}, given, sex);
        for (const { id, plusMinus } of completeMeasures(exampleBody({}, [...given, more], sex))
          .estimated)
          expect(plusMinus).toBeLessThanOrEqual((estimateOf(before, id)?.plusMinus ?? 0) + 1e-9);
      }),
      { seed: 205, endOnFailure: true },
    );
  });
});

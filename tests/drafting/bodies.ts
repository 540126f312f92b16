import fc from "fast-check";
import type { Body, Measures, Sex } from "../../src/drafting/measures.ts";
import { MEASURE_IDS, type MeasureId } from "../../src/drafting/measures.ts";

/** The worked example of the method, section 8: a woman of chest 960. Lengths in mm. */
export const WORKED_EXAMPLE: Measures = {
  height: 1660,
  chest: 960,
  waist: 840,
  hip: 1010,
  neckBase: 372,
  shoulder: 136,
  acrossBack: 375,
  napeToWaist: 424,
  napeToHip: 572,
  scyeDepth: 187,
  upperArm: 305,
  wrist: 155,
  hand: 187,
  head: 561,
  armLength: 553,
  spineToWrist: 760,
};

/** The worked example with some measures changed, and only those of `given` (all by default). */
export const exampleBody = (
  changed: Partial<Measures> = {},
  given: readonly MeasureId[] = MEASURE_IDS,
  sex?: Sex,
): Body => {
  const all: Measures = { ...WORKED_EXAMPLE, ...changed };
  const known = Object.fromEntries(given.map((id) => [id, all[id]]));
  const measures = { ...known, height: all.height, chest: all.chest };
  return { id: "example", measures, ...(sex === undefined ? {} : { sex }) };
};

/** Measures anywhere from a tenth under to a tenth over the worked example's. */
export const someMeasures: fc.Arbitrary<Measures> = fc
  .record(
    Object.fromEntries(
      MEASURE_IDS.map((id) => [id, fc.double({ min: 0.9, max: 1.1, noNaN: true })]),
    ),
  )
  .map((scale) => {
    const of = (id: MeasureId): number => WORKED_EXAMPLE[id] * (scale[id] ?? 1);
    return { ...WORKED_EXAMPLE, ...Object.fromEntries(MEASURE_IDS.map((id) => [id, of(id)])) };
  });

export const someSex: fc.Arbitrary<Sex | undefined> = fc.constantFrom("female", "male", undefined);

/** A body with height, chest and any others of the sixteen. */
export const someBody: fc.Arbitrary<Body> = fc
  .tuple(someMeasures, fc.subarray([...MEASURE_IDS]), someSex)
  .map(([measures, given, sex]) => exampleBody(measures, given, sex));

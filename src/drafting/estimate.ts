import type { Mm } from "../geometry/units.ts";
import { MEASURE_NAMES } from "./data/measureNames.ts";
import { PREDICTOR, type PredictorId } from "./data/predictor.ts";
import { foretellingsFor, groupOf, valuesOf } from "./foretelling.ts";
import { valueBy } from "./linearRule.ts";
import type { Body, MeasureId, Measures } from "./measures.ts";

/** A measure that was not given, as the given ones foretell it. */
export type Estimate = {
  readonly id: MeasureId;
  readonly value: Mm;
  /** About 95 in 100 honest bodies lie within so much of the value. */
  readonly plusMinus: Mm;
  /** The body is smaller or larger than the survey's; the true spread is larger then. */
  readonly beyondSurvey: boolean;
};

const PREDICTORS = ["height", "chest", "waist", "hip"] as const satisfies PredictorId[];

const liesBeyondSurvey = (body: Body): boolean => {
  const { validRange } = PREDICTOR[groupOf(body)];
  return PREDICTORS.some((id) => {
    const [least, most] = validRange[id];
    const value = body.measures[id];
    return value !== undefined && (value < least || value > most);
  });
};

/**
 * A straight line foretells anything where a body is far from the survey's, less than nothing too. An
 * estimate is held to what a given measure may be, and `doubtfulMeasures` tells of it.
 */
export const heldEstimate = (id: MeasureId, foretold: Mm): Mm => {
  const { least, most } = MEASURE_NAMES[id].limits;
  return Math.min(most, Math.max(least, foretold));
};

const measuresFrom = (of: (id: MeasureId) => Mm): Measures => ({
  height: of("height"),
  chest: of("chest"),
  waist: of("waist"),
  hip: of("hip"),
  neckBase: of("neckBase"),
  shoulder: of("shoulder"),
  acrossBack: of("acrossBack"),
  napeToWaist: of("napeToWaist"),
  napeToHip: of("napeToHip"),
  scyeDepth: of("scyeDepth"),
  upperArm: of("upperArm"),
  wrist: of("wrist"),
  hand: of("hand"),
  head: of("head"),
  armLength: of("armLength"),
  spineToWrist: of("spineToWrist"),
});

/**
 * All sixteen measures of a body: a given one stays as given, a missing one is estimated from the
 * given ones and named. No estimate feeds another.
 *
 * Unit: mm. Error: two spreads, `plusMinus`. Source: method, section 7.
 */
export const completeMeasures = (
  body: Body,
): { readonly measures: Measures; readonly estimated: readonly Estimate[] } => {
  const values = valuesOf(body);
  const beyondSurvey = liesBeyondSurvey(body);
  const estimated = foretellingsFor(body).missing.map(({ id, rule }) => ({
    id,
    value: heldEstimate(id, valueBy(rule, values)),
    plusMinus: 2 * rule.sd,
    beyondSurvey,
  }));
  const knownOrEstimated = (id: MeasureId): Mm =>
    body.measures[id] ?? estimated.find((estimate) => estimate.id === id)?.value ?? Number.NaN;
  return { measures: measuresFrom(knownOrEstimated), estimated };
};

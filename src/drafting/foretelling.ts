import { type Group, type GroupId, PREDICTOR, type Regression } from "./data/predictor.ts";
import { added, type LinearRule, measureItself } from "./linearRule.ts";
import { type Body, MEASURE_IDS, type MeasureId } from "./measures.ts";
import {
  byAllOthers,
  byTheKnown,
  type Known,
  knowing,
  napeToHipByTheKnown,
  WAIST_TO_HIP,
} from "./normal.ts";

/** A measure and the rule by which the given ones foretell it. */
export type Foretelling = { readonly id: MeasureId; readonly rule: LinearRule };

/** What a set of given measures foretells. It knows which are given, not how large they are. */
export type Foretellings = {
  readonly missing: readonly Foretelling[];
  /** Given measures, each from the others; never height. */
  readonly judged: readonly Foretelling[];
};

type Judged = Exclude<MeasureId, "height">;
type IsGiven = (id: MeasureId) => boolean;

/** With so many known, each is judged by all the others. Method, section 7. */
const ENOUGH_TO_JUDGE_BY_ALL = 8;
/** Sets of given measures kept in mind. A table of bodies seldom has more than a few. */
const KEPT = 512;

const isJudged = (id: MeasureId): id is Judged => id !== "height";
const JUDGED: readonly Judged[] = MEASURE_IDS.filter(isJudged);

/** Null where a measure that the regression needs is not given. */
const byRegression = (regression: Regression, isGiven: IsGiven): LinearRule | null => {
  const { intercept, coef, residualSd } = regression;
  const isWhole = MEASURE_IDS.every((id) => coef[id] === undefined || isGiven(id));
  const weights = MEASURE_IDS.map((id) => coef[id] ?? 0);
  return isWhole ? { constant: intercept, weights, sd: residualSd } : null;
};

/** The known places of the normal; waistToHip is known where both its ends are given. */
const knownPlaces = (isGiven: IsGiven): readonly number[] =>
  MEASURE_IDS.flatMap((id, place) => {
    const isKnown = isGiven(id) && (id !== "napeToHip" || isGiven("napeToWaist"));
    return isKnown ? [place] : [];
  });

const byNormal = (id: Judged, known: Known): LinearRule =>
  id === "napeToHip" ? napeToHipByTheKnown(known) : byTheKnown(known, MEASURE_IDS.indexOf(id));

const foretellMissing = (group: Group, known: Known, isGiven: IsGiven): readonly Foretelling[] => {
  const hasTheFour = isGiven("waist") && isGiven("hip");
  return JUDGED.filter((id) => !isGiven(id)).map((id) => ({
    id,
    rule: (hasTheFour ? byRegression(group.full[id], isGiven) : null) ?? byNormal(id, known),
  }));
};

const judgeByAll = (known: Known): readonly Foretelling[] =>
  known.places.flatMap((place) => {
    const id = MEASURE_IDS[place];
    if (id === undefined || !isJudged(id)) return [];
    const rule = byAllOthers(known, place);
    if (place !== WAIST_TO_HIP) return [{ id, rule }];
    return [{ id, rule: added(measureItself("napeToWaist"), rule, rule.sd) }];
  });

const judgeByFew = (group: Group, isGiven: IsGiven): readonly Foretelling[] =>
  JUDGED.filter(isGiven).flatMap((id) => {
    const rule = byRegression(group.full[id], isGiven) ?? byRegression(group.small[id], isGiven);
    return rule === null ? [] : [{ id, rule }];
  });

const foretellingsOf = (group: Group, given: number): Foretellings => {
  const isGiven: IsGiven = (id) => ((given >> MEASURE_IDS.indexOf(id)) & 1) === 1;
  const known = knowing(group, knownPlaces(isGiven));
  const isEnough = known.places.length >= ENOUGH_TO_JUDGE_BY_ALL;
  return {
    missing: foretellMissing(group, known, isGiven),
    judged: isEnough ? judgeByAll(known) : judgeByFew(group, isGiven),
  };
};

/** The rules of a set of given measures are worked once: the sweep costs more than a draft may. */
const keptInMind = new Map<string, Foretellings>();

export const groupOf = ({ sex }: Body): GroupId => sex ?? "pooled";

/** In the order of MEASURE_IDS, 0 for a measure that is not given. Unit: mm. */
export const valuesOf = ({ measures }: Body): readonly number[] =>
  MEASURE_IDS.map((id) => measures[id] ?? 0);

/** What is missing and what is judged in a body, each with its rule. Method, section 7. */
export const foretellingsFor = (body: Body): Foretellings => {
  const given = MEASURE_IDS.reduce(
    (bits, id, place) => (body.measures[id] === undefined ? bits : bits | (1 << place)),
    0,
  );
  const group = groupOf(body);
  const key = `${group} ${given}`;
  const kept = keptInMind.get(key);
  if (kept !== undefined) return kept;
  const worked = foretellingsOf(PREDICTOR[group], given);
  if (keptInMind.size >= KEPT) keptInMind.clear();
  keptInMind.set(key, worked);
  return worked;
};

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
type Foretelling = {
  readonly id: MeasureId;
  readonly rule: LinearRule;
  /** What the rule looks at, where that is few; empty where it is all the others given. */
  readonly from: readonly MeasureId[];
};

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
const byRegression = (id: Judged, by: Regression, isGiven: IsGiven): Foretelling | null => {
  const from = MEASURE_IDS.filter((other) => by.coef[other] !== undefined);
  const weights = MEASURE_IDS.map((other) => by.coef[other] ?? 0);
  const rule = { constant: by.intercept, weights, sd: by.residualSd };
  return from.every(isGiven) ? { id, rule, from } : null;
};

/** The known places of the normal; waistToHip is known where both its ends are given. */
const knownPlaces = (isGiven: IsGiven): readonly number[] =>
  MEASURE_IDS.flatMap((id, place) => {
    const isKnown = isGiven(id) && (id !== "napeToHip" || isGiven("napeToWaist"));
    return isKnown ? [place] : [];
  });

const byNormal = (id: Judged, known: Known): Foretelling => {
  const isHip = id === "napeToHip";
  const rule = isHip ? napeToHipByTheKnown(known) : byTheKnown(known, MEASURE_IDS.indexOf(id));
  return { id, rule, from: [] };
};

const foretellMissing = (group: Group, known: Known, isGiven: IsGiven): readonly Foretelling[] => {
  const hasTheFour = isGiven("waist") && isGiven("hip");
  return JUDGED.filter((id) => !isGiven(id)).map((id) => {
    const byFour = hasTheFour ? byRegression(id, group.full[id], isGiven) : null;
    return byFour ?? byNormal(id, known);
  });
};

const judgeByAll = (known: Known): readonly Foretelling[] =>
  known.places.flatMap((place) => {
    const id = MEASURE_IDS[place];
    if (id === undefined || !isJudged(id)) return [];
    const below = byAllOthers(known, place);
    const isHip = place === WAIST_TO_HIP;
    const rule = isHip ? added(measureItself("napeToWaist"), below, below.sd) : below;
    return [{ id, rule, from: [] }];
  });

const judgeByFew = (group: Group, isGiven: IsGiven): readonly Foretelling[] =>
  JUDGED.filter(isGiven).flatMap((id) => {
    const byFour = byRegression(id, group.full[id], isGiven);
    return byFour ?? byRegression(id, group.small[id], isGiven) ?? [];
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

import type { Group } from "./data/predictor.ts";
import { added, type LinearRule, measureItself } from "./linearRule.ts";
import { MEASURE_IDS } from "./measures.ts";
import { type Matrix, mirrored, sweep } from "./sweep.ts";

/**
 * The survey's normal distribution when some measures are known (method, section 7). Its places
 * are those of MEASURE_IDS, but in the place of napeToHip it holds waistToHip, the difference of
 * napeToHip and napeToWaist.
 */
export type Known = {
  readonly places: readonly number[];
  readonly mean: readonly number[];
  readonly swept: Matrix;
};

const NAPE_TO_WAIST = MEASURE_IDS.indexOf("napeToWaist");
export const WAIST_TO_HIP = MEASURE_IDS.indexOf("napeToHip");

export const knowing = ({ normal }: Group, places: readonly number[]): Known => ({
  places,
  mean: normal.mean,
  swept: places.reduce(sweep, mirrored(normal.covariance)),
});

const at = ({ swept }: Known, row: number, column: number): number =>
  swept[row]?.[column] ?? Number.NaN;

/** The mean of `place`, pulled by what the known places have over their own means. */
const pulled = (known: Known, place: number, pull: (other: number) => number, sd: number) => {
  const pulls = MEASURE_IDS.map((_, other) => (known.places.includes(other) ? pull(other) : 0));
  const mean = (of: number): number => known.mean[of] ?? Number.NaN;
  const byHip = pulls[WAIST_TO_HIP] ?? 0;
  return {
    constant: pulls.reduce((rest, share, other) => rest - share * mean(other), mean(place)),
    // A pull by waistToHip is one by napeToHip and its opposite by napeToWaist.
    weights: pulls.map((share, other) => (other === NAPE_TO_WAIST ? share - byHip : share)),
    sd,
  } satisfies LinearRule;
};

/** A place that is not known: μm + Cmg Cgg⁻¹ (xg − μg). */
export const byTheKnown = (known: Known, place: number): LinearRule =>
  pulled(known, place, (other) => at(known, place, other), Math.sqrt(at(known, place, place)));

/** A known place from all the other known ones: x − r/Λkk, with a spread of 1/√Λkk. */
export const byAllOthers = (known: Known, place: number): LinearRule => {
  const own = at(known, place, place); // −Λkk
  const pull = (other: number): number => (other === place ? 0 : -at(known, place, other) / own);
  return pulled(known, place, pull, 1 / Math.sqrt(-own));
};

/** napeToHip not given: napeToWaist, given or by the normal, and waistToHip by the normal. */
export const napeToHipByTheKnown = (known: Known): LinearRule => {
  const below = byTheKnown(known, WAIST_TO_HIP);
  if (known.places.includes(NAPE_TO_WAIST)) {
    return added(measureItself("napeToWaist"), below, below.sd);
  }
  const variance =
    at(known, NAPE_TO_WAIST, NAPE_TO_WAIST) +
    2 * at(known, NAPE_TO_WAIST, WAIST_TO_HIP) +
    at(known, WAIST_TO_HIP, WAIST_TO_HIP);
  return added(byTheKnown(known, NAPE_TO_WAIST), below, Math.sqrt(variance));
};

import type { Body, MeasureId, Measures, Sex } from "../../src/drafting/measures.ts";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { referenceTable, referenceText } from "./table.ts";

/** Source: ANSUR II, public release; see data/ansur2.md. Lengths in mm. */
export type SurveyBody = Body & {
  readonly sex: Sex;
  readonly measures: Measures & { readonly waistToHip: number; readonly torsoGirth: number };
  /** Kept back when the regressions were fitted. */
  readonly isHeldOut: boolean;
};

const heldOut = new Set(referenceText("held-out.txt").trim().split("\n"));

const bodyOf = (row: Readonly<Record<string, string>>): SurveyBody => {
  const of = (column: string): number => Number(row[column]);
  const id = row["id"] ?? "";
  return {
    id,
    sex: row["sex"] === "female" ? "female" : "male",
    isHeldOut: heldOut.has(id),
    measures: {
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
      waistToHip: of("waistToHip"),
      torsoGirth: of("torsoGirth"),
    },
  };
};

/** All 6,068. */
export const SURVEY: readonly SurveyBody[] = referenceTable("ansur2.csv").map(bodyOf);
/** The 1,213 on which no regression was fitted. */
export const HELD_OUT: readonly SurveyBody[] = SURVEY.filter((body) => body.isHeldOut);
/** 40 along the ranges and at the extremes. */
export const SAMPLE_BODIES: readonly SurveyBody[] = referenceTable("sample-bodies.csv").map(bodyOf);

/** Its own numbers agree so badly that it is left out of fits (data/ansur2.md). */
const UNLIKELY_AS_A_WHOLE = "A028379";

/** What the regressions were fitted on. */
export const FITTED_ON: readonly SurveyBody[] = SURVEY.filter(
  ({ id, isHeldOut }) => !isHeldOut && id !== UNLIKELY_AS_A_WHOLE,
);
/** What the sizes were fitted on. */
export const LIKELY: readonly SurveyBody[] = SURVEY.filter(({ id }) => id !== UNLIKELY_AS_A_WHOLE);

export const ofGroup = (
  bodies: readonly SurveyBody[],
  group: Sex | "pooled",
): readonly SurveyBody[] => bodies.filter(({ sex }) => group === "pooled" || sex === group);

/** A body as its maker would give it: these measures and no others. */
export const onlyGiven = (body: SurveyBody, given: readonly MeasureId[]): Body => {
  const { height, chest } = body.measures;
  const known = Object.fromEntries(
    MEASURE_IDS.filter((id) => given.includes(id)).map((id) => [id, body.measures[id]]),
  );
  return { id: body.id, sex: body.sex, measures: { ...known, height, chest } };
};

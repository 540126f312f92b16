import type { Body } from "../drafting/measures.ts";

/** The youngest of the survey that estimates rest on (`data/predictor.ts`): 17 to 58 years. */
const YOUNGEST = 17;

/** What is said of bodies younger than anyone whom the estimates know. */
export const ageNotice = (bodies: readonly Body[]): readonly string[] => {
  const young = bodies.filter(({ age }) => age !== undefined && age < YOUNGEST);
  if (young.length === 0) return [];
  const named = young.slice(0, NAMED_AT_MOST).map(({ id }) => id);
  const more = young.length > named.length ? ` and ${young.length - named.length} more` : "";
  return [
    `Under ${YOUNGEST}: ${named.join(", ")}${more}. What is estimated rests on a survey of adults; measure them in full.`,
  ];
};
const NAMED_AT_MOST = 5;

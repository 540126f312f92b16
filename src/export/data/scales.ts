import type { GuideKey } from "../../guide/words/told.ts";

/** Small drawings: one to so many. A quarter and a fifth are what classes draw at (practice). */
type Scale = { readonly times: number; readonly word: GuideKey };

export const QUARTER: Scale = { times: 4, word: "paper.quarter" };
export const FIFTH: Scale = { times: 5, word: "paper.fifth" };

/** From large to small: a pupil's sheet takes the first at which the whole block goes on it. */
export const SHEET_SCALES: readonly Scale[] = [
  QUARTER,
  FIFTH,
  { times: 6, word: "paper.sixth" },
  { times: 8, word: "paper.eighth" },
  { times: 10, word: "paper.tenth" },
];

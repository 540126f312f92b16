/** The order of sewing: common practice, no source. */
const STEPS = ["1", "2", "3", "4", "5", "6", "7", "8"] as const;
export type StepId = (typeof STEPS)[number];

/** Without a V its two steps fall away. */
export const stepsOf = (hasV: boolean): readonly StepId[] =>
  hasV ? STEPS : STEPS.filter((step) => step !== "1" && step !== "2");

import { TEST_WORDS } from "./data/frontWords.ts";
import { madeForWords } from "./madeFor.ts";
import type { PrintChoices } from "./printChoices.ts";

/** The scale test of the first page: what to measure, and what to do when it is wrong. */
export const scaleWords = (print: PrintChoices): readonly string[] => {
  const { print: how, measure, fitted, printer, still, each } = TEST_WORDS;
  const madeFor = madeForWords(print);
  return madeFor === null
    ? [how, measure, fitted, printer, each]
    : [madeFor, how, measure, fitted, still, each];
};

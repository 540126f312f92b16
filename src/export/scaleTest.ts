import type { Mm } from "../geometry/units.ts";
import { TEST_WORDS } from "./data/frontWords.ts";
import { madeForWords } from "./madeFor.ts";
import { joinArt } from "./pageArt.ts";
import type { PrintChoices } from "./printChoices.ts";
import { heading, hung, type Part, space, stacked } from "./stack.ts";
import { SQUARES_WIDE, testSquares } from "./testSquares.ts";

const TEXT: Mm = 3;
const HEAD: Mm = 3.8;
const COLUMN_GAP: Mm = 6;
/** From the left of the squares to what stands beside them. */
export const ASIDE: Mm = SQUARES_WIDE + COLUMN_GAP;

/** The scale test of the first page: what to measure, and what to do when it is wrong. */
const scaleWords = (print: PrintChoices): readonly string[] => {
  const { print: how, measure, fitted, printer, still, each } = TEST_WORDS;
  const madeFor = madeForWords(print);
  return madeFor === null
    ? [how, measure, fitted, printer, each]
    : [madeFor, how, measure, fitted, still, each];
};

/** The scale test in words. */
export const scaleTest = (print: PrintChoices, width: Mm): Part =>
  stacked(
    heading("Before you cut", HEAD),
    ...scaleWords(print).map((text, i) =>
      stacked(hung(String(i + 1), text, TEXT, width), space(0.6)),
    ),
  );

/** The squares, and a part beside them. */
export const squaresBeside =
  (beside: Part): Part =>
  (left, top) => {
    const text = beside(left + ASIDE, top);
    return {
      art: joinArt(testSquares(left, top), text.art),
      bottom: Math.max(text.bottom, top + SQUARES_WIDE),
    };
  };

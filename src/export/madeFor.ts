import { asHundredths } from "../drafting/words.ts";
import { TEST_SQUARE } from "./data/paper.ts";
import type { PrintChoices } from "./printChoices.ts";

/** Whether sheets are drawn for a printer that is not true. */
export const isCorrected = ({ square }: Pick<PrintChoices, "square">): boolean =>
  square.along !== TEST_SQUARE || square.across !== TEST_SQUARE;

/** "prints 50 mm as 49.3 mm along its feed and 50.45 mm across it" */
const printerWords = ({ square }: Pick<PrintChoices, "square">): string =>
  `prints ${TEST_SQUARE}\u00a0mm as ${asHundredths(square.along)} along its feed and ${asHundredths(square.across)} across it`;

/** What every corrected sheet says; null: the printer is taken for a true one. */
export const madeForWords = (print: PrintChoices): string | null =>
  isCorrected(print)
    ? `Made for a printer that ${printerWords(print)}: on it the square is ${TEST_SQUARE}\u00a0mm. Use no other.`
    : null;

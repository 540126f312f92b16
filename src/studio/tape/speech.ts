import type { Print } from "../state/print.ts";
import type { CheckSentences } from "../words/checkSentences.ts";
import type { Say } from "../words/say.ts";

/** The words and numbers of one language, for what the checks say. */
export type Speech = {
  readonly sentences: CheckSentences;
  readonly say: Say;
  readonly print: Print;
};

import type { Print } from "../state/print.ts";
import { CURES } from "../words/de/faultCures.ts";
import { PHRASES } from "../words/de/faultPhrases.ts";
import { REASONS } from "../words/de/faultReasons.ts";
import { TRACE_PHRASES, TRACE_SENTENCES } from "../words/de/traceFaults.ts";
import { germanReader } from "../words/germanReader.ts";

/** Sentences about one's own block first: those of any file begin more loosely. */
const inGerman = germanReader(
  [...TRACE_PHRASES, ...PHRASES],
  [...TRACE_SENTENCES, ...REASONS, ...CURES],
);

const LENGTH = /(-?\d+(?:\.\d+)?)\u00a0mm/gu;
const SHARE = /(\d)\.(\d+)(?=\u00a0%|°)/gu;

/** A sentence of the core as this maker reads it: in their language, lengths in their unit. */
export const inWords = (sentence: string, print: Print): string => {
  const said = print.language === "de" ? inGerman(sentence) : sentence;
  const shown = said.replace(LENGTH, (_, mm: string) => print.full(Number(mm)));
  return print.language === "de" ? shown.replace(SHARE, "$1,$2") : shown;
};

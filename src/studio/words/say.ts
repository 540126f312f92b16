import { studio, useStudio } from "../state/store.ts";
import type { WordKey, Words } from "./en.ts";
import { filled } from "./sentence.ts";

type Slots = Readonly<Record<string, string | number>>;
export type Say = (key: WordKey, slots?: Slots) => string;

const known = new WeakMap<Words, Say>();

/** The same words give the same function, so that what is said with it need not be drawn anew. */
const sayIn = (words: Words): Say => {
  const found = known.get(words);
  if (found) return found;
  const made: Say = (key, slots) => (slots ? filled(words[key], slots) : words[key]);
  known.set(words, made);
  return made;
};

/** The words of the maker's language, for code outside the drawing. */
export const say: Say = (key, slots) => sayIn(studio().words)(key, slots);

export const useSay = (): Say => sayIn(useStudio((s) => s.words));

import { studio, useStudio } from "../state/store.ts";
import type { WordKey, Words } from "./en.ts";
import { filled } from "./sentence.ts";

type Slots = Readonly<Record<string, string | number>>;
export type Say = (key: WordKey, slots?: Slots) => string;

export const sayIn =
  (words: Words): Say =>
  (key, slots) =>
    slots ? filled(words[key], slots) : words[key];

/** The words of the maker's language, for code outside the drawing. */
export const say: Say = (key, slots) => sayIn(studio().words)(key, slots);

export const useSay = (): Say => sayIn(useStudio((s) => s.words));

import { put } from "../state/store.ts";
import type { Language } from "../units/printLength.ts";
import { en, type Words } from "../words/en.ts";

const LOADS: Readonly<Record<Language, () => Promise<Words>>> = {
  en: async () => en,
  de: async () => (await import("../words/de.ts")).de,
};

/** Brings a language's words, then turns to it: the page never shows half of each. */
export const loadLanguage = (language: Language): void => {
  LOADS[language]().then(
    (words) => put({ language, words, refused: {} }),
    () => undefined,
  );
};

import { put, type Studio } from "../state/store.ts";
import type { Language } from "../units/printLength.ts";
import type { CheckSentences } from "../words/checkSentences.ts";
import { en, type Words } from "../words/en.ts";

type Spoken = Pick<Studio, "words" | "sentences">;

/** The report is in English, so there the checks speak for themselves. */
const ENGLISH: Spoken = { words: en, sentences: null };

/** What every other language brings: without the checks' sentences it does not compile. */
type Brought = { readonly words: Words; readonly sentences: CheckSentences };

const LOADS: Readonly<Record<Exclude<Language, "en">, () => Promise<Brought>>> = {
  de: async () => {
    const { de, deSentences } = await import("../words/de.ts");
    return { words: de, sentences: deSentences };
  },
};

const spokenIn = async (language: Language): Promise<Spoken> =>
  language === "en" ? ENGLISH : LOADS[language]();

/** Brings a language's words, then turns to it: the page never shows half of each. */
export const loadLanguage = (language: Language): void => {
  spokenIn(language).then(
    (spoken) => put({ language, ...spoken, refused: {} }),
    () => undefined,
  );
};

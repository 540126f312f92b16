import { studio, useStudio } from "../state/store.ts";
import { ownBlock as de } from "../words/de/ownBlock.ts";
import { ownBlock as en } from "../words/en/ownBlock.ts";
import { filled } from "../words/sentence.ts";

export type OwnKey = keyof typeof en;
type Slots = Readonly<Record<string, string | number>>;
export type OwnSay = (key: OwnKey, slots?: Slots) => string;

const sayIn =
  (words: Readonly<Record<OwnKey, string>>): OwnSay =>
  (key, slots) =>
    slots ? filled(words[key], slots) : words[key];

/** Loaded with the door: these words are no part of the first load. */
const VOICES = { en: sayIn(en), de: sayIn(de) } as const;

export const ownSay: OwnSay = (key, slots) => VOICES[studio().language](key, slots);
export const useOwnSay = (): OwnSay => VOICES[useStudio((s) => s.language)];

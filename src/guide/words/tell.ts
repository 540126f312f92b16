import type { Mm, Ratio } from "../../geometry/units.ts";
import { DE } from "./de.ts";
import { EN } from "./en.ts";
import type { GuideWords, Slot, Told } from "./told.ts";

/** The languages that there is a catalogue of. */
export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

/** How a guide is put into words: its catalogue, and how a number is written. */
export type Voice = {
  readonly words: GuideWords;
  /** A length with its unit. */
  readonly length: (value: Mm, digits: 1 | 2 | 3) => string;
  readonly percent: (value: Ratio) => string;
  readonly number: (value: number, digits: 0 | 1 | 2) => string;
};

/** Numbers and their units stay on one line. */
const JOIN = "\u00a0";

/** At most so many digits behind the mark, end noughts left out; a plain minus sign. */
const short = (value: number, digits: number): string => {
  const text = value.toFixed(digits);
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return trimmed === "-0" ? "0" : trimmed.replace("-", "−");
};

const spoken = (words: GuideWords, mark: "." | ","): Voice => {
  const number = (value: number, digits: number): string => short(value, digits).replace(".", mark);
  return {
    words,
    length: (value, digits) => `${number(value, digits)}${JOIN}mm`,
    percent: (value) => `${number(value * 100, 0)}${JOIN}%`,
    number,
  };
};

const VOICES: Readonly<Record<Language, Voice>> = { en: spoken(EN, "."), de: spoken(DE, ",") };

/** The voice of a language, in millimetres. Another unit takes another `length`. */
export const voiceOf = (language: Language): Voice => VOICES[language];

const BLANK = "________";

const written = (voice: Voice, slot: Slot, hidden: boolean): string => {
  switch (slot.kind) {
    case "words":
      return said(voice, slot.told, hidden);
    case "number":
      return voice.number(slot.value, slot.digits);
    case "share":
      return hidden && slot.worked ? BLANK : voice.percent(slot.value);
    case "mm":
      return hidden && slot.worked ? BLANK : voice.length(slot.value, slot.digits);
  }
};

const SLOT = /\{([^{}]+)\}/gu;

const said = (voice: Voice, { key, slots }: Told, hidden: boolean): string =>
  voice.words[key].replace(SLOT, (text, name: string) => {
    const slot = slots[name];
    return slot ? written(voice, slot, hidden) : text;
  });

/** A sentence in words. */
export const tell = (voice: Voice, sentence: Told): string => said(voice, sentence, false);

/** The same with a blank for every number that was worked out: the class finds it. */
export const tellBlank = (voice: Voice, sentence: Told): string => said(voice, sentence, true);

/** What stands in one slot of a sentence. */
export const tellSlot = (voice: Voice, slot: Slot): string => written(voice, slot, false);

import { studio, useStudio } from "../state/store.ts";
import { photo as de } from "../words/de/photo.ts";
import { photo as en } from "../words/en/photo.ts";
import { filled } from "../words/sentence.ts";

type PhotoKey = keyof typeof en;
type Slots = Readonly<Record<string, string | number>>;
export type PhotoSay = (key: PhotoKey, slots?: Slots) => string;

const sayIn =
  (words: Readonly<Record<PhotoKey, string>>): PhotoSay =>
  (key, slots) =>
    slots ? filled(words[key], slots) : words[key];

/** Loaded with the photo page: these words are no part of the first load. */
const VOICES = { en: sayIn(en), de: sayIn(de) } as const;

export const photoSay: PhotoSay = (key, slots) => VOICES[studio().language](key, slots);
export const usePhotoSay = (): PhotoSay => VOICES[useStudio((s) => s.language)];

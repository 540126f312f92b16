import type { Fault } from "../../drafting/fault.ts";
import type { Language } from "../units/printLength.ts";
import { PHOTO_PHRASES, PHOTO_SENTENCES } from "../words/de/photoFaults.ts";
import { germanReader } from "../words/germanReader.ts";

const inGerman = germanReader(PHOTO_PHRASES, PHOTO_SENTENCES);

/** What is wrong with a picture and what to do, in the maker's language. */
export const faultIn = (
  { reason, do: cure }: Fault,
  language: Language,
): { readonly reason: string; readonly do: string } =>
  language === "de" ? { reason: inGerman(reason), do: inGerman(cure) } : { reason, do: cure };

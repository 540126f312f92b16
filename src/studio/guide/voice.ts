import { type Voice, voiceOf } from "../../guide/words/tell.ts";
import { type Print, usePrint } from "../state/print.ts";

/** The guide's voice in the maker's language and unit. Brings the guide's words: load it late. */
export const voiceFor = (p: Print): Voice => {
  const voice = voiceOf(p.language);
  return p.unit === "mm" ? voice : { ...voice, length: (value) => p.full(value) };
};

const known = new WeakMap<Print, Voice>();

/** The same unit and language give the same voice, so that nothing is drawn anew for it. */
export const useVoice = (): Voice => {
  const p = usePrint();
  const voice = known.get(p) ?? voiceFor(p);
  known.set(p, voice);
  return voice;
};

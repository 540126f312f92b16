import type { Print } from "../state/print.ts";

/** A sentence of the core as this maker reads it: in their language, lengths in their unit. */
export const inWords = (sentence: string, print: Print): string =>
  sentence.replace(/(-?\d+(?:\.\d+)?)\u00a0mm/gu, (_, mm: string) => print.full(Number(mm)));

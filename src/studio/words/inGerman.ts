import { PHRASES, SENTENCES } from "./de/faults.ts";
import { germanReader } from "./germanReader.ts";

/** A fault of a file as the core tells it, in German. */
export const inGerman = germanReader(PHRASES, SENTENCES);

import { CURES } from "./de/faultCures.ts";
import { PHRASES } from "./de/faultPhrases.ts";
import { REASONS } from "./de/faultReasons.ts";
import { germanReader } from "./germanReader.ts";

/** A fault of a file as the core tells it, in German. */
export const inGerman = germanReader(PHRASES, [...REASONS, ...CURES]);

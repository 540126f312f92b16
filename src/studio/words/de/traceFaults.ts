import type { Rule } from "../germanReader.ts";
import { TRACE_FILES } from "./traceFiles.ts";
import { TRACE_FINDINGS, TRACE_REMEDIES } from "./traceFindings.ts";
import { TRACE_OUTLINES, TRACE_TAPE } from "./traceOutlines.ts";

/** Pieces, edges and lengths inside a sentence about a block of one's own. Whole texts. */
export const TRACE_PHRASES: readonly Rule[] = [
  ["(.+?) of a (<.+?>)", "$1 von $2"],
  ["front", "Vorderteil"],
  ["back", "Rückenteil"],
  ["sleeve", "Ärmel"],
  ["higher", "höher"],
  ["lower", "niedriger"],
  ["Raise", "heben"],
  ["Lower", "senken"],
  ["more", "mehr"],
  ["less", "weniger"],
  ["neckline", "Ausschnitt"],
  ["hem", "Saum"],
  ["half width at the underarm", "halbe Breite am Unterarm"],
  ["half width of the neck", "halbe Breite des Halses"],
  ["front neck depth", "vordere Halstiefe"],
  ["back neck depth", "hintere Halstiefe"],
  ["depth from the nape to the underarm", "Tiefe vom Nacken zum Unterarm"],
  ["side length", "Seitenlänge"],
  ["half width of the hem", "halbe Breite des Saums"],
  ["sleeve's width at the underarm", "Ärmelbreite am Unterarm"],
  ["sleeve's width at the wrist", "Ärmelbreite am Handgelenk"],
  ["sleeve's underarm length", "Unterarmlänge des Ärmels"],
  ["The front's raglan", "Der vordere Raglan"],
  ["The back's raglan", "Der hintere Raglan"],
  ["The front's side", "Die vordere Seite"],
  ["The sleeve's front underarm", "Der vordere Unterarm des Ärmels"],
  ["the sleeve's", "der des Ärmels"],
  ["the back's", "die hintere"],
  ["its back one", "der hintere"],
  ["Over a raglan seam the neckline runs on", "Über einer Raglannaht läuft der Ausschnitt"],
  [
    "Over the side seam the body's raglan line runs on",
    "Über der Seitennaht läuft die Raglanlinie des Körpers",
  ],
  [
    "Over the underarm seam the sleeve's raglan line runs on",
    "Über der Unterarmnaht läuft die Raglanlinie des Ärmels",
  ],
  ["At the fold the front's neckline is", "Am Bruch ist der vordere Ausschnitt"],
  ["At the fold the back's neckline is", "Am Bruch ist der hintere Ausschnitt"],
  ["At the fold the front's hem is", "Am Bruch ist der vordere Saum"],
  ["At the fold the back's hem is", "Am Bruch ist der hintere Saum"],
  [
    "its neckline or hem does not cross the middle once",
    "Ausschnitt oder Saum quert die Mitte nicht genau einmal",
  ],
  [
    "its two halves lie up to (.+?) apart, and (.+?) is the most",
    "die beiden Hälften liegen bis zu $1 auseinander, und $2 ist das meiste",
  ],
];

/** All that the core says of a block of one's own. The loosest beginnings come last. */
export const TRACE_SENTENCES: readonly Rule[] = [
  ...TRACE_FILES,
  ...TRACE_OUTLINES,
  ...TRACE_FINDINGS,
  ...TRACE_REMEDIES,
  ...TRACE_TAPE,
];

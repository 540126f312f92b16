import type { Garment } from "../../bands/garment.ts";
import type { PieceName } from "../../drafting/piece.ts";
import type { Mm } from "../../geometry/units.ts";
import type { WordKey } from "../words/en.ts";

export type Rung = { readonly key: WordKey; readonly length: Mm };

/** Nine tenths of the rib's stretch are safe (method, 5.2). */
const SAFE = 0.9;

const inOrder = (rungs: readonly Rung[]): readonly Rung[] =>
  [...rungs].sort((a, b) => a.length - b.length);

/** How long one band is at rest, on its seam, at its safe stretch, and over what must pass it. */
export const rungsOf = (
  { bands, choices, measures }: Garment,
  band: PieceName,
): { readonly band: "neckband" | "cuff" | "hemBand"; readonly rungs: readonly Rung[] } => {
  const name = band === "neckband" || band === "hemBand" ? band : "cuff";
  const { finishedLength, opening } = bands[name];
  const over = {
    neckband: { key: "ribs.over.head", length: measures.head },
    cuff: { key: "ribs.over.hand", length: measures.hand },
    hemBand: { key: "ribs.over.hip", length: Math.max(measures.hip, measures.chest) },
  } as const satisfies Record<string, Rung>;
  return {
    band: name,
    rungs: inOrder([
      { key: "ribs.rest", length: finishedLength },
      { key: "ribs.sewn", length: opening },
      { key: over[name].key, length: over[name].length },
      { key: "ribs.safe", length: finishedLength * (1 + SAFE * choices.cloth.rib.stretch) },
    ]),
  };
};

import { asMm } from "../../drafting/words.ts";
import { crossesItself } from "../../geometry/outline.ts";
import { endOf, pathOf, startOf } from "../../geometry/path.ts";
import { apart } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { EDGE_GAP } from "../../geometry/tolerance.ts";
import { faulty, found, type Told } from "../told.ts";
import { type CornerRing, clockwise } from "./ring.ts";

/**
 * Runs in order round a piece taken as one closed outline, clockwise: told where two neighbours
 * stand apart by more than 0.5 mm, or where the outline crosses itself.
 */
export const soundOutline = (piece: string, runs: readonly Path[]): Told<CornerRing> => {
  for (const [i, run] of runs.entries()) {
    const next = runs[(i + 1) % runs.length] ?? run;
    const gap = apart(endOf(run), startOf(next));
    if (gap > EDGE_GAP) {
      return faulty(
        piece,
        asMm(gap),
        `The outline of the ${piece} is open: run ${i + 1} ends ${asMm(gap)} from where the next begins; the limit is ${asMm(EDGE_GAP)}.`,
        "Drag the two ends together.",
      );
    }
  }
  const crossing = runs.length > 0 ? crossesItself(pathOf(runs.flat())) : null;
  if (!crossing) return found(clockwise(runs));
  const at = `(${crossing.x.toFixed(1)}, ${crossing.y.toFixed(1)})`;
  return faulty(
    piece,
    at,
    `The outline of the ${piece} crosses itself near ${at}.`,
    "Drag its points so that it does not.",
  );
};

import type { Mm } from "../geometry/units.ts";
import type { EdgeName, PieceName } from "./piece.ts";

export type SeamId = "raglan-front" | "raglan-back" | "side" | "underarm" | "v-left";
type SeamSide = readonly (readonly [PieceName, EdgeName])[];

/** Two runs of edges that are sewn together, measured (contract, "Seams"). Lengths as drawn. */
export type Seam = {
  readonly id: SeamId;
  readonly a: SeamSide;
  readonly b: SeamSide;
  readonly lengthA: Mm;
  readonly lengthB: Mm;
  /** lengthA - lengthB - ease: what is left over on the finished lines. */
  readonly difference: Mm;
  /** What unequal shrinkage adds; it goes with the first wash. */
  readonly ease: Mm;
};

import type { PieceName } from "../drafting/piece.ts";
import type { Degrees, Mm } from "../geometry/units.ts";

/** Where a piece stands in the one layout (contract, "sheets"): turned first, then moved. */
export type Placement = {
  readonly piece: PieceName;
  readonly x: Mm;
  readonly y: Mm;
  readonly turn: Degrees;
};

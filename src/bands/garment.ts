import type { Fold } from "../drafting/allowances.ts";
import type { Choices } from "../drafting/choices.ts";
import type { FinishedPieces } from "../drafting/finishedPieces.ts";
import type { Measures } from "../drafting/measures.ts";
import type { Piece } from "../drafting/piece.ts";
import type { Rail } from "../drafting/rail.ts";
import type { Seam } from "../drafting/seams.ts";
import type { Degrees } from "../geometry/units.ts";
import type { Bands } from "./band.ts";
import type { NecklineRing } from "./necklineRing.ts";

/** One garment for one body: everything that checks, sheets and the report are made from. */
export type Garment = {
  readonly measures: Measures;
  readonly choices: Choices;
  /** The block before any alteration: net, not enlarged, without notches. */
  readonly block: { readonly front: Piece; readonly back: Piece; readonly sleeve: Piece };
  /** The altered sew lines as worn, not enlarged for the wash. */
  readonly finished: FinishedPieces;
  /** In the order of PIECE_NAMES; vInsert only where there is a V. */
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly ring: NecklineRing;
  readonly bands: Bands;
  readonly rails: readonly Rail[];
  /** Where an allowance folds on itself, at its tightest. */
  readonly fold: Fold | null;
  /** How steeply the raglans reached the underarm before the sides were moved; null where not. */
  readonly sideSlope: Degrees | null;
};

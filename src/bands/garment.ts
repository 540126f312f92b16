import type { Choices } from "../drafting/choices.ts";
import type { Measures } from "../drafting/measures.ts";
import type { Block, InsertEdges, Piece } from "../drafting/piece.ts";
import type { Rail } from "../drafting/rail.ts";
import type { Seam } from "../drafting/seams.ts";
import type { Bands } from "./band.ts";

/** The sew lines of the altered garment, finished: as worn, not enlarged for the wash. */
export type FinishedLines = Block & { readonly vInsert: InsertEdges | null };

/** One garment for one body: everything that checks, sheets and the report are made from. */
export type Garment = {
  readonly measures: Measures;
  readonly choices: Choices;
  /** The block before any alteration: net, not enlarged, without notches. */
  readonly block: { readonly front: Piece; readonly back: Piece; readonly sleeve: Piece };
  readonly finished: FinishedLines;
  /** In the order of PIECE_NAMES; vInsert only where there is a V. */
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly bands: Bands;
  readonly rails: readonly Rail[];
};

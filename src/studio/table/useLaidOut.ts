import type { Garment } from "../../bands/garment.ts";
import type { Piece } from "../../drafting/piece.ts";
import { useStudio } from "../state/store.ts";
import { hasOldLines, NARROW, piecesFor, rowsFor } from "./chapterPieces.ts";
import { type Frame, frameOf } from "./frame.ts";
import { oldLinesOf } from "./oldLines.ts";
import { useArrangement } from "./useArrangement.ts";
import type { Size } from "./view.ts";

/** The ladders of the Ribs chapter stand under the pieces, so high. */
const LADDER = 168;

export type OnBoard = { readonly piece: Piece; readonly frame: Frame };

/** The pieces of the open chapter where they lie, and what stands round them. */
export const useLaidOut = (garment: Garment, size: Size) => {
  const chapter = useStudio((s) => s.chapter);
  const oldShown = useStudio((s) => s.oldLines) && hasOldLines(chapter);
  const dimensions = useStudio((s) => s.dimensions) && size.width >= NARROW;
  const view = useStudio((s) => s.view);
  const narrow = size.width < NARROW;
  const rows = rowsFor(chapter, piecesFor(chapter, garment), size.width);
  const oldOf = (piece: Piece) => (oldShown ? oldLinesOf(garment, piece.name) : []);
  const hasStrip = (chapter === "ribs" || chapter === "cloth") && size.height > 420;
  const ladder = hasStrip ? LADDER : 0;
  const bar = chapter === "block" || narrow || oldShown ? 0 : 14;
  const margins = {
    x: narrow ? 10 : 36,
    top: narrow ? 14 : oldShown || chapter !== "block" ? 52 : 28,
    bottom: (narrow ? 56 : 52) + ladder + bar,
  };
  const arrangement = useArrangement({ rows, oldOf, size, margins, dimensions });
  const held: readonly OnBoard[] = rows
    .flat()
    .map((piece) => ({ piece, frame: frameOf(arrangement, piece.name, view) }));
  const scale = arrangement.scale * (view?.zoom ?? 1);
  return { chapter, oldShown, oldOf, ladder, arrangement, scale, held, narrow, view, dimensions };
};

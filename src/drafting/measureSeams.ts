import type { Mm } from "../geometry/units.ts";
import type { FinishedPieces, Measured } from "./finishedPieces.ts";
import type { EdgeName, Piece, PieceName } from "./piece.ts";
import type { Seam, SeamId } from "./seams.ts";

type Side = { readonly piece: PieceName; readonly edge: EdgeName; readonly finished: Measured };

const side = (piece: PieceName, edge: EdgeName, finished: Measured): Side => ({
  piece,
  edge,
  finished,
});

const drawnLength = (pieces: readonly Piece[], { piece, edge, finished }: Side): Mm =>
  pieces.find(({ name }) => name === piece)?.edges.find(({ name }) => name === edge)?.length ??
  finished.length;

/**
 * Every seam of the garment, measured on both sides (contract, "Seams"): what is left over on the
 * finished lines, and what unequal growth adds to be eased in (method 3.6). Lengths in mm.
 */
export const measureSeams = (
  finished: FinishedPieces,
  pieces: readonly Piece[],
): readonly Seam[] => {
  const { front, back, sleeve, vInsert } = finished;
  const seam = (id: SeamId, a: Side, b: Side): Seam => {
    const [lengthA, lengthB] = [drawnLength(pieces, a), drawnLength(pieces, b)];
    const difference = a.finished.length - b.finished.length;
    return {
      id,
      a: [[a.piece, a.edge]],
      b: [[b.piece, b.edge]],
      lengthA,
      lengthB,
      difference,
      ease: lengthA - lengthB - difference,
    };
  };
  return [
    seam(
      "raglan-front",
      side("front", "raglan", front.raglan),
      side("sleeve", "raglanFront", sleeve.raglanFront),
    ),
    seam(
      "raglan-back",
      side("back", "raglan", back.raglan),
      side("sleeve", "raglanBack", sleeve.raglanBack),
    ),
    seam("side", side("front", "side", front.side), side("back", "side", back.side)),
    seam(
      "underarm",
      side("sleeve", "underarmFront", sleeve.underarmFront),
      side("sleeve", "underarmBack", sleeve.underarmBack),
    ),
    ...(front.v && vInsert
      ? [seam("v-left", side("front", "v", front.v), side("vInsert", "left", vInsert.left))]
      : []),
  ];
};

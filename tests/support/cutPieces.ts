import type { Garment } from "../../src/bands/garment.ts";
import type { EdgeName, Piece } from "../../src/drafting/piece.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import type { CutPiece } from "./independent/cutLines.ts";

/** What each edge is given outside it, by its name (method 4, first sentence). */
const allowanceOf = (
  edge: EdgeName | string,
  allowances: Garment["choices"]["allowances"],
  v: number,
): number => {
  if (edge.startsWith("raglan")) return allowances.raglan;
  if (edge.startsWith("underarm")) return allowances.underarm;
  if (edge === "side") return allowances.side;
  return ["v", "left", "right"].includes(edge) ? v : allowances.bands;
};

/** A piece as a report has it, with what its edges are given. */
export const cutPieceOf = (
  piece: Piece,
  { choices }: Pick<Garment, "choices">,
  v = choices.alterations.vInsert.allowance,
): CutPiece => ({
  name: piece.name,
  edges: piece.edges
    .filter(({ name }) => name !== piece.onFold)
    .map(({ name, path }) => ({
      name,
      data: toPathData(path),
      allowance: allowanceOf(name, choices.allowances, v),
    })),
  cutLine: toPathData(piece.cutLine),
  isOnFold: piece.onFold !== null,
});

import { memo } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { toPathData } from "../../geometry/pathData.ts";

/** A piece's lines in its own frame. Where it stands is its group's: moving it draws nothing anew. */
export const PieceArt = memo(function PieceArt({ piece }: { readonly piece: Piece }) {
  return (
    <>
      <path className="seam" d={piece.edges.map(({ path }) => toPathData(path)).join("")} />
      <path className="cut" d={`${toPathData(piece.cutLine)}Z`} />
    </>
  );
});

import { memo } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { type Place, place } from "./lines.ts";

type Props = { readonly piece: Piece; readonly hover: (at: Place | null) => void };

/** What the pointer meets round a piece's lines, wider than they are. */
export const Reaches = memo(function Reaches({ piece, hover }: Props) {
  return piece.edges
    .filter(({ name }) => name !== piece.onFold)
    .map(({ name, path }) => (
      <path
        key={name}
        className="reach"
        d={toPathData(path)}
        onPointerEnter={() => hover(place(piece.name, name))}
        onPointerLeave={() => hover(null)}
      />
    ));
});

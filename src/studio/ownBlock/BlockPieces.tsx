import type { Block } from "../../drafting/piece.ts";
import { type Box, boundsOf } from "../../geometry/outline.ts";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import { beside } from "./beside.ts";
import type { Fit } from "./OwnTable.tsx";
import { OWN_PIECES, type OwnPiece } from "./ownBlock.ts";

type BlockEdge = { readonly edge: string; readonly path: Path };

/** The edges of a block's piece that are drawn, the fold apart. */
const edgesIn = (block: Block, piece: OwnPiece): readonly BlockEdge[] =>
  Object.entries(block[piece]).map(([edge, path]) => ({ edge, path }));

const round = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map((b) => b.left)),
  top: Math.min(...boxes.map((b) => b.top)),
  right: Math.max(...boxes.map((b) => b.right)),
  bottom: Math.max(...boxes.map((b) => b.bottom)),
});

/** The box round a piece in all of several states of a block. */
const pieceBox = (blocks: readonly Block[], piece: OwnPiece): Box =>
  round(blocks.flatMap((block) => edgesIn(block, piece).map(({ path }) => boundsOf(path))));

/** Where the three pieces of several states of one block lie, old and new on each other. */
export const laidOut = (blocks: readonly Block[]) =>
  beside(OWN_PIECES.map((piece) => pieceBox(blocks, piece)));

/** A piece's name stands this far down it: below the underarm. */
const NAME_DOWN = 0.6;

/** A name wider than its piece is set small, px. */
const NAME_FITS = 110;

/** How a piece's name is set: as large as its piece has room for it. */
export const nameClass = ({ left, right }: Box, { scale }: Fit): string =>
  (right - left) * scale < NAME_FITS ? "figSeam haloP" : "pieceName haloP";

type Props = {
  readonly block: Block;
  /** Drawn under it, dashed. */
  readonly old: readonly Block[];
  readonly fit: Fit;
  readonly places: ReturnType<typeof laidOut>["places"];
  /** Edges drawn heavier, such as `front.raglan`. */
  readonly lit: readonly string[];
  readonly nameOf: (piece: OwnPiece) => string;
};

/** The three pieces of a block side by side, its old lines under the new. */
export function BlockPieces({ block, old, fit, places, lit, nameOf }: Props) {
  return OWN_PIECES.map((piece, i) => {
    const place = places[i] ?? { x: 0, y: 0 };
    const [x, y] = [fit.x + place.x * fit.scale, fit.y + place.y * fit.scale];
    const edges = edgesIn(block, piece);
    const box = pieceBox([block], piece);
    const shape = pathOf(edges.flatMap(({ path }) => path));
    return (
      <g key={piece} data-own-piece={piece}>
        <g transform={`translate(${x} ${y}) scale(${fit.scale})`}>
          <path className="piece" d={`${toPathData(shape)}Z`} />
          {old.flatMap((before) =>
            edgesIn(before, piece).map(({ edge, path }) => (
              <path key={edge} className="old" d={toPathData(path)} />
            )),
          )}
          {edges.map(({ edge, path }) => (
            <path
              key={edge}
              className={
                edge === "centre"
                  ? "fold"
                  : `seam wide${lit.includes(`${piece}.${edge}`) ? " lit" : ""}`
              }
              data-own-edge={`${piece}.${edge}`}
              d={toPathData(path)}
            />
          ))}
        </g>
        <text
          className={nameClass(box, fit)}
          textAnchor="middle"
          x={x + ((box.left + box.right) / 2) * fit.scale}
          y={y + (box.top + NAME_DOWN * (box.bottom - box.top)) * fit.scale}
        >
          {nameOf(piece)}
        </text>
      </g>
    );
  });
}

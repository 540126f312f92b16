import type { OwnAllowances } from "../../drafting/blockFile.ts";
import type { ReadLine } from "../files/drawing.ts";
import { faulty, found, type Told } from "../told.ts";
import { type BlockPiece, pieceByEdges } from "./assignEdges.ts";
import { type NamedOutline, proposeNames } from "./proposeNames.ts";
import { runsOfShape, type SortedDrawing, sortDrawing } from "./sortDrawing.ts";
import { soundOutline } from "./soundOutline.ts";
import { type BroughtIn, toBlock } from "./toBlock.ts";

const absent = (piece: BlockPiece): Told<never> =>
  faulty(
    piece,
    "no line",
    `The drawing has no line that can be taken for the ${piece}.`,
    `Call its outline “${piece}”, or its edges “${piece}.neckline” and so on.`,
  );

const unlike = (piece: BlockPiece, corners: number): Told<never> =>
  faulty(
    piece,
    `${corners} corners`,
    `The outline of the ${piece} has ${corners} corners, and its edges cannot be told by them.`,
    `Draw its edges apart, and call them “${piece}.neckline” and so on.`,
  );

const pieceOf = (sorted: SortedDrawing, piece: BlockPiece): Told<NamedOutline> => {
  const shape = sorted.shapes[sorted.likely.get(piece) ?? -1];
  if (!shape) {
    const isNamed = [...sorted.edges.keys()].some((key) => key.startsWith(`${piece}.`));
    return isNamed ? pieceByEdges(piece, sorted.edges) : absent(piece);
  }
  const sound = soundOutline(piece, runsOfShape(shape));
  if ("fault" in sound) return sound;
  const named = proposeNames(sound.found).find((proposal) => proposal.piece === piece);
  return named ? found(named) : unlike(piece, sound.found.length);
};

/**
 * A block from the lines of a drawing with nobody by: pieces and edges by their names, what is not
 * named by its shape. Told where a piece is missing or cannot be read.
 */
export const blockFromLines = (
  lines: readonly ReadLine[],
  allowances: OwnAllowances | null,
): Told<BroughtIn> => {
  const sorted = sortDrawing(lines);
  const front = pieceOf(sorted, "front");
  if ("fault" in front) return front;
  const back = pieceOf(sorted, "back");
  if ("fault" in back) return back;
  const sleeve = pieceOf(sorted, "sleeve");
  if ("fault" in sleeve) return sleeve;
  return toBlock({ front: front.found, back: back.found, sleeve: sleeve.found, allowances });
};

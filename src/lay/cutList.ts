import type { Band } from "../bands/band.ts";
import type { Garment } from "../bands/garment.ts";
import type { Piece, PieceName } from "../drafting/piece.ts";
import { type Box, boundsOf } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import type { Boxed } from "./rows.ts";

/** What of a garment is laid on cloth. */
export type Sewn = Pick<Garment, "pieces" | "bands" | "choices">;

/** How the cloth lies: opened out in one layer, or folded once along its length. */
export type Laid = "opened" | "folded";

/** One thing to be cut, as it lies on the cloth. Lengths in mm. */
export type Cut = Boxed & {
  readonly piece: PieceName;
  /** Which of several alike, from 1. */
  readonly copy: number;
  /** Laid face down, so that the two of a pair are mirrored. */
  readonly mirrored: boolean;
  /** A piece on the fold: opened out to both its halves, or its half laid on the cloth's fold. */
  readonly opened: boolean;
  /** In the piece's frame, what of it lies here: a long band may be cut in parts. */
  readonly box: Box;
  /** The grain runs across the piece: it lies turned by a quarter. */
  readonly turned: boolean;
};

/** True where the arrow runs across the piece, as with turned cloth. */
const isTurned = ({ grain: { from, to } }: Piece): boolean =>
  Math.abs(to.x - from.x) > Math.abs(to.y - from.y);

const sized = (box: Box, turned: boolean): Pick<Boxed, "across" | "along"> => {
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  return turned ? { across: high, along: wide } : { across: wide, along: high };
};

/** What is cut of a piece of body cloth when the cloth lies so. */
const clothCuts = (piece: Piece, laid: Laid): readonly Cut[] => {
  const half = boundsOf(piece.cutLine);
  const turned = isTurned(piece);
  const isHalf = piece.onFold !== null;
  const opened = isHalf && laid === "opened";
  const box = opened ? { ...half, left: -half.right } : half;
  // Through two layers a pair is cut at once.
  const copies = laid === "folded" ? 1 : piece.cut;
  return Array.from({ length: copies }, (_, i) => ({
    piece: piece.name,
    copy: i + 1,
    mirrored: i % 2 === 1,
    opened,
    box,
    turned,
    onFold: isHalf && laid === "folded",
    ...sized(box, turned),
  }));
};

/** Every piece of body cloth; null where the cloth cannot be laid so: turned cloth has no such fold. */
export const bodyCuts = ({ pieces }: Sewn, laid: Laid): readonly Cut[] | null => {
  const cloth = pieces.filter(
    ({ name }) => name !== "neckband" && name !== "cuff" && name !== "hemBand",
  );
  if (laid === "folded" && cloth.some((piece) => piece.onFold !== null && isTurned(piece))) {
    return null;
  }
  return cloth.flatMap((piece) => clothCuts(piece, laid));
};

/** Where a band may be parted: at none, at two or at all four of its quarter marks. */
const PARTINGS = [[0], [0, 2], [0, 1, 2, 3]] as const;

/** The parts of a band between some of its quarter marks, each with its own two allowances. */
const partsOf = (band: Band, at: readonly number[], allowance: Mm): readonly Box[] => {
  const starts = at.map((i) => band.quarterMarks[i] ?? 0);
  return starts.map((start, i) => ({
    left: start - allowance,
    right: (starts[i + 1] ?? band.finishedLength) + allowance,
    top: -allowance,
    bottom: band.cutHeight - allowance,
  }));
};

/** The fewest parts that are no longer than the rib is wide; quarters where even these are not. */
const bandBoxes = (band: Band, allowance: Mm, width: Mm): readonly Box[] => {
  const ways = PARTINGS.map((at) => partsOf(band, at, allowance));
  const fits = ways.find((boxes) => boxes.every(({ left, right }) => right - left <= width));
  return fits ?? ways[ways.length - 1] ?? [];
};

/** Every band, cut with its length across the rib, in parts where the rib is narrow. */
export const ribCuts = ({ pieces, bands, choices }: Sewn, width: Mm): readonly Cut[] => {
  const bandOf = { neckband: bands.neckband, cuff: bands.cuff, hemBand: bands.hemBand };
  return (["neckband", "cuff", "hemBand"] as const).flatMap((name) => {
    const count = pieces.find((piece) => piece.name === name)?.cut ?? 0;
    const boxes = bandBoxes(bandOf[name], choices.allowances.bands, width);
    return Array.from({ length: count }, () => boxes)
      .flat()
      .map((box, i) => ({
        piece: name,
        copy: i + 1,
        mirrored: false,
        opened: false,
        box,
        turned: false,
        onFold: false,
        ...sized(box, false),
      }));
  });
};

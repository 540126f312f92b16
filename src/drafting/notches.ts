import { crossingsOf } from "../geometry/crossings.ts";
import type { Mm } from "../geometry/units.ts";
import type { FinishedPieces } from "./finishedPieces.ts";
import type { Notch, PieceName } from "./piece.ts";

/** Notches of one piece on its finished lines, before they are enlarged with it. */
export type Notches = Readonly<Record<PieceName, readonly Notch[]>>;

/** The second notch of the back raglan lies this far beyond the first: half an inch. Practice. */
export const BACK_NOTCHES_APART: Mm = 12.7;

/** Where a seam's notches lie: along the edge of the first piece, and as long along its mate. */
type SeamNotches = {
  readonly seam: string;
  readonly at: readonly Mm[];
  readonly length: Mm;
  readonly mateLength: Mm;
};

const own = (edge: Notch["edge"], { seam, at }: SeamNotches): readonly Notch[] =>
  at.map((distance) => ({ edge, at: distance, seam }));

/** The mate's notches, at the same part of its length from the same end. */
const mate = (
  edge: Notch["edge"],
  { seam, at, length, mateLength }: SeamNotches,
  way: "same" | "opposite",
): readonly Notch[] =>
  at.map((distance) => {
    const from = (distance / length) * mateLength;
    return { edge, at: way === "same" ? from : mateLength - from, seam };
  });

/** Along the sleeve's neck edge, the place of its centre line; the middle where it has none. */
const shoulderPlace = (neckline: FinishedPieces["sleeve"]["neckline"]): Mm =>
  crossingsOf(neckline.path, "x", 0)[0] ?? neckline.length / 2;

const half = (seam: string, length: Mm, mateLength: Mm): SeamNotches => ({
  seam,
  at: [length / 2],
  length,
  mateLength,
});

/** One notch in front, two behind, one on every other seam (method 4, "Notches"). In mm. */
export const seamNotches = ({ front, back, sleeve }: FinishedPieces): Notches => {
  const raglanFront = half("raglan-front", front.raglan.length, sleeve.raglanFront.length);
  const middle = back.raglan.length / 2;
  const raglanBack: SeamNotches = {
    seam: "raglan-back",
    at: [middle, middle + BACK_NOTCHES_APART],
    length: back.raglan.length,
    mateLength: sleeve.raglanBack.length,
  };
  const side = half("side", front.side.length, back.side.length);
  const underarm = half("underarm", sleeve.underarmFront.length, sleeve.underarmBack.length);
  return {
    front: [...own("raglan", raglanFront), ...own("side", side)],
    back: [...own("raglan", raglanBack), ...mate("side", side, "same")],
    sleeve: [
      { edge: "neckline", at: shoulderPlace(sleeve.neckline), seam: "shoulder" },
      ...mate("raglanFront", raglanFront, "same"),
      ...own("underarmFront", underarm),
      ...mate("underarmBack", underarm, "opposite"),
      ...mate("raglanBack", raglanBack, "opposite"),
    ],
    vInsert: [],
    neckband: [],
    cuff: [],
    hemBand: [],
  };
};

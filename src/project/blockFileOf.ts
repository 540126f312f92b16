import type { BlockFile } from "../drafting/blockFile.ts";
import type { Block } from "../drafting/piece.ts";
import { toPathData } from "../geometry/pathData.ts";

/** A block as its file has it: lines in mm, on the sewing line. */
export const blockFileOf = ({ front, back, sleeve }: Block): BlockFile => ({
  unit: "mm",
  pieces: {
    front: {
      neckline: toPathData(front.neckline),
      raglan: toPathData(front.raglan),
      side: toPathData(front.side),
      hem: toPathData(front.hem),
      centre: toPathData(front.centre),
    },
    back: {
      neckline: toPathData(back.neckline),
      raglan: toPathData(back.raglan),
      side: toPathData(back.side),
      hem: toPathData(back.hem),
      centre: toPathData(back.centre),
    },
    sleeve: {
      neckline: toPathData(sleeve.neckline),
      raglanFront: toPathData(sleeve.raglanFront),
      underarmFront: toPathData(sleeve.underarmFront),
      wrist: toPathData(sleeve.wrist),
      underarmBack: toPathData(sleeve.underarmBack),
      raglanBack: toPathData(sleeve.raglanBack),
    },
  },
});

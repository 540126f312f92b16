import { BLOCK } from "../../drafting/data/blockConstants.ts";
import type { Block } from "../../drafting/piece.ts";
import { endOf, startOf, straight } from "../../geometry/path.ts";
import {
  along,
  minus,
  norm,
  out,
  type Point,
  point,
  stepped,
  times,
} from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { TAPE_LENGTHS, type TapeMeasures } from "../../trace/tape/tapeMeasures.ts";
import type { OwnPiece, TapeGiven } from "./ownBlock.ts";

/** In the order in which a tape takes them, and by which they are numbered. */
export const TAPE_FIELDS = [
  ...TAPE_LENGTHS,
  "frontOffsets",
  "backOffsets",
] as const satisfies readonly (keyof TapeGiven)[];
export type TapeField = (typeof TAPE_FIELDS)[number];

/** Where a length is taken: on which piece, along which lines, and where its number stands. */
export type TapeLine = {
  readonly piece: OwnPiece;
  readonly paths: readonly Path[];
  readonly at: Point;
};

const QUARTERS = [0.25, 0.5, 0.75] as const;
/** An offset is shown this long where it was not measured, mm. */
const SHOWN = 26;

/** The straight way of a raglan, and short lines across it at its quarters. */
const offsetsOf = (raglan: Path): { readonly paths: readonly Path[]; readonly at: Point } => {
  const [a, b] = [startOf(raglan), endOf(raglan)];
  const way = minus(b, a);
  const side = out(times(way, 1 / (norm(way) || 1)));
  const across = QUARTERS.map((share) => {
    const p = along(a, b, share);
    return straight(stepped(p, side, -SHOWN / 2), stepped(p, side, SHOWN / 2));
  });
  return { paths: [straight(a, b), ...across], at: stepped(along(a, b, 0.42), side, -22) };
};

const middle = (path: Path): Point => along(startOf(path), endOf(path), 0.5);
const lineAt = (piece: OwnPiece, a: Point, b: Point, at?: Point): TapeLine => ({
  piece,
  paths: [straight(a, b)],
  at: at ?? along(a, b, 0.5),
});

/** Where each length of the tape lies on a block. */
export const tapeLine = (
  field: TapeField,
  { front, back, sleeve }: Block,
  tape: TapeMeasures,
): TapeLine => {
  const frontTop = startOf(front.neckline);
  const [underarm, backUnderarm] = [endOf(front.raglan), endOf(back.raglan)];
  const neckPoint = point(tape.neckHalfWidth, BLOCK.backDrop - tape.backNeckDepth);
  switch (field) {
    case "halfWidth":
      return lineAt("front", point(0, underarm.y), underarm);
    case "neckHalfWidth":
      return lineAt("back", point(0, neckPoint.y), neckPoint, point(neckPoint.x / 2, neckPoint.y));
    case "frontNeckDepth":
      return lineAt("front", point(0, frontTop.y - tape.frontNeckDepth), frontTop);
    case "backNeckDepth":
      return lineAt(
        "back",
        point(neckPoint.x, neckPoint.y),
        point(neckPoint.x, BLOCK.backDrop),
        point(neckPoint.x + 24, neckPoint.y - 6),
      );
    case "raglanDepth":
      return lineAt(
        "back",
        point(30, 0),
        point(30, backUnderarm.y),
        point(30, backUnderarm.y * 0.6),
      );
    case "sideLength":
      return { piece: "front", paths: [front.side], at: middle(front.side) };
    case "hemHalfWidth":
      return { piece: "front", paths: [front.hem], at: middle(front.hem) };
    case "sleeveWidth": {
      const [b, f] = [endOf(sleeve.underarmBack), startOf(sleeve.underarmFront)];
      return lineAt("sleeve", b, f);
    }
    case "wristWidth":
      return { piece: "sleeve", paths: [sleeve.wrist], at: middle(sleeve.wrist) };
    case "underarmLength":
      return { piece: "sleeve", paths: [sleeve.underarmFront], at: middle(sleeve.underarmFront) };
    case "frontOffsets":
      return { piece: "front", ...offsetsOf(front.raglan) };
    case "backOffsets":
      return { piece: "back", ...offsetsOf(back.raglan) };
  }
};

import type { BlockFile } from "../../drafting/blockFile.ts";
import type { Block } from "../../drafting/piece.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { heldBody } from "../../project/work.ts";
import { change } from "../state/changes.ts";
import { goTo, tell } from "../state/going.ts";
import { put, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { leaveBringing } from "./bringing.ts";
import type { OwnBlock } from "./ownBlock.ts";
import { ownSay } from "./ownSay.ts";

/** The block as its file has it: lines in mm, turnings already taken away. */
export const fileOf = ({ front, back, sleeve }: Block): BlockFile => ({
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

/** By what it is called later: the file or picture that it came from, or the way. */
const nameOf = ({ way, pieces }: OwnBlock): string =>
  way === "tape" ? ownSay("own.way.tape") : (pieces.front?.from ?? ownSay("own.name"));

/** The block becomes the work's: one step of the work's undo. What was brought in stays here. */
export const takeBlock = (own: OwnBlock, block: Block): void => {
  const name = nameOf(own);
  const now = work();
  const brought = { name, file: fileOf(block), block, body: heldBody(now).id };
  change({ ...now, block: brought, useBlock: true }, () => say("step.block"));
  put({ atDoors: false, view: null, heldPiece: null, openCheck: null });
  leaveBringing();
  goTo("block");
  tell(ownSay("own.used", { name }));
};

import type { Block } from "../../drafting/piece.ts";
import { blockFileOf } from "../../project/blockFileOf.ts";
import { heldBody } from "../../project/work.ts";
import { change } from "../state/changes.ts";
import { goTo, tell } from "../state/going.ts";
import { put, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { leaveBringing } from "./bringing.ts";
import type { OwnBlock } from "./ownBlock.ts";
import { ownSay } from "./ownSay.ts";

/** By what it is called later: the file or picture that it came from, or the way. */
const nameOf = ({ way, pieces }: OwnBlock): string =>
  way === "tape" ? ownSay("own.way.tape") : (pieces.front?.from ?? ownSay("own.name"));

/** The block becomes the work's: one step of the work's undo. What was brought in stays here. */
export const takeBlock = (own: OwnBlock, block: Block): void => {
  const name = nameOf(own);
  const now = work();
  const brought = { name, file: blockFileOf(block), block, body: heldBody(now).id };
  change({ ...now, block: brought, useBlock: true }, () => say("step.block"));
  put({ atDoors: false, view: null, heldPiece: null, openCheck: null });
  leaveBringing();
  goTo("block");
  tell(ownSay("own.used", { name }));
};

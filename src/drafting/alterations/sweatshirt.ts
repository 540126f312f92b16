import type { Degrees, Mm } from "../../geometry/units.ts";
import type { Choices } from "../choices.ts";
import type { Block, InsertEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { endSleeve, framed } from "./endSleeve.ts";
import { moveSideSeams, raglanSlope } from "./moveSideSeams.ts";
import { openNeckline } from "./neckline.ts";
import { raiseHem } from "./raiseHem.ts";
import { insertV } from "./vInsert.ts";

/** The altered block, and what later steps need to know of how it came about. */
export type Sweatshirt = {
  readonly block: Block;
  readonly insert: InsertEdges | null;
  /** Of the V; what was asked for where there is none. */
  readonly vAllowance: Mm;
  /** The front neckline before the V was cut: the ring is measured on it (method 5.1). */
  readonly wholeFrontNeckline: Block["front"]["neckline"];
  /** How steeply the raglans reached the underarm before the sides were moved; null where not. */
  readonly sideSlope: Degrees | null;
  readonly rails: readonly Rail[];
};

/** A block made into a sweatshirt. The order is the method's, section 3; it matters. */
export const toSweatshirt = (block: Block, choices: Choices["alterations"]): Sweatshirt => {
  const { neckline, moveSideSeams: sides, raiseHem: hem, endSleeve: end, vInsert } = choices;
  const opened = neckline.on ? openNeckline(block, neckline) : { altered: block, rails: [] };
  const moved = sides.on ? moveSideSeams(opened.altered, sides) : opened.altered;
  const raised = raiseHem(moved, { by: hem.on ? hem.by : 0, sidesMoved: sides.on });
  const ended = endSleeve(raised.altered.sleeve, {
    aboveWrist: end.on ? end.aboveWrist : 0,
    sidesMoved: sides.on,
  });
  const { front, back } = raised.altered;
  const sleeve = framed(ended.altered);
  const rails = [...opened.rails, ...raised.rails, ...ended.rails];
  const known = {
    wholeFrontNeckline: front.neckline,
    sideSlope: sides.on ? raglanSlope(opened.altered) : null,
  };
  if (!vInsert.on) {
    const { allowance } = vInsert;
    return { block: { front, back, sleeve }, insert: null, vAllowance: allowance, ...known, rails };
  }
  const { altered: v, rails: held } = insertV(front, vInsert);
  return {
    block: { front: v.front, back, sleeve },
    insert: v.insert,
    vAllowance: v.allowance,
    ...known,
    rails: [...rails, ...held],
  };
};

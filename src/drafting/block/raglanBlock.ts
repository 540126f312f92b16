import type { Choices } from "../choices.ts";
import type { Measures } from "../measures.ts";
import type { Block } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { drawBody, drawTrunk } from "./body.ts";
import { drawNecklines } from "./neckline.ts";
import { drawSleeve } from "./sleeve.ts";

/** A block and what had to be held so that it could be drawn. */
export type Drafted = { readonly block: Block; readonly rails: readonly Rail[] };

/** The raglan block for knits, from sixteen measures in mm (method 2). Never fails. */
export const draftRaglanBlock = (body: Measures, fit: Choices["fit"]): Drafted => {
  const quarter = (body.chest + fit.chestEase) / 4;
  const necklines = drawNecklines(body.neckBase, quarter);
  const trunk = drawTrunk(body, fit, quarter, necklines);
  const front = drawBody(necklines.front, necklines.frontCorner, trunk);
  const back = drawBody(necklines.back, necklines.backCorner, trunk);
  const { sleeve, rails } = drawSleeve(
    { body, ease: fit.upperArmEase, widened: necklines.widened },
    front,
    back,
  );
  return {
    block: { front, back, sleeve },
    rails: [...necklines.rails, ...trunk.rails, ...rails],
  };
};

import { type Allowances, tightestFold } from "../drafting/allowances.ts";
import { toSweatshirt } from "../drafting/alterations/sweatshirt.ts";
import type { Drafted } from "../drafting/block/raglanBlock.ts";
import type { Choices } from "../drafting/choices.ts";
import {
  type Drawing,
  type DrawnPiece,
  drawBodyPiece,
  drawInsertPiece,
  drawSleevePiece,
} from "../drafting/drawPiece.ts";
import { type FinishedPieces, measurePieces } from "../drafting/finishedPieces.ts";
import { measureSeams } from "../drafting/measureSeams.ts";
import type { Measures } from "../drafting/measures.ts";
import { type Notches, seamNotches } from "../drafting/notches.ts";
import type { Block } from "../drafting/piece.ts";
import { growthOf } from "../drafting/shrinkage.ts";
import { lengthOf } from "../geometry/length.ts";
import type { Bands } from "./band.ts";
import { bandPieces } from "./bandPieces.ts";
import { cutCuff, cutHemBand } from "./cuffAndHem.ts";
import type { Garment } from "./garment.ts";
import { cutNeckband } from "./neckband.ts";
import { necklineRing } from "./necklineRing.ts";
import { withOpeningMarks } from "./openingMarks.ts";
import { shortBandRails } from "./shortBands.ts";

const AS_DRAWN = { across: 1, down: 1 } as const;

/** The block's pieces before any alteration: net, with the garment's own allowances. */
const drawBlock = (block: Block, allowances: Allowances): Garment["block"] => {
  const { front, back, sleeve } = measurePieces(block, null);
  const drawing: Drawing = { growth: AS_DRAWN, allowances, turned: false };
  return {
    front: drawBodyPiece("front", front, [], drawing).piece,
    back: drawBodyPiece("back", back, [], drawing).piece,
    sleeve: drawSleevePiece(sleeve, [], drawing).piece,
  };
};

/** The pieces of body cloth as they are cut. */
const drawCloth = (
  finished: FinishedPieces,
  notches: Notches,
  drawing: Drawing,
): readonly DrawnPiece[] => [
  drawBodyPiece("front", finished.front, notches.front, drawing),
  drawBodyPiece("back", finished.back, notches.back, drawing),
  drawSleevePiece(finished.sleeve, notches.sleeve, drawing),
  ...(finished.vInsert ? [drawInsertPiece(finished.vInsert, notches.vInsert, drawing)] : []),
];

/**
 * The whole garment from a block: altered, banded, measured and with its cut lines (method 3 to 5).
 * Never fails: what had to be held stands in `rails`. Lengths in mm.
 */
export const makeGarment = (
  { block, rails: draftRails }: Drafted,
  measures: Measures,
  choices: Choices,
): Garment => {
  const shirt = toSweatshirt(block, choices.alterations);
  const allowances: Allowances = { ...choices.allowances, v: shirt.vAllowance };
  const finished = measurePieces(shirt.block, shirt.insert);
  const whole = shirt.wholeFrontNeckline;
  const ring = necklineRing(finished, { path: whole, length: lengthOf(whole) });
  const { neckband, rails: bandRails } = cutNeckband(ring, measures, choices);
  const bands: Bands = {
    neckband,
    cuff: cutCuff(finished.sleeve.wrist.length, measures, choices),
    hemBand: cutHemBand(
      { front: finished.front.hem.length, back: finished.back.hem.length },
      measures,
      choices,
    ),
  };
  const notches = withOpeningMarks(seamNotches(finished), finished, ring.opening);
  const drawn = drawCloth(finished, notches, {
    growth: growthOf(choices.cloth.body),
    allowances,
    turned: choices.cloth.body.turned,
  });
  const cloth = drawn.map(({ piece }) => piece);
  return {
    measures,
    choices,
    block: drawBlock(block, allowances),
    finished,
    pieces: [...cloth, ...bandPieces(bands, allowances)],
    seams: measureSeams(finished, cloth),
    ring,
    bands,
    rails: [...draftRails, ...shirt.rails, ...bandRails, ...shortBandRails(measures, choices)],
    fold: tightestFold(drawn.flatMap(({ sides }) => sides)),
    sideSlope: shirt.sideSlope,
  };
};

import type { Block } from "../../drafting/piece.ts";
import { blockByTape } from "../../trace/tape/blockByTape.ts";
import type { TapeMeasures } from "../../trace/tape/tapeMeasures.ts";
import type { TapeGiven } from "./ownBlock.ts";

/** A middling block, drawn until the maker's own lengths are all there. Ours; used for nothing. */
const USUAL: TapeMeasures = {
  halfWidth: 275,
  neckHalfWidth: 74,
  frontNeckDepth: 100,
  backNeckDepth: 22,
  raglanDepth: 250,
  frontOffsets: null,
  backOffsets: null,
  sideLength: 330,
  hemHalfWidth: 272,
  sleeveWidth: 415,
  wristWidth: 220,
  underarmLength: 420,
};

const withGiven = (given: TapeGiven): TapeMeasures => ({
  ...USUAL,
  halfWidth: given.halfWidth ?? USUAL.halfWidth,
  neckHalfWidth: given.neckHalfWidth ?? USUAL.neckHalfWidth,
  frontNeckDepth: given.frontNeckDepth ?? USUAL.frontNeckDepth,
  backNeckDepth: given.backNeckDepth ?? USUAL.backNeckDepth,
  raglanDepth: given.raglanDepth ?? USUAL.raglanDepth,
  sideLength: given.sideLength ?? USUAL.sideLength,
  hemHalfWidth: given.hemHalfWidth ?? USUAL.hemHalfWidth,
  sleeveWidth: given.sleeveWidth ?? USUAL.sleeveWidth,
  wristWidth: given.wristWidth ?? USUAL.wristWidth,
  underarmLength: given.underarmLength ?? USUAL.underarmLength,
});

/** A block to show where each length is taken: with those that are given, where they can stand. */
export const tapeSample = (given: TapeGiven): { block: Block; tape: TapeMeasures } | null => {
  for (const tape of [withGiven(given), USUAL]) {
    const told = blockByTape(tape);
    if ("found" in told) return { block: told.found.block, tape };
  }
  return null;
};

import type { Block } from "../../drafting/piece.ts";
import { examine } from "../../trace/doctor/examine.ts";
import type { NamedOutline } from "../../trace/edges/proposeNames.ts";
import { type BroughtIn, toBlock } from "../../trace/edges/toBlock.ts";
import { blockByTape } from "../../trace/tape/blockByTape.ts";
import type { TapeMeasures } from "../../trace/tape/tapeMeasures.ts";
import { faulty, found, type Told } from "../../trace/told.ts";
import { namedOf } from "./naming.ts";
import type { Brought, OwnBlock, OwnPiece, TapeGiven } from "./ownBlock.ts";

const outOfOrder = (piece: OwnPiece): Told<never> =>
  faulty(
    piece,
    "corners",
    `The corners of the ${piece} do not follow one another round it.`,
    "Choose for each edge the corner at which it begins, going round the piece.",
  );

/** A piece with its edges as the maker named them. */
export const namedPiece = (piece: OwnPiece, { runs, naming }: Brought): Told<NamedOutline> => {
  const named = naming && namedOf(piece, runs, naming);
  return named ? found(named) : outOfOrder(piece);
};

const fromPieces = ({ pieces, turnings }: OwnBlock): Told<BroughtIn> | null => {
  const { front, back, sleeve } = pieces;
  if (!front || !back || !sleeve) return null;
  const [one, other, third] = [
    namedPiece("front", front),
    namedPiece("back", back),
    namedPiece("sleeve", sleeve),
  ];
  if ("fault" in one) return one;
  if ("fault" in other) return other;
  if ("fault" in third) return third;
  return toBlock({
    front: one.found,
    back: other.found,
    sleeve: third.found,
    allowances: turnings,
  });
};

type Offsets = TapeGiven["frontOffsets"];

const allOf = ([a, b, c]: Offsets): readonly [number, number, number] | null =>
  a === null || b === null || c === null ? null : [a, b, c];

/** The tape's figures once all are there; offsets may be left out as a three. */
export const tapeOf = (given: TapeGiven): TapeMeasures | null => {
  const { frontOffsets, backOffsets, ...lengths } = given;
  const {
    halfWidth,
    neckHalfWidth,
    frontNeckDepth,
    backNeckDepth,
    raglanDepth,
    sideLength,
    hemHalfWidth,
    sleeveWidth,
    wristWidth,
    underarmLength,
  } = lengths;
  if (
    halfWidth === null ||
    neckHalfWidth === null ||
    frontNeckDepth === null ||
    backNeckDepth === null ||
    raglanDepth === null ||
    sideLength === null ||
    hemHalfWidth === null ||
    sleeveWidth === null ||
    wristWidth === null ||
    underarmLength === null
  ) {
    return null;
  }
  return {
    halfWidth,
    neckHalfWidth,
    frontNeckDepth,
    backNeckDepth,
    raglanDepth,
    sideLength,
    hemHalfWidth,
    sleeveWidth,
    wristWidth,
    underarmLength,
    frontOffsets: allOf(frontOffsets),
    backOffsets: allOf(backOffsets),
  };
};

const broughtIn = (own: OwnBlock): Told<BroughtIn> | null => {
  if (own.way !== "tape") return fromPieces(own);
  const tape = tapeOf(own.tape);
  return tape && blockByTape(tape);
};

const known = new WeakMap<OwnBlock, Told<BroughtIn> | null>();

/** The block as brought in, before any remedy; null while something is still missing. */
export const blockNow = (own: OwnBlock): Told<BroughtIn> | null => {
  const before = known.get(own);
  if (before !== undefined) return before;
  const told = broughtIn(own);
  known.set(own, told);
  return told;
};

/** The block with the remedies that the maker chose, one after the other. */
export const remedied = (block: Block, { remedies }: Pick<OwnBlock, "remedies">): Block =>
  remedies.reduce((now, { finding, remedy }) => {
    const found = examine(now).find(({ id }) => id === finding);
    return found?.remedies.find(({ id }) => id === remedy)?.apply(now) ?? now;
  }, block);

import { PIECE_NAMES, type Piece } from "../drafting/piece.ts";
import { areaOf } from "../geometry/outline.ts";
import { pathOf } from "../geometry/path.ts";
import { layOut } from "./layout.ts";
import type { PaperChoice } from "./paperSize.ts";
import type { PrintChoices } from "./printChoices.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";

/** Several sizes or bodies, one over the other. Never empty. */
export type Nest = readonly [SheetSubject, ...SheetSubject[]];

const piecesOf = (nest: Nest, name: Piece["name"]): readonly Piece[] =>
  nest.flatMap(({ garment }) => garment.pieces.filter((piece) => piece.name === name));

/** All sizes of a piece as if they were one: it takes the room of them all. */
const together = (sizes: readonly Piece[]): readonly Piece[] => {
  const [first] = sizes;
  if (!first) return [];
  return [
    {
      ...first,
      cutLine: pathOf(sizes.flatMap(({ cutLine }) => cutLine)),
      edges: sizes.flatMap(({ edges }) => edges),
    },
  ];
};

/**
 * Lays out all sizes on one drawing: each piece of every size in the same place, their frames one
 * over the other (front and back meet at fold and nape level, the sleeves at their centre and the
 * underarm level, bands at one corner).
 */
export const layOutNest = (nest: Nest, paper: PaperChoice, print: PrintChoices): Sheets => {
  const united = PIECE_NAMES.flatMap((name) => together(piecesOf(nest, name)));
  const drawn = nest.flatMap(({ garment }) => garment.pieces);
  return layOut(united, paper, print, drawn);
};

const frontArea = ({ garment }: SheetSubject): number => {
  const front = garment.pieces.find(({ name }) => name === "front");
  return front ? areaOf(front.cutLine) : 0;
};

export const nameOfBody = ({ body }: SheetSubject): string => body.size ?? body.name ?? body.id;

/**
 * What all sizes share is drawn for the smallest, inside of which all others' words and grain would
 * lie as well; it speaks for all of them.
 */
export const nestSpeaker = (nest: Nest): SheetSubject => {
  const smallest = nest.reduce((a, b) => (frontArea(b) < frontArea(a) ? b : a));
  const { name: _, size: __, ...body } = smallest.body;
  return { ...smallest, body: { ...body, among: nest.map(nameOfBody) } };
};

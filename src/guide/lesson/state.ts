import type { Garment } from "../../bands/garment.ts";
import { type Sweatshirt, toSweatshirt } from "../../drafting/alterations/sweatshirt.ts";
import type { Choices } from "../../drafting/choices.ts";
import type { Block, BodyEdges, InsertEdges, Piece, PieceName } from "../../drafting/piece.ts";
import { edgeOf } from "../shapes.ts";

type Alterations = Choices["alterations"];
/** The alterations in the order of the method, section 3; it matters. */
const ALTERED = [
  "neckline",
  "moveSideSeams",
  "raiseHem",
  "endSleeve",
  "vInsert",
] as const satisfies (keyof Alterations)[];
export type AlterationName = (typeof ALTERED)[number];

/** The sew lines as they are after some of the alterations, as worn. */
export type State = { readonly block: Block; readonly insert: InsertEdges | null };

const bodyEdges = (piece: Piece): BodyEdges => ({
  neckline: edgeOf(piece, "neckline").path,
  raglan: edgeOf(piece, "raglan").path,
  side: edgeOf(piece, "side").path,
  hem: edgeOf(piece, "hem").path,
  centre: edgeOf(piece, "centre").path,
});

/** The block before any alteration. */
const blockOf = ({ block }: Garment): Block => ({
  front: bodyEdges(block.front),
  back: bodyEdges(block.back),
  sleeve: {
    neckline: edgeOf(block.sleeve, "neckline").path,
    raglanFront: edgeOf(block.sleeve, "raglanFront").path,
    underarmFront: edgeOf(block.sleeve, "underarmFront").path,
    wrist: edgeOf(block.sleeve, "wrist").path,
    underarmBack: edgeOf(block.sleeve, "underarmBack").path,
    raglanBack: edgeOf(block.sleeve, "raglanBack").path,
  },
});

/** The choices with only these alterations on. */
const onlyThese = (choices: Alterations, names: readonly AlterationName[]): Alterations => ({
  neckline: { ...choices.neckline, on: names.includes("neckline") },
  moveSideSeams: { ...choices.moveSideSeams, on: names.includes("moveSideSeams") },
  raiseHem: { ...choices.raiseHem, on: names.includes("raiseHem") },
  endSleeve: { ...choices.endSleeve, on: names.includes("endSleeve") },
  vInsert: { ...choices.vInsert, on: names.includes("vInsert") },
});

/** Which alterations are on, in their order. */
export const alterationsOn = ({ choices }: Garment): readonly AlterationName[] =>
  ALTERED.filter((name) => choices.alterations[name].on);

/** The block as it is once the alterations named are done. */
export const stateAfter = (garment: Garment, names: readonly AlterationName[]): State => {
  const block = blockOf(garment);
  if (names.length === 0) return { block, insert: null };
  const done: Sweatshirt = toSweatshirt(block, onlyThese(garment.choices.alterations, names));
  return { block: done.block, insert: done.insert };
};

/** The pieces of body cloth of a state, by name, each with its edges. */
export const edgesOfState = ({
  block,
  insert,
}: State): readonly (readonly [PieceName, BodyEdges | Block["sleeve"] | InsertEdges])[] => [
  ["front", block.front],
  ["back", block.back],
  ["sleeve", block.sleeve],
  ...(insert ? [["vInsert", insert] as const] : []),
];

import type { Garment } from "../../src/bands/garment.ts";
import { makeGarment } from "../../src/bands/makeGarment.ts";
import type { Check } from "../../src/checks/check.ts";
import { checkGarment } from "../../src/checks/checkGarment.ts";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import type { Measures } from "../../src/drafting/measures.ts";
import type { Block, EdgeName, Piece, PieceName } from "../../src/drafting/piece.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { type Changes, choicesOf } from "./choices.ts";

export const DRAFTED: Block = draftRaglanBlock(WORKED_EXAMPLE, choicesOf().fit).block;

type Body = { readonly measures?: Partial<Measures>; readonly block?: Block };

/** A garment for the worked example's body, some measures, choices or the block changed. */
export const garmentOf = (changes: Changes = {}, { measures, block }: Body = {}): Garment => {
  const choices = choicesOf(changes);
  const body: Measures = { ...WORKED_EXAMPLE, ...measures };
  const drafted = block ? { block, rails: [] } : draftRaglanBlock(body, choices.fit);
  return makeGarment(drafted, body, choices);
};

/** One check of a garment by its id, which must be there. */
export const checkIn = (garment: Garment, id: string): Check => {
  const found = checkGarment(garment, []).find((check) => check.id === id);
  if (!found) throw new Error(`The garment has no check ${id}.`);
  return found;
};

export const idsIn = (garment: Garment): readonly string[] =>
  checkGarment(garment, []).map(({ id }) => id);

/** One piece of a garment by its name, which must be there. */
export const pieceIn = (garment: Garment, name: PieceName): Piece => {
  const found = garment.pieces.find((piece) => piece.name === name);
  if (!found) throw new Error(`The garment has no ${name}.`);
  return found;
};

export const edgeIn = (piece: Piece, name: EdgeName): Piece["edges"][number] => {
  const found = piece.edges.find((edge) => edge.name === name);
  if (!found) throw new Error(`The ${piece.name} has no edge ${name}.`);
  return found;
};

/** A path that must be there. */
export const given = (path: Path | undefined): Path => {
  if (!path) throw new Error("There is no such edge.");
  return path;
};

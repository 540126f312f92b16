import type { Band } from "../bands/band.ts";
import type { Choices } from "../drafting/choices.ts";
import type { Piece } from "../drafting/piece.ts";
import { asMm } from "../drafting/words.ts";
import { CUFF_MARKS, HEM_MARKS, MARK_WORDS, PIECE_TITLES } from "./data/pieceWords.ts";
import type { SheetSubject } from "./subject.ts";

/** The body as it is named on paper: the id beside the name, for a name may not be printable. */
export const bodyName = ({ id, name, size }: SheetSubject["body"]): string => {
  if (size !== undefined) return `Size ${size}`;
  return name !== undefined && name !== id ? `${name} (${id})` : id;
};

export const titleOf = ({ name }: Piece): string => PIECE_TITLES[name].title;

/** "Cut 2, a mirrored pair". */
export const cuttingOf = ({ name, cut }: Piece): string => `Cut ${cut}${PIECE_TITLES[name].how}`;

/** The band that a piece is cut for, or null where it is no band. */
export const bandOf = ({ name }: Piece, { bands }: SheetSubject["garment"]): Band | null => {
  if (name === "neckband") return bands.neckband;
  if (name === "cuff") return bands.cuff;
  return name === "hemBand" ? bands.hemBand : null;
};

/** "1022.7 × 165.1 mm": the unit once. */
export const asSize = (length: number, height: number): string =>
  `${asMm(length).replace(/\s*mm$/, "")} × ${asMm(height)}`;

/** The turnings that a body piece already has, by name. */
const turningsOf = ({ name }: Piece, { allowances, alterations }: Choices): string => {
  const { raglan, side, underarm, bands } = allowances;
  const v = alterations.vInsert.allowance;
  if (name === "vInsert") return `V ${asMm(v)}, top ${asMm(bands)}`;
  if (name === "sleeve") {
    return `raglan ${asMm(raglan)}, underarm ${asMm(underarm)}, neck and wrist ${asMm(bands)}`;
  }
  const inset = name === "front" && alterations.vInsert.on ? `, V ${asMm(v)}` : "";
  return `raglan ${asMm(raglan)}, side ${asMm(side)}, neck and hem ${asMm(bands)}${inset}`;
};

/** What stands under a piece's title, the most needed first. */
export const pieceFacts = (piece: Piece, { body, garment }: SheetSubject): readonly string[] => {
  const { cloth } = PIECE_TITLES[piece.name];
  const band = bandOf(piece, garment);
  const cutting = `${cuttingOf(piece)}, ${cloth}`;
  if (band) {
    const size = `Cut size ${asSize(band.cutLength, band.cutHeight)}`;
    const finished = `finished ${asSize(band.finishedLength, band.finishedDepth)}`;
    return [cutting, bodyName(body), `${size}, ${finished}`];
  }
  return [cutting, bodyName(body), `Turnings are in: ${turningsOf(piece, garment.choices)}`];
};

/** What the notch marks of a band meet, in the order in which they stand on it. */
export const bandMarkWords = (
  { name }: Piece,
  { bands }: SheetSubject["garment"],
): readonly string[] => {
  if (name === "neckband") return bands.neckband.marks.map(({ to }) => MARK_WORDS[to]);
  if (name === "cuff") return CUFF_MARKS;
  return name === "hemBand" ? HEM_MARKS : [];
};

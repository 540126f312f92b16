import type { Band } from "../bands/band.ts";
import type { Choices } from "../drafting/choices.ts";
import type { Piece } from "../drafting/piece.ts";
import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { CUFF_MARKS, HEM_MARKS, MARK_WORDS, PIECE_TITLES } from "./data/pieceWords.ts";
import type { SheetSubject } from "./subject.ts";

/** Longer names are cut short: the id tells the body anyway. */
const LONGEST_NAME = 48;

const shortened = (name: string): string => {
  const letters = [...name.replace(/\s+/gu, " ").trim()];
  return letters.length <= LONGEST_NAME
    ? letters.join("")
    : `${letters.slice(0, LONGEST_NAME - 1).join("")}…`;
};

/** "W80, W90, W100", or "W80 to W110, 16 in one". */
const amongWords = (names: readonly string[]): string => {
  const [first, last] = [names[0] ?? "", names[names.length - 1] ?? ""];
  return names.length <= NAMED_ONE_BY_ONE
    ? names.map(shortened).join(", ")
    : `${shortened(first)} to ${shortened(last)}, ${names.length} in one`;
};
const NAMED_ONE_BY_ONE = 3;

/** The body as it is named on paper: the id beside the name, for a name may not be printable. */
export const bodyName = ({ id, name, size, among }: SheetSubject["body"]): string => {
  if (among !== undefined) return amongWords(among);
  if (size !== undefined) return `Size ${size}`;
  return name !== undefined && name !== id ? `${shortened(name)} (${id})` : id;
};

export const titleOf = ({ name }: Piece): string => PIECE_TITLES[name].title;

/** "Cut 2 from body cloth, a mirrored pair". */
const cuttingOf = ({ name, cut }: Piece): string => {
  const { cloth, how } = PIECE_TITLES[name];
  return `Cut ${cut} from ${cloth}${how}`;
};

/** The band that a piece is cut for, or null where it is no band. */
export const bandOf = ({ name }: Piece, { bands }: SheetSubject["garment"]): Band | null => {
  if (name === "neckband") return bands.neckband;
  if (name === "cuff") return bands.cuff;
  return name === "hemBand" ? bands.hemBand : null;
};

/** A half is rounded up, as on paper, though 6.35 stands a little lower in the machine. */
const asTenths = (length: Mm): string => asMm(length + 1e-9);

/** "1022.7 × 165.1 mm", on one line. */
export const asSize = (length: Mm, height: Mm): string =>
  `${asTenths(length).replace(/\s*mm$/, "")}\u00a0×\u00a0${asTenths(height)}`;

/** The turnings that a body piece already has, by name. */
const turningsOf = ({ name }: Piece, { allowances, alterations }: Choices): string => {
  const { raglan, side, underarm, bands } = allowances;
  const v = alterations.vInsert.allowance;
  if (name === "vInsert") return `V ${asTenths(v)}, top ${asTenths(bands)}`;
  if (name === "sleeve") {
    return `raglan ${asTenths(raglan)}, underarm ${asTenths(underarm)}, neck and wrist ${asTenths(bands)}`;
  }
  const inset = name === "front" && alterations.vInsert.on ? `, V ${asTenths(v)}` : "";
  return `raglan ${asTenths(raglan)}, side ${asTenths(side)}, neck and hem ${asTenths(bands)}${inset}`;
};

/** What stands under a piece's title, the most needed first. */
export const pieceFacts = (
  piece: Piece,
  { body, garment }: SheetSubject,
  nameless = false,
): readonly string[] => {
  const band = bandOf(piece, garment);
  const whose = nameless ? [] : [bodyName(body)];
  if (band && body.among !== undefined)
    return [cuttingOf(piece), ...whose, "Each is named along its line"];
  if (band) {
    const size = `Cut size ${asSize(band.cutLength, band.cutHeight)}`;
    const finished = `finished ${asSize(band.finishedLength, band.finishedDepth)}`;
    return [cuttingOf(piece), ...whose, `${size}, ${finished}`];
  }
  const turnings = `Turnings are in: ${turningsOf(piece, garment.choices)}`;
  return [cuttingOf(piece), ...whose, turnings];
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

import type { Piece } from "../drafting/piece.ts";
import { lengthOf } from "../geometry/length.ts";
import { apart, minus, out, stepped, times, unit } from "../geometry/point.ts";
import { pointAlong } from "../geometry/split.ts";
import type { Mm } from "../geometry/units.ts";
import { drawAmong, type LayoutDrawing } from "./drawing.ts";
import { type Nest, nameOfBody, nestSpeaker } from "./nest.ts";
import { pieceLines, type Stroke } from "./pieceLines.ts";
import { placedPath, placedPoint, placementOf } from "./placing.ts";
import type { Sheets } from "./sheets.ts";
import { type Word, widthOf } from "./word.ts";

/** One size of a nest: what is seen while its layer is switched on. */
export type SizeDrawing = {
  readonly name: string;
  /** Cut lines, folds and notches, of each piece. */
  readonly outlines: readonly (readonly Stroke[])[];
  /** Seam lines and creases, of each piece. */
  readonly seams: readonly (readonly Stroke[])[];
  /** Its name along its lines. */
  readonly names: readonly Word[];
};

export type NestDrawing = {
  /** What is always seen: labels, grain, and where ink lies. */
  readonly common: LayoutDrawing;
  readonly sizes: readonly SizeDrawing[];
};

const OUTLINE = ["cut", "fold", "notch"] as const;
const SEAM = ["sew", "crease"] as const;

const strokesOf = (piece: Piece, sheets: Sheets, kinds: readonly Stroke["kind"][]) => {
  const placement = placementOf(sheets, piece.name);
  return pieceLines(piece)
    .filter(({ kind }) => kinds.includes(kind))
    .map((stroke) => ({ ...stroke, path: placedPath(placement, stroke.path) }));
};

/** Longer names find no straight line to stand along; the key has them whole. */
const LONGEST_TAG = 18;
const tagOf = (name: string): string => {
  const letters = [...name];
  return letters.length <= LONGEST_TAG ? name : `${letters.slice(0, LONGEST_TAG - 1).join("")}…`;
};

const TAG: Mm = 2.3;
/** Names stand this far apart along a piece's edge, all sizes taken together. */
const EVERY: Mm = 420;
/** From a line to the middle of the letters beside it. */
const INWARD: Mm = 1.9;
/** A line that bends more than this under a name is no place for it. */
const STRAIGHT: Mm = 0.5;
const ON_FOLD: Mm = 0.01;

/** A name inside the cut line, along it; null where the line bends, or is the fold. */
const nameAt = (piece: Piece, text: string, at: Mm): Word | null => {
  const half = widthOf(text, TAG) / 2;
  const [from, middle, to] = [at - half, at, at + half].map((s) => pointAlong(piece.cutLine, s));
  if (!from || !middle || !to) return null;
  const chord = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  if (apart(chord, middle) > STRAIGHT || apart(from, to) < 1.9 * half) return null;
  if (piece.onFold !== null && Math.abs(from.x) < ON_FOLD && Math.abs(to.x) < ON_FOLD) return null;
  const way = unit(minus(to, from));
  const inward = times(out(way), -1);
  const centre = stepped(middle, inward, INWARD);
  const reads = way.x > 0 || (way.x === 0 && way.y < 0) ? way : times(way, -1);
  const foot = stepped(centre, { x: -reads.y, y: reads.x }, TAG * 0.28);
  const turn = (Math.atan2(reads.y, reads.x) * 180) / Math.PI;
  return { text, x: foot.x, y: foot.y, size: TAG, turn, from: "middle", strong: false };
};

/** The names of one size along one piece, each in turn with those of the other sizes. */
const namesOn = (piece: Piece, text: string, place: number, of: number, sheets: Sheets) => {
  const whole = lengthOf(piece.cutLine);
  const rounds = Math.max(2, Math.round(whole / EVERY));
  const placement = placementOf(sheets, piece.name);
  return Array.from({ length: rounds }, (_, i) => {
    const share = (i + (place + 0.5) / of) / rounds;
    const word = nameAt(piece, text, Math.min(whole - 20, Math.max(20, share * whole)));
    return word
      ? [{ ...word, ...placedPoint(placement, word), turn: word.turn + placement.turn }]
      : [];
  }).flat();
};

const sizeDrawing = (nest: Nest, place: number, sheets: Sheets): SizeDrawing => {
  const subject = nest[place] ?? nest[0];
  const { pieces } = subject.garment;
  const name = nameOfBody(subject);
  return {
    name,
    outlines: pieces.map((piece) => strokesOf(piece, sheets, OUTLINE)),
    seams: pieces.map((piece) => strokesOf(piece, sheets, SEAM)),
    names: pieces.flatMap((piece) => namesOn(piece, tagOf(name), place, nest.length, sheets)),
  };
};

/** All sizes where the sheets have them. */
export const drawNest = (nest: Nest, sheets: Sheets): NestDrawing => {
  const sizes = nest.map((_, place) => sizeDrawing(nest, place, sheets));
  const others = ({ name }: Piece): readonly Stroke[] =>
    nest.flatMap(({ garment }, i) => {
      const at = garment.pieces.findIndex((piece) => piece.name === name);
      return at < 0 ? [] : [...(sizes[i]?.outlines[at] ?? []), ...(sizes[i]?.seams[at] ?? [])];
    });
  return { common: drawAmong(nestSpeaker(nest), sheets, others), sizes };
};

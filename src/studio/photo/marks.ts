import type { Mm } from "../../geometry/units.ts";
import { type Distance, FOUND_UNSURE, type SeenMark } from "../../trace/photo/mark.ts";
import type { Photo, PhotoPiece } from "./photoWork.ts";

/** A mark that the maker set, not one that the tool found. */
export const isByHand = ({ unsure }: SeenMark): boolean => unsure > FOUND_UNSURE;

export const pairKey = (a: string, b: string): string => (a < b ? `${a}-${b}` : `${b}-${a}`);

/** A distance to be measured: between which two marks, and what was read, if it was. */
export type Pair = {
  readonly key: string;
  readonly from: string;
  readonly to: string;
  readonly length: Mm | null;
};

const pairsOf = (names: readonly string[], { distances }: PhotoPiece): readonly Pair[] =>
  names.flatMap((from, i) =>
    names.slice(i + 1).map((to) => {
      const key = pairKey(from, to);
      return { key, from, to, length: distances[key] ?? null };
    }),
  );

const namesIn = (photos: readonly Photo[]): readonly string[] =>
  [...new Set(photos.flatMap(({ marks }) => marks.map(({ name }) => name)))].sort();

/** Every distance that the pictures of a piece ask for: between marks that one picture shows. */
export const pairsAsked = (piece: PhotoPiece): readonly Pair[] => {
  const together = (a: string, b: string): boolean =>
    piece.photos.some(({ marks }) =>
      [a, b].every((name) => marks.some((mark) => mark.name === name)),
    );
  return pairsOf(namesIn(piece.photos), piece).filter(({ from, to }) => together(from, to));
};

/** The distances of one picture's marks, as far as they were read. */
export const distancesOf = (piece: PhotoPiece, { marks }: Photo): readonly Distance[] =>
  pairsOf(
    marks.map(({ name }) => name),
    piece,
  ).flatMap(({ from, to, length }) => (length === null ? [] : [{ from, to, length }]));

/** A spare distance finds a wrong one: so many more are wanted than fix the marks. */
const SPARE = 1;

/** How many more distances a picture needs; 0 where it has enough. */
const lacking = (piece: PhotoPiece, photo: Photo): number => {
  const count = photo.marks.length;
  const most = (count * (count - 1)) / 2;
  return Math.max(0, Math.min(most, 2 * count - 3 + SPARE) - distancesOf(piece, photo).length);
};

/** What still has to be given before the pictures can be laid on the table. */
export type Lack = "photo" | "marks" | "distances" | "lengths" | null;

const FEWEST_MARKS = 4;

export const lackOf = (piece: PhotoPiece): Lack => {
  const { photos, by } = piece;
  if (photos.length === 0) return "photo";
  if (by === "scale") {
    const known = photos.every((photo) => photo.lengths.some(({ length }) => length !== null));
    return known ? null : "lengths";
  }
  if (photos.some(({ marks }) => marks.length < FEWEST_MARKS)) return "marks";
  if (by === "sheet") return null;
  return photos.some((photo) => lacking(piece, photo) > 0) ? "distances" : null;
};

export const distancesLacking = (piece: PhotoPiece): number =>
  Math.max(0, ...piece.photos.map((photo) => lacking(piece, photo)));

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** The first letter that no mark of the picture has. */
export const nextName = ({ marks }: Photo): string =>
  [...LETTERS].find((name) => marks.every((mark) => mark.name !== name)) ?? "Z";

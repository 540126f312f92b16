import type { Point } from "../../geometry/point.ts";
import type { StraightEdge } from "../../trace/photo/fitPlane.ts";
import { type Foretold, withWaves } from "../../trace/photo/foretell.ts";
import { hullOf } from "../../trace/photo/hull.ts";
import { joinPictures } from "../../trace/photo/joinPictures.ts";
import { planeInFrame } from "../../trace/photo/joinTables.ts";
import { type Distance, sheetDistances } from "../../trace/photo/mark.ts";
import type { Pixel } from "../../trace/photo/picture.ts";
import { type PictureAsked, placePicture } from "../../trace/photo/placePicture.ts";
import { inPicture, type Plane } from "../../trace/photo/plane.ts";
import { scaleOnly } from "../../trace/photo/scaleOnly.ts";
import { found, type Told } from "../../trace/told.ts";
import { distancesOf, isByHand } from "./marks.ts";
import type { PlacedPart, Placing } from "./photoJobs.ts";
import type { Photo, PhotoPiece } from "./photoWork.ts";

/** Straight edges of one picture, found along what the maker showed. */
export type EdgesIn = (photo: Photo) => Promise<Told<readonly StraightEdge[]>>;

/** So much of the table round the marks is looked at, as a share of their own reach. */
const ROUND_MARKS = 1.12;
/** From so many marks on they tell the lens's bending themselves. */
const TELLING_MARKS = 6;

const clipped = ({ width, height }: Photo, { x, y }: Pixel): Pixel => ({
  x: Math.min(width, Math.max(0, x)),
  y: Math.min(height, Math.max(0, y)),
});

/** The table round a picture's marks; a scan is looked at as a whole. */
const aroundOf = (photo: Photo, isWhole: boolean): readonly Pixel[] => {
  const { width, height, marks } = photo;
  if (isWhole) {
    return [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ];
  }
  const ring = hullOf(marks.map(({ at }) => at));
  const sum = ring.reduce((a, p) => ({ x: a.x + p.x, y: a.y + p.y }), { x: 0, y: 0 });
  const mid = { x: sum.x / ring.length, y: sum.y / ring.length };
  return ring.map(({ x, y }) =>
    clipped(photo, {
      x: mid.x + (x - mid.x) * ROUND_MARKS,
      y: mid.y + (y - mid.y) * ROUND_MARKS,
    }),
  );
};

const distancesFor = (piece: PhotoPiece, photo: Photo): readonly Distance[] =>
  piece.by === "sheet"
    ? sheetDistances(["A", "B", "C", "D"], piece.sheet.width, piece.sheet.height)
    : distancesOf(piece, photo);

const askedOf = (piece: PhotoPiece, photo: Photo, edges: readonly StraightEdge[]): PictureAsked => {
  const tells = edges.length >= 2 || photo.marks.length >= TELLING_MARKS;
  return {
    width: photo.width,
    height: photo.height,
    marks: photo.marks,
    distances: distancesFor(piece, photo),
    edges,
    terms: piece.bends ? (tells ? 2 : 1) : 0,
    piece: [],
    // Later pictures show other marks of the same table: those are held to the first by what they share.
    isClockwise: photo === piece.photos[0] && photo.marks.every(isByHand),
  };
};

type OnePlaced = {
  readonly part: PlacedPart;
  readonly asked: PictureAsked | null;
  readonly foretold: Foretold | null;
  readonly crooked: number | null;
};

const scaled = (photo: Photo): Told<OnePlaced> => {
  const lengths = photo.lengths.flatMap(({ from, to, length }) =>
    length === null ? [] : [{ from, to, length }],
  );
  const told = scaleOnly({ width: photo.width, height: photo.height, lengths });
  if ("fault" in told) return told;
  const part = { id: photo.id, plane: told.found.plane, marks: [], around: aroundOf(photo, true) };
  return found({ part, asked: null, foretold: null, crooked: null });
};

const placedOne = async (
  piece: PhotoPiece,
  photo: Photo,
  edgesIn: EdgesIn,
): Promise<Told<OnePlaced>> => {
  if (piece.by === "scale") return scaled(photo);
  const edges = piece.bends ? await edgesIn(photo) : found([]);
  if ("fault" in edges) return edges;
  const asked = askedOf(piece, photo, edges.found);
  const told = placePicture(asked);
  if ("fault" in told) return told;
  const { plane, marks, foretold, crooked } = told.found;
  const named = marks.map(({ mark, place }) => ({ name: mark.name, place }));
  const part = { id: photo.id, plane, marks: named, around: aroundOf(photo, false) };
  return found({ part, asked, foretold, crooked: edges.found.length > 0 ? crooked : null });
};

const isInside = (ring: readonly Point[], p: Point): boolean =>
  ring.every((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) >= 0;
  });

/** The part of the line that a picture is asked for: all of it, or what lies between its marks. */
const seenBy = (part: PlacedPart, along: readonly Point[], isOnly: boolean): readonly Pixel[] => {
  const ring = hullOf(part.marks.map(({ place }) => place));
  const own = isOnly ? along : along.filter((p) => isInside(ring, p));
  return own.map((p) => inPicture(part.plane, p));
};

const worse = (a: Foretold | null, b: Foretold | null): Foretold | null =>
  !a || !b ? (a ?? b) : { worst: Math.max(a.worst, b.worst), usual: Math.max(a.usual, b.usual) };

/** A later picture's part in the first one's frame, by the marks that both show. */
const inFrame = (first: PlacedPart, part: PlacedPart): Told<PlacedPart> => {
  const rigid = joinPictures(first.marks, part.marks);
  if ("fault" in rigid) return rigid;
  const plane: Plane = planeInFrame(part.plane, rigid.found);
  const marks = part.marks.map(({ name, place }) => ({ name, place: rigid.found.moved(place) }));
  return found({ ...part, plane, marks });
};

/** The error along a traced line; told where the line runs too far out of the marks. */
const along = (one: OnePlaced, line: readonly Pixel[]): Told<Foretold | null> => {
  if (!one.asked || line.length < 3) return found(one.foretold);
  const told = placePicture({ ...one.asked, piece: line });
  return "fault" in told ? told : found(told.found.foretold);
};

/**
 * All pictures of a piece laid on one table: each placed by its marks, later ones joined to the first.
 * The error is foretold round the marks, or along the line once it is traced.
 */
export const placePiece = async (
  piece: PhotoPiece,
  edgesIn: EdgesIn,
  line: readonly Point[],
): Promise<Told<Placing>> => {
  const parts: PlacedPart[] = [];
  let [foretold, crooked]: [Foretold | null, number | null] = [null, null];
  for (const photo of piece.photos) {
    const one = await placedOne(piece, photo, edgesIn);
    if ("fault" in one) return one;
    const [first] = parts;
    const part = first ? inFrame(first, one.found.part) : found(one.found.part);
    if ("fault" in part) return part;
    const error = along(one.found, seenBy(part.found, line, piece.photos.length === 1));
    if ("fault" in error) return error;
    parts.push(part.found);
    foretold = worse(foretold, error.found);
    crooked = one.found.crooked === null ? crooked : Math.max(crooked ?? 0, one.found.crooked);
  }
  return found({ parts, foretold: foretold && withWaves(foretold, piece.waves), crooked });
};

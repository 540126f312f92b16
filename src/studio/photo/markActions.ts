import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { clicked } from "../../trace/photo/mark.ts";
import type { Pixel } from "../../trace/photo/picture.ts";
import { eye, look } from "./eye.ts";
import { nextName } from "./marks.ts";
import { photoSay as say } from "./photoSay.ts";
import type { Photo, PhotoPiece, PlacedBy } from "./photoWork.ts";
import { changePhoto, changePiece, pieceNow } from "./piece.ts";

/** The picture that is looked at, or the piece's first. */
export const photoIn = ({ photos }: PhotoPiece, id: string | null): Photo | null =>
  photos.find((photo) => photo.id === id) ?? photos[0] ?? null;

const photoNow = (): Photo | null => photoIn(pieceNow(), eye().photo);

const SHEET_CORNERS = 4;

const held = (at: Pixel, { width, height }: Photo): Pixel => ({
  x: Math.min(width, Math.max(0, at.x)),
  y: Math.min(height, Math.max(0, at.y)),
});

const setMark = (photo: Photo, at: Pixel): void => {
  if (pieceNow().by === "sheet" && photo.marks.length >= SHEET_CORNERS) return;
  const name = nextName(photo);
  changePhoto(
    photo.id,
    (p) => ({
      ...p,
      marks: [...p.marks, clicked(name, held(at, p))].sort((a, b) => (a.name < b.name ? -1 : 1)),
    }),
    say("photo.step.mark", { name }),
  );
  look({ held: `mark.${name}` });
};

/** A mark moved by hand is no longer the tool's own: it is as sure as a hand is. */
export const moveMark = (id: string, name: string, at: Pixel, gesture: string): void =>
  changePhoto(
    id,
    (p) => ({
      ...p,
      marks: p.marks.map((mark) => (mark.name === name ? clicked(name, held(at, p)) : mark)),
    }),
    say("photo.step.moveMark", { name }),
    gesture,
  );

export const dropMark = (id: string, name: string): void =>
  changePhoto(
    id,
    (p) => ({ ...p, marks: p.marks.filter((mark) => mark.name !== name) }),
    say("photo.step.dropMark", { name }),
  );

export const setDistance = (key: string, length: Mm | null): void => {
  const { [key]: _, ...others } = pieceNow().distances;
  const distances = length === null ? others : { ...others, [key]: length };
  changePiece({ distances }, say("photo.step.distance", { pair: key.replace("-", "–") }));
};

export const setDistances = (distances: PhotoPiece["distances"]): void =>
  changePiece({ distances }, say("photo.step.distances"));

export const setSheet = (sheet: PhotoPiece["sheet"]): void =>
  changePiece({ sheet }, say("photo.step.sheet"));

/** Another way to slant and scale. The corners of a sheet are no marks: those are set anew. */
export const placeBy = (by: PlacedBy): void => {
  const { photos } = pieceNow();
  const bare = photos.map((photo) => ({ ...photo, marks: [] }));
  const isOther = by === "sheet" || pieceNow().by === "sheet";
  changePiece({ by, photos: isOther ? bare : photos }, say("photo.step.by"));
  look({ tool: by === "scale" ? "length" : "mark", end: null, fault: null });
};

export const setBends = (bends: boolean): void => changePiece({ bends }, say("photo.step.bends"));

export const setWaves = (waves: Mm): void => changePiece({ waves }, say("photo.step.waves"));

/** The first end is remembered, the second makes the edge or the length. */
const setEnd = (photo: Photo, at: Pixel, tool: "edge" | "length"): void => {
  const { end } = eye();
  if (!end) {
    look({ end: at });
    return;
  }
  look({ end: null });
  if (tool === "edge") {
    changePhoto(
      photo.id,
      (p) => ({ ...p, edges: [...p.edges, [end, at]] }),
      say("photo.step.edge"),
    );
  } else {
    changePhoto(
      photo.id,
      (p) => ({ ...p, lengths: [...p.lengths, { from: end, to: at, length: null }] }),
      say("photo.step.length"),
    );
  }
};

export const dropEdges = (id: string): void =>
  changePhoto(id, (p) => ({ ...p, edges: [] }), say("photo.step.dropEdges"));

export const setLength = (id: string, at: number, length: Mm | null): void =>
  changePhoto(
    id,
    (p) => ({
      ...p,
      lengths: p.lengths.map((known, i) => (i === at ? { ...known, length } : known)),
    }),
    say("photo.step.length"),
  );

export const dropLength = (id: string, at: number): void =>
  changePhoto(
    id,
    (p) => ({ ...p, lengths: p.lengths.filter((_, i) => i !== at) }),
    say("photo.step.dropLength"),
  );

/** What a tap on the picture does. */
export const tapPicture = (at: Point): void => {
  const photo = photoNow();
  if (!photo) return;
  const { tool } = eye();
  if (tool === "edge" || tool === "length") setEnd(photo, held(at, photo), tool);
  else if (tool === "mark") setMark(photo, at);
};

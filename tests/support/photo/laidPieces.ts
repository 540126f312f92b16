import type { Path } from "../../../src/geometry/segment.ts";
import type { Followed } from "../../../src/trace/follow/kind.ts";
import type { Distance } from "../../../src/trace/photo/mark.ts";
import type { Picture } from "../../../src/trace/photo/picture.ts";
import { drafted, halfRing, sleeveRing } from "../../trace/edges/shapes.ts";
import { photographed } from "./bringBack.ts";
import { greyPng } from "./greyPng.ts";

/** A piece of a drafted block photographed by program, as a file that a browser opens. */
export type LaidPiece = {
  readonly picture: Picture;
  readonly png: Buffer;
  readonly width: number;
  readonly height: number;
  readonly distances: readonly Distance[];
  /** The truth: its edges in order round it, mm. */
  readonly edges: readonly Path[];
};

export type PieceName = "front" | "back" | "sleeve";

const SHOT = {
  width: 1200,
  height: 1600,
  distance: 1150,
  tilt: 12,
  way: 40,
  roll: 4,
  focal: 0.75,
  k1: 0,
  k2: 0,
  noise: 3,
  shade: 0.3,
} as const;

const DRAWN: Readonly<Record<PieceName, Followed>> = {
  front: "line",
  back: "edge",
  sleeve: "line",
};

const block = drafted();
const edgesOf = (name: PieceName): readonly Path[] =>
  name === "sleeve" ? sleeveRing(block) : halfRing(block[name]);

const taken = new Map<PieceName, LaidPiece>();

/** The same table from another side: nothing on it was moved. */
const OTHER_SIDE = { tilt: 20, way: 230, roll: -12 } as const;

/** A second picture of the front among the same marks. */
export const secondPicture = (): Buffer => {
  const shot = { ...SHOT, ...OTHER_SIDE, seed: "front".length };
  const laid = { edges: edgesOf("front"), drawnAs: DRAWN.front };
  return greyPng(photographed(laid, shot, 100).picture);
};

/** The front and sleeve drawn with a pen on a sheet, the back cut out; four marks round each. */
export const laidPiece = (name: PieceName): LaidPiece => {
  const known = taken.get(name);
  if (known) return known;
  const edges = edgesOf(name);
  const shot = { ...SHOT, distance: name === "sleeve" ? 1350 : SHOT.distance, seed: name.length };
  const { picture, distances } = photographed({ edges, drawnAs: DRAWN[name] }, shot, 100);
  const { width, height } = picture;
  const made = { picture, png: greyPng(picture), width, height, distances, edges };
  taken.set(name, made);
  return made;
};

/** A part of a picture, or its mirror image, as a file. */
export const partOf = (
  { grey, width, height }: Picture,
  { share = 1, isMirrored = false }: { readonly share?: number; readonly isMirrored?: boolean },
): Buffer => {
  const wide = Math.round(width * share);
  const from = (x: number): number => (isMirrored ? width - 1 - x : x);
  return greyPng({
    width: wide,
    height,
    grey: Uint8Array.from(
      { length: wide * height },
      (_, k) => grey[Math.floor(k / wide) * width + from(k % wide)] ?? 0,
    ),
  });
};

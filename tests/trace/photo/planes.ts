import type { Point } from "../../../src/geometry/point.ts";
import { clicked, type Distance, type SeenMark } from "../../../src/trace/photo/mark.ts";
import type { PictureAsked } from "../../../src/trace/photo/placePicture.ts";
import { inPicture, type Plane } from "../../../src/trace/photo/plane.ts";
import { planeOfShot, type Shot } from "../../support/photo/camera.ts";

/** Four marks round a block, and a phone held over it, leaning. */
export const PLACES: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 700, y: 12 },
  { x: 690, y: 905 },
  { x: -8, y: 890 },
];

export const SHOT: Shot = {
  width: 3000,
  height: 4000,
  at: { x: 350, y: 450 },
  distance: 1400,
  tilt: 20,
  way: 70,
  roll: 4,
  focal: 0.75,
  k1: 0,
  k2: 0,
  noise: 0,
  shade: 0,
  seed: 3,
};

export const PLANE: Plane = planeOfShot(SHOT);

export const marksAt = (places: readonly Point[], plane: Plane = PLANE): readonly SeenMark[] =>
  places.map((place, i) => clicked("ABCDEFG"[i] ?? "?", inPicture(plane, place)));

export const distancesOf = (places: readonly Point[]): readonly Distance[] =>
  places.flatMap((a, i) =>
    places.slice(i + 1).map((b, k) => ({
      from: "ABCDEFG"[i] ?? "?",
      to: "ABCDEFG"[i + 1 + k] ?? "?",
      length: Math.hypot(a.x - b.x, a.y - b.y),
    })),
  );

export const asked = (changed: Partial<PictureAsked> = {}): PictureAsked => ({
  width: SHOT.width,
  height: SHOT.height,
  marks: marksAt(PLACES),
  distances: distancesOf(PLACES),
  edges: [],
  terms: 0,
  piece: [],
  ...changed,
});

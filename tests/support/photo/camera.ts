import type { Point } from "../../../src/geometry/point.ts";
import type { Homography } from "../../../src/trace/photo/homography.ts";
import { type Lens, straightLens } from "../../../src/trace/photo/lens.ts";
import type { Picture } from "../../../src/trace/photo/picture.ts";
import { onTable, type Plane, planeOf } from "../../../src/trace/photo/plane.ts";
import { normalFrom, randomFrom } from "./random.ts";
import type { Scene } from "./scene.ts";

/** How a camera is held over the table, and what it and the light do to the picture. */
export type Shot = {
  readonly width: number;
  readonly height: number;
  /** What it looks at, from how far in mm. */
  readonly at: Point;
  readonly distance: number;
  /** Degrees off upright, which way it leans, and how the picture is turned. */
  readonly tilt: number;
  readonly way: number;
  readonly roll: number;
  /** Focal length in parts of the picture's longer side: a phone's is about 0.75. */
  readonly focal: number;
  readonly k1: number;
  readonly k2: number;
  /** Deviation of the grain, of 255 greys. */
  readonly noise: number;
  /** How much darker the darkest corner is lit, 0 to 1. */
  readonly shade: number;
  readonly seed: number;
  /** How far paper that is not flat moves a place of the table, mm. */
  readonly wrinkle?: (p: Point) => Point;
};

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** From mm on the table to pixels, and the lens: the truth that the tool must find again. */
export const planeOfShot = (shot: Shot): Plane => {
  const { width, height, at, distance } = shot;
  const [tilt, way, roll] = [radians(shot.tilt), radians(shot.way), radians(shot.roll)];
  const eye = {
    x: at.x + distance * Math.sin(tilt) * Math.cos(way),
    y: at.y + distance * Math.sin(tilt) * Math.sin(way),
    z: -distance * Math.cos(tilt),
  };
  // Axes of the camera: forward to `at`, right and down in the picture, rolled.
  const forward = unit3({ x: at.x - eye.x, y: at.y - eye.y, z: -eye.z });
  const right0 = unit3(cross3({ x: 0, y: 1, z: 0 }, forward));
  const down0 = cross3(forward, right0);
  const [c, s] = [Math.cos(roll), Math.sin(roll)];
  const right = {
    x: c * right0.x + s * down0.x,
    y: c * right0.y + s * down0.y,
    z: c * right0.z + s * down0.z,
  };
  const down = {
    x: c * down0.x - s * right0.x,
    y: c * down0.y - s * right0.y,
    z: c * down0.z - s * right0.z,
  };
  const f = shot.focal * Math.max(width, height);
  const row = (axis: Vector, by: number, middle: number) => ({
    x: by * axis.x + middle * forward.x,
    y: by * axis.y + middle * forward.y,
    one: -(by * dot3(axis, eye) + middle * dot3(forward, eye)),
  });
  const u = row(right, f, width / 2);
  const v = row(down, f, height / 2);
  const far = -dot3(forward, eye);
  const toPicture: Homography = {
    a: u.x / far,
    b: u.y / far,
    c: u.one / far,
    d: v.x / far,
    e: v.y / far,
    f: v.one / far,
    g: forward.x / far,
    h: forward.y / far,
    i: 1,
  };
  const lens: Lens = { ...straightLens(width, height), k1: shot.k1, k2: shot.k2 };
  return planeOf(toPicture, lens);
};

type Vector = { readonly x: number; readonly y: number; readonly z: number };
const dot3 = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
const cross3 = (a: Vector, b: Vector): Vector => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});
const unit3 = (a: Vector): Vector => {
  const size = Math.hypot(a.x, a.y, a.z);
  return { x: a.x / size, y: a.y / size, z: a.z / size };
};

/** The scene's grey at a place in mm, between cells by proportion; 0 off the table. */
const greyOf = (scene: Scene, x: number, y: number): number => {
  const u = (x - scene.left) / scene.step - 0.5;
  const v = (y - scene.top) / scene.step - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  if (i < 0 || j < 0 || i + 1 >= scene.width || j + 1 >= scene.height) return 90;
  const k = j * scene.width + i;
  const [fx, fy] = [u - i, v - j];
  const top = (scene.grey[k] ?? 0) * (1 - fx) + (scene.grey[k + 1] ?? 0) * fx;
  const low =
    (scene.grey[k + scene.width] ?? 0) * (1 - fx) + (scene.grey[k + scene.width + 1] ?? 0) * fx;
  return top * (1 - fy) + low * fy;
};

/** Places on the table are worked out at every so many pixels along a row, straight between. */
const STRIDE = 8;

/** The scene's grey along a row of looks, two looks a pixel across, added to `sums`. */
const lookAlong = (scene: Scene, shot: Shot, y: number, sums: Float64Array): void => {
  const plane = planeOfShot(shot);
  const { width, wrinkle } = shot;
  for (let i = 0; i < width; i += STRIDE) {
    const a = onTable(plane, { x: i, y });
    const b = onTable(plane, { x: i + STRIDE, y });
    for (let k = 0; k < 2 * STRIDE && i + (k >> 1) < width; k++) {
      const t = (k + 0.5) / (2 * STRIDE);
      const p = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
      const q = wrinkle ? wrinkle(p) : p;
      const at = i + (k >> 1);
      sums[at] = (sums[at] ?? 0) + greyOf(scene, q.x, q.y) / 4;
    }
  }
};

/** The picture that a shot takes of a scene: four looks into each pixel, as a sensor's mean. */
export const take = (scene: Scene, shot: Shot): Picture => {
  const { width, height, noise, shade } = shot;
  const normal = normalFrom(randomFrom(shot.seed));
  const grey = new Uint8Array(width * height);
  const corner = { x: 0.2 * width, y: 0.1 * height };
  const far = Math.hypot(width - corner.x, height - corner.y);
  const sums = new Float64Array(width);
  for (let j = 0; j < height; j++) {
    sums.fill(0);
    lookAlong(scene, shot, j + 0.25, sums);
    lookAlong(scene, shot, j + 0.75, sums);
    for (let i = 0; i < width; i++) {
      const light = 1 - shade * (Math.hypot(i - corner.x, j - corner.y) / far) ** 1.5;
      const value = (sums[i] ?? 0) * light + noise * normal();
      grey[j * width + i] = Math.min(255, Math.max(0, Math.round(value)));
    }
  }
  return { grey, width, height };
};

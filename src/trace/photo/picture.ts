import { faulty, found, type Told } from "../told.ts";

/**
 * A grey picture, row by row from the top, 0 black to 255 white. Pixel (i, j) covers [i, i + 1] by
 * [j, j + 1]: its middle lies at (i + 0.5, j + 0.5).
 */
export type Picture = {
  readonly grey: Uint8Array;
  readonly width: number;
  readonly height: number;
};

/** A place in a picture, in pixels from its top left corner, y down. */
export type Pixel = { readonly x: number; readonly y: number };

/** More pixels than this would not fit beside a page's own memory on a small computer. Ours. */
const MOST_PIXELS = 120_000_000;
/** A picture with a side below this cannot hold a piece and four marks. Ours. */
const LEAST_SIDE = 200;

const megapixels = (pixels: number): string => (pixels / 1e6).toFixed(pixels < 1e7 ? 1 : 0);

/** Whether a picture of this size can be worked with, before any of it is decoded. */
export const soundSize = (width: number, height: number): Told<true> => {
  const size = `${width} × ${height}`;
  if (width * height > MOST_PIXELS) {
    return faulty(
      "picture",
      size,
      `The picture has ${megapixels(width * height)} megapixels; the limit is ${megapixels(MOST_PIXELS)}.`,
      "Save it at half its width and height; 12 megapixels are enough.",
    );
  }
  if (!(Math.min(width, height) >= LEAST_SIDE)) {
    return faulty(
      "picture",
      size,
      `The picture is ${size} pixels; its shorter side must have ${LEAST_SIDE} or more.`,
      "Take the original picture, not its preview.",
    );
  }
  return found(true);
};

/** Luminance of sRGB colours by the weights of ITU-R BT.601, in 256ths (from memory). */
const RED = 77;
const GREEN = 150;
const BLUE = 29;

/** Colours (red, green, blue, opacity) turned grey and written into `grey` from `at` on. */
export const writeGrey = (rgba: Uint8ClampedArray, grey: Uint8Array, at: number): void => {
  const count = rgba.length >> 2;
  for (let i = 0; i < count; i++) {
    const k = i << 2;
    grey[at + i] =
      (RED * (rgba[k] ?? 0) + GREEN * (rgba[k + 1] ?? 0) + BLUE * (rgba[k + 2] ?? 0)) >> 8;
  }
};

/** The grey at a place, between pixels by proportion; the nearest edge pixel outside. */
export const greyAt = (picture: Picture, x: number, y: number): number => {
  const { grey, width, height } = picture;
  const u = Math.min(width - 1, Math.max(0, x - 0.5));
  const v = Math.min(height - 1, Math.max(0, y - 0.5));
  const i = Math.min(width - 2, Math.floor(u));
  const j = Math.min(height - 2, Math.floor(v));
  const fx = u - i;
  const fy = v - j;
  const k = j * width + i;
  const top = (grey[k] ?? 0) * (1 - fx) + (grey[k + 1] ?? 0) * fx;
  const low = (grey[k + width] ?? 0) * (1 - fx) + (grey[k + width + 1] ?? 0) * fx;
  return top * (1 - fy) + low * fy;
};

/** A picture made smaller by a whole number, each pixel the mean of `by` × `by`. */
export const reduced = (picture: Picture, by: number): Picture => {
  if (by <= 1) return picture;
  const width = Math.floor(picture.width / by);
  const height = Math.floor(picture.height / by);
  const grey = new Uint8Array(width * height);
  const sums = new Uint32Array(width);
  const area = by * by;
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let r = 0; r < by; r++) {
      let k = (y * by + r) * picture.width;
      for (let x = 0; x < width; x++) {
        let sum = 0;
        for (let c = 0; c < by; c++) sum += picture.grey[k++] ?? 0;
        sums[x] = (sums[x] ?? 0) + sum;
      }
    }
    for (let x = 0; x < width; x++) grey[y * width + x] = (sums[x] ?? 0) / area;
  }
  return { grey, width, height };
};

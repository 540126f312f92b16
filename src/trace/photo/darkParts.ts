import type { Picture } from "./picture.ts";

/** A connected part of a picture's dark pixels (side by side or one above the other). */
export type DarkPart = {
  readonly label: number;
  readonly area: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Middle of its pixels. */
  readonly x: number;
  readonly y: number;
  /** Second moments about that middle, in square pixels. */
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
};

/** The parts of a picture, and which part each pixel belongs to (0: light). */
export type DarkParts = { readonly parts: readonly DarkPart[]; readonly labels: Int32Array };

/** A pixel is dark below this share of the light round it. Ours, tried on uneven light. */
const DARK_SHARE = 0.8;
/** The light is the mean over a square of this part of the picture's longer side. */
const ROUND_SHARE = 1 / 10;

/** Sums of all pixels above and to the left of each, one row and column more than the picture. */
const sumsOf = ({ grey, width, height }: Picture): Float64Array => {
  const wide = width + 1;
  const sums = new Float64Array(wide * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      row += grey[y * width + x] ?? 0;
      sums[(y + 1) * wide + x + 1] = (sums[y * wide + x + 1] ?? 0) + row;
    }
  }
  return sums;
};

/** 1 where a pixel is dark against the light round it, so that shadows do not matter. */
const darkOf = (picture: Picture): Uint8Array => {
  const { grey, width, height } = picture;
  const sums = sumsOf(picture);
  const wide = width + 1;
  const reach = Math.max(8, Math.round((Math.max(width, height) * ROUND_SHARE) / 2));
  const dark = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const top = Math.max(0, y - reach);
    const low = Math.min(height, y + reach + 1);
    for (let x = 0; x < width; x++) {
      const left = Math.max(0, x - reach);
      const right = Math.min(width, x + reach + 1);
      const sum =
        (sums[low * wide + right] ?? 0) -
        (sums[top * wide + right] ?? 0) -
        (sums[low * wide + left] ?? 0) +
        (sums[top * wide + left] ?? 0);
      const limit = (DARK_SHARE * sum) / ((low - top) * (right - left));
      dark[y * width + x] = (grey[y * width + x] ?? 0) < limit ? 1 : 0;
    }
  }
  return dark;
};

/** The root of a label, with the way to it made shorter. */
const rootOf = (parents: Int32Array, label: number): number => {
  let root = label;
  while ((parents[root] ?? root) !== root) root = parents[root] ?? root;
  let at = label;
  while (at !== root) {
    const next = parents[at] ?? root;
    parents[at] = root;
    at = next;
  }
  return root;
};

/** Every dark pixel labelled, parts that touch joined (union and find). */
const labelled = (dark: Uint8Array, width: number): Int32Array => {
  const labels = new Int32Array(dark.length);
  const parents = new Int32Array(dark.length / 2 + 2);
  let count = 0;
  for (let k = 0; k < dark.length; k++) {
    if (dark[k] === 0) continue;
    const left = k % width > 0 ? (labels[k - 1] ?? 0) : 0;
    const above = k >= width ? (labels[k - width] ?? 0) : 0;
    if (left === 0 && above === 0) {
      count++;
      parents[count] = count;
      labels[k] = count;
    } else if (left === 0 || above === 0) labels[k] = left + above;
    else {
      const a = rootOf(parents, left);
      const b = rootOf(parents, above);
      parents[Math.max(a, b)] = Math.min(a, b);
      labels[k] = Math.min(a, b);
    }
  }
  for (let k = 0; k < labels.length; k++) {
    const label = labels[k] ?? 0;
    if (label > 0) labels[k] = rootOf(parents, label);
  }
  return labels;
};

/** Sums over each part: count, x, y, xx, xy, yy, and its box. */
const gather = (labels: Int32Array, width: number) => {
  const places = new Map<number, number>();
  const sums: number[] = [];
  for (let k = 0; k < labels.length; k++) {
    const label = labels[k] ?? 0;
    if (label === 0) continue;
    let at = places.get(label);
    if (at === undefined) {
      at = sums.length;
      places.set(label, at);
      sums.push(0, 0, 0, 0, 0, 0, Infinity, Infinity, -Infinity, -Infinity);
    }
    const y = Math.floor(k / width);
    const x = k - y * width;
    sums[at] = (sums[at] ?? 0) + 1;
    sums[at + 1] = (sums[at + 1] ?? 0) + x;
    sums[at + 2] = (sums[at + 2] ?? 0) + y;
    sums[at + 3] = (sums[at + 3] ?? 0) + x * x;
    sums[at + 4] = (sums[at + 4] ?? 0) + x * y;
    sums[at + 5] = (sums[at + 5] ?? 0) + y * y;
    sums[at + 6] = Math.min(sums[at + 6] ?? 0, x);
    sums[at + 7] = Math.min(sums[at + 7] ?? 0, y);
    sums[at + 8] = Math.max(sums[at + 8] ?? 0, x);
    sums[at + 9] = Math.max(sums[at + 9] ?? 0, y);
  }
  return { places, sums };
};

/** Parts of fewer pixels than this are grain. */
const LEAST_AREA = 12;

/** The dark parts of a picture, with the moments of each. For pictures of a few megapixels. */
export const darkPartsOf = (picture: Picture): DarkParts => {
  const labels = labelled(darkOf(picture), picture.width);
  const { places, sums } = gather(labels, picture.width);
  const parts: DarkPart[] = [];
  for (const [label, at] of places) {
    const of = (i: number): number => sums[at + i] ?? 0;
    const area = of(0);
    if (area < LEAST_AREA) continue;
    const x = of(1) / area;
    const y = of(2) / area;
    parts.push({
      label,
      area,
      left: of(6),
      top: of(7),
      right: of(8) + 1,
      bottom: of(9) + 1,
      x: x + 0.5,
      y: y + 0.5,
      // A pixel is a square of side 1: its own second moment is 1/12.
      xx: of(3) / area - x * x + 1 / 12,
      xy: of(4) / area - x * y,
      yy: of(5) / area - y * y + 1 / 12,
    });
  }
  return { parts, labels };
};

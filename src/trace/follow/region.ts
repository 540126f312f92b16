import type { Strengths } from "./coarse.ts";

/** Cells of a window that belong to a piece: 1, the others 0. */
export type Region = {
  readonly inside: Uint8Array;
  readonly width: number;
  readonly height: number;
};

/** Cells reached from a seed without crossing a wall; null where the way leads off the window. */
export const flooded = (
  wall: Uint8Array,
  width: number,
  height: number,
  seed: number,
): Region | null => {
  const inside = new Uint8Array(wall.length);
  if (wall[seed] === 1) return null;
  const waiting = new Int32Array(wall.length);
  let count = 1;
  waiting[0] = seed;
  inside[seed] = 1;
  while (count > 0) {
    const cell = waiting[--count] ?? 0;
    const x = cell % width;
    if (x === 0 || x === width - 1 || cell < width || cell >= width * (height - 1)) return null;
    for (let n = 0; n < 4; n++) {
      const next = cell + (n === 0 ? -1 : n === 1 ? 1 : n === 2 ? -width : width);
      if (inside[next] === 1 || wall[next] === 1) continue;
      inside[next] = 1;
      waiting[count++] = next;
    }
  }
  return { inside, width, height };
};

/**
 * How far each cell is from the nearest cell of a kind, in tenths of a cell: two passes with 10
 * straight and 14 slanting (chamfer distance, from memory).
 */
const distancesTo = ({ inside, width, height }: Region, kind: 0 | 1): Uint16Array => {
  const far = 60_000;
  const away = new Uint16Array(inside.length);
  for (let k = 0; k < away.length; k++) away[k] = inside[k] === kind ? 0 : far;
  const least = (k: number, from: number, cost: number): void => {
    const by = (away[from] ?? far) + cost;
    if (by < (away[k] ?? far)) away[k] = by;
  };
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const k = y * width + x;
      least(k, k - 1, 10);
      least(k, k - width, 10);
      least(k, k - width - 1, 14);
      least(k, k - width + 1, 14);
    }
  }
  for (let y = height - 2; y > 0; y--) {
    for (let x = width - 2; x > 0; x--) {
      const k = y * width + x;
      least(k, k + 1, 10);
      least(k, k + width, 10);
      least(k, k + width + 1, 14);
      least(k, k + width - 1, 14);
    }
  }
  return away;
};

/** Walls made thicker by `reach` cells, so that gaps in a line are closed. */
export const thickened = (
  wall: Uint8Array,
  width: number,
  height: number,
  reach: number,
): Uint8Array => {
  if (reach <= 0) return wall;
  const away = distancesTo({ inside: wall, width, height }, 1);
  return wall.map((_, k) => ((away[k] ?? 0) <= 10 * reach ? 1 : 0));
};

/** A region with bays narrower than twice `reach` cells filled: notches and strokes that touch it. */
export const closedUp = (region: Region, reach: number): Region => {
  const out = distancesTo(region, 1);
  const grown: Region = {
    ...region,
    inside: region.inside.map((_, k) => ((out[k] ?? 0) <= 10 * reach ? 1 : 0)),
  };
  const back = distancesTo(grown, 0);
  return { ...region, inside: region.inside.map((_, k) => ((back[k] ?? 0) > 10 * reach ? 1 : 0)) };
};

export const areaOfRegion = ({ inside }: Region): number => {
  let count = 0;
  for (let k = 0; k < inside.length; k++) count += inside[k] ?? 0;
  return count;
};

/** The eight ways from a cell, clockwise on the page from due left. */
const WAYS = [
  [-1, 0],
  [-1, -1],
  [0, -1],
  [1, -1],
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
] as const;

/**
 * The cells along a region's outer border, clockwise on the page, by Moore's rule (from memory).
 * Begins at its first cell from the top left.
 */
export const borderOf = ({ inside, width }: Region): readonly number[] => {
  const first = inside.indexOf(1);
  if (first < 0) return [];
  const border = [first];
  let at = first;
  let from = 0;
  for (let step = 0; step < inside.length; step++) {
    let next = -1;
    let way = from;
    for (let n = 1; n <= 8; n++) {
      way = (from + n) % 8;
      const [dx, dy] = WAYS[way] ?? [0, 0];
      const cell = at + dx + dy * width;
      if (inside[cell] === 1) {
        next = cell;
        break;
      }
    }
    if (next < 0 || (next === first && border.length > 2)) break;
    border.push(next);
    at = next;
    // Back where it came from, as seen from the new cell, and on from there.
    from = (way + 4) % 8;
  }
  return border;
};

/** Walls where a line shows more strongly than `limit`. */
export const wallsOf = ({ strength }: Strengths, limit: number): Uint8Array => {
  const wall = new Uint8Array(strength.length);
  for (let k = 0; k < strength.length; k++) wall[k] = (strength[k] ?? 0) >= limit ? 1 : 0;
  return wall;
};

import type { Mm } from "../../geometry/units.ts";
import type { TablePicture, Window } from "../photo/rectify.ts";
import type { Followed } from "./kind.ts";

/** A table picture made coarse: how strongly each cell shows the line or edge, 0 to 255. */
export type Strengths = {
  readonly strength: Uint8Array;
  readonly window: Window;
};

/** A part of a window, in cells. */
export type CellBox = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

type Extremes = {
  readonly low: Uint8Array;
  readonly high: Uint8Array;
  readonly width: number;
  readonly height: number;
};

/** Darkest and lightest of every `by` by `by` cells: a thin line stays as dark as it is. */
const extremesOf = (picture: TablePicture, box: CellBox, by: number): Extremes => {
  const width = Math.max(1, Math.floor((box.right - box.left) / by));
  const height = Math.max(1, Math.floor((box.bottom - box.top) / by));
  const low = new Uint8Array(width * height);
  const high = new Uint8Array(width * height);
  const { grey } = picture;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let least = 255;
      let most = 0;
      for (let r = 0; r < by; r++) {
        let k = (box.top + y * by + r) * picture.width + box.left + x * by;
        for (let c = 0; c < by; c++) {
          const value = grey[k++] ?? 0;
          if (value < least) least = value;
          if (value > most) most = value;
        }
      }
      low[y * width + x] = least;
      high[y * width + x] = most;
    }
  }
  return { low, high, width, height };
};

/** A line is compared to the paper this far to both sides of it. */
const SIDE: Mm = 2.2;

/** How much darker a cell is than the paper to both its sides, the best of four directions. */
const lineStrength = ({ low, high, width, height }: Extremes, d: number): Uint8Array => {
  const strength = new Uint8Array(low.length);
  const ways = [d, d * width, d * width + d, d * width - d];
  for (let y = d; y < height - d; y++) {
    for (let x = d; x < width - d; x++) {
      const k = y * width + x;
      const here = low[k] ?? 0;
      let best = 0;
      for (let n = 0; n < 4; n++) {
        const way = ways[n] ?? 0;
        const one = high[k - way] ?? 0;
        const other = high[k + way] ?? 0;
        const rise = Math.min(one, other) - here;
        if (rise > best) best = rise;
      }
      strength[k] = best;
    }
  }
  return strength;
};

/** How much the grey changes over a cell and its neighbours. */
const edgeStrength = ({ low, high, width, height }: Extremes): Uint8Array => {
  const strength = new Uint8Array(low.length);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const k = y * width + x;
      const across = Math.abs(
        (low[k + 1] ?? 0) + (high[k + 1] ?? 0) - (low[k - 1] ?? 0) - (high[k - 1] ?? 0),
      );
      const down = Math.abs(
        (low[k + width] ?? 0) +
          (high[k + width] ?? 0) -
          (low[k - width] ?? 0) -
          (high[k - width] ?? 0),
      );
      strength[k] = Math.min(255, Math.max(across, down) / 2);
    }
  }
  return strength;
};

/** How strongly each cell of a part of a picture shows a line or an edge, in cells of about `cell`. */
export const strengthsIn = (
  picture: TablePicture,
  what: Followed,
  box: CellBox,
  cell: Mm,
): Strengths => {
  const { left, top, step } = picture.window;
  const by = Math.max(1, Math.round(cell / step));
  const extremes = extremesOf(picture, box, by);
  const { width, height } = extremes;
  const d = Math.max(1, Math.round(SIDE / (by * step)));
  return {
    strength: what === "line" ? lineStrength(extremes, d) : edgeStrength(extremes),
    window: {
      left: left + box.left * step,
      top: top + box.top * step,
      step: by * step,
      width,
      height,
    },
  };
};

export const wholeOf = ({ width, height }: TablePicture): CellBox => ({
  left: 0,
  top: 0,
  right: width,
  bottom: height,
});

/** The strength that a share of all cells stays below. */
export const strengthAt = ({ strength }: Strengths, share: number): number => {
  const counts = new Uint32Array(256);
  for (let k = 0; k < strength.length; k++) {
    const value = strength[k] ?? 0;
    counts[value] = (counts[value] ?? 0) + 1;
  }
  let left = share * strength.length;
  for (let value = 0; value < 256; value++) {
    left -= counts[value] ?? 0;
    if (left < 0) return value;
  }
  return 255;
};

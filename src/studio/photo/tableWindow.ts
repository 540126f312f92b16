import { type Window, windowRound } from "../../trace/photo/rectify.ts";
import type { PlacedPart } from "./photoJobs.ts";

/**
 * Cells of the table at the most: at 1.2 by 1.4 m they are 0.33 mm wide, finer than a pen line, and
 * the line is found in them within the time that a maker waits for without a word. Ours.
 */
const MOST_CELLS = 16_000_000;

/** One window round all parts, as fine as the finest of them. */
export const windowOf = (parts: readonly PlacedPart[]): Window => {
  const windows = parts.map(({ plane, around }) => windowRound(plane, around));
  const left = Math.min(...windows.map((w) => w.left));
  const top = Math.min(...windows.map((w) => w.top));
  const across = Math.max(...windows.map((w) => w.left + w.width * w.step)) - left;
  const down = Math.max(...windows.map((w) => w.top + w.height * w.step)) - top;
  const finest = Math.min(...windows.map((w) => w.step));
  const step = Math.max(finest, Math.sqrt((across * down) / MOST_CELLS));
  return { left, top, step, width: Math.ceil(across / step), height: Math.ceil(down / step) };
};

import type { Box } from "../../geometry/outline.ts";
import type { Point } from "../../geometry/point.ts";
import { FITTED, type Size, type View } from "../table/view.ts";

/** How the picture's own units become px on the board: px = at + unit × scale. */
export type Fit = { readonly scale: number; readonly x: number; readonly y: number };

const MARGIN = 16;
/** Room for the hint above and the buttons below. */
const HEAD = 44;
const FOOT = 52;

/** The whole box on the board, then as the maker moved and zoomed it. */
export const fitOf = (box: Box, { width, height }: Size, view: View | null): Fit => {
  const [wide, high] = [Math.max(1e-6, box.right - box.left), Math.max(1e-6, box.bottom - box.top)];
  const room = { x: Math.max(40, width - 2 * MARGIN), y: Math.max(40, height - HEAD - FOOT) };
  const scale = Math.min(room.x / wide, room.y / high);
  const x = (width - wide * scale) / 2 - box.left * scale;
  const y = HEAD + (room.y - high * scale) / 2 - box.top * scale;
  const { zoom, x: dx, y: dy } = view ?? FITTED;
  return { scale: scale * zoom, x: x * zoom + dx, y: y * zoom + dy };
};

export const toPx = ({ scale, x, y }: Fit, p: Point): Point => ({
  x: x + p.x * scale,
  y: y + p.y * scale,
});

export const fromPx = ({ scale, x, y }: Fit, p: Point): Point => ({
  x: (p.x - x) / scale,
  y: (p.y - y) / scale,
});

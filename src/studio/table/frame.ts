import type { PieceName } from "../../drafting/piece.ts";
import type { Point } from "../../geometry/point.ts";
import type { Arrangement } from "./arrange.ts";
import { FITTED, type View } from "./view.ts";

/** How a piece's millimetres become px on the table: px = at + mm × scale. */
export type Frame = { readonly scale: number; readonly x: number; readonly y: number };

export const frameOf = (
  { scale, places }: Arrangement,
  piece: PieceName,
  view: View | null,
): Frame => {
  const { zoom, x, y } = view ?? FITTED;
  const place = places.get(piece) ?? { x: 0, y: 0 };
  return { scale: scale * zoom, x: place.x * zoom + x, y: place.y * zoom + y };
};

export const toPx = ({ scale, x, y }: Frame, p: Point): { x: number; y: number } => ({
  x: x + p.x * scale,
  y: y + p.y * scale,
});

export const toMm = ({ scale, x, y }: Frame, px: { x: number; y: number }): Point => ({
  x: (px.x - x) / scale,
  y: (px.y - y) / scale,
});

/** A tenth of a px: short to write, finer than any screen. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

/**
 * Where a group stands on the table, turned by degrees. Lettering that is moved by its group is
 * neither measured nor shaped anew.
 */
export const standing = (x: number, y: number, turn = 0): string =>
  `translate(${px(x)} ${px(y)})${turn === 0 ? "" : ` rotate(${px(turn)})`}`;

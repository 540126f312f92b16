import type { Point } from "../../geometry/point.ts";
import { px } from "./frame.ts";

/** A pin on the screen, in px from its foot. */
export type PinShape = {
  readonly head: Point;
  readonly glint: Point;
  readonly label: Point;
  readonly shaft: string;
  readonly underline: string;
};

const SHAFT = 26;
const FOOT = 9;
/** A figure of the table's lettering is about so wide. */
const FIGURE = 7.2;

export const isUpright = (way: Point): boolean => Math.abs(way.y) > Math.abs(way.x);

/** Beside the head of an upright pin, over a level one, and before a slanting one. */
const labelPlace = (way: Point, head: Point, wide: number): Point => {
  const slant = Math.abs(way.x) > 0.3 && Math.abs(way.y) > 0.15;
  if (slant) return { x: head.x - wide - 12, y: head.y + 1 };
  if (isUpright(way)) return { x: head.x + 12, y: head.y + 5 };
  return { x: head.x - wide / 2, y: head.y - 13 };
};

/** How the pin stands on its foot, and the number beside its head. */
export const pinShape = (lean: Point, text: string): PinShape => {
  const head = { x: lean.x * SHAFT, y: lean.y * SHAFT };
  const wide = text.length * FIGURE;
  const label = labelPlace(lean, head, wide);
  return {
    head,
    glint: { x: head.x - 2, y: head.y - 2 },
    label,
    shaft: `M${px(-lean.x * FOOT)} ${px(-lean.y * FOOT)}L${px(head.x)} ${px(head.y)}`,
    underline: `M${px(label.x)} ${px(label.y + 4)}h${px(wide)}`,
  };
};

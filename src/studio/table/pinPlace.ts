import type { Point } from "../../geometry/point.ts";
import { type Frame, px, toPx } from "./frame.ts";
import type { Pin } from "./pins.ts";

/** A pin on the screen, in px. */
export type PinPlace = {
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

export const isUpright = ({ way }: Pin): boolean => Math.abs(way.y) > Math.abs(way.x);

/** Beside the head of an upright pin, over a level one, and before a slanting one. */
const labelPlace = (way: Pin["way"], head: { x: number; y: number }, wide: number) => {
  const slant = Math.abs(way.x) > 0.3 && Math.abs(way.y) > 0.15;
  if (slant) return { x: head.x - wide - 12, y: head.y + 1 };
  if (Math.abs(way.y) > Math.abs(way.x)) return { x: head.x + 12, y: head.y + 5 };
  return { x: head.x - wide / 2, y: head.y - 13 };
};

/** Where the pin stands, and the number beside its head. */
export const pinPlace = ({ at, head: lean }: Pin, frame: Frame, text: string): PinPlace => {
  const foot = toPx(frame, at);
  const head = { x: foot.x + lean.x * SHAFT, y: foot.y + lean.y * SHAFT };
  const wide = text.length * FIGURE;
  const label = labelPlace(lean, head, wide);
  return {
    head,
    glint: { x: head.x - 2, y: head.y - 2 },
    label,
    shaft: `M${px(foot.x - lean.x * FOOT)} ${px(foot.y - lean.y * FOOT)}L${px(head.x)} ${px(head.y)}`,
    underline: `M${px(label.x)} ${px(label.y + 4)}h${px(wide)}`,
  };
};

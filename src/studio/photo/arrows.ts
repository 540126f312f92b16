import type { KeyboardEvent } from "react";
import type { Point } from "../../geometry/point.ts";

const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** Steps of the arrow keys, plain, with Shift and with Ctrl. */
export type Steps = { readonly plain: number; readonly shift: number; readonly ctrl: number };

/** How far an arrow key moves what is in hand; null for other keys. */
export const arrowOf = (event: KeyboardEvent, steps: Steps): Point | null => {
  const way = WAYS[event.key];
  if (!way || event.altKey) return null;
  const by = event.shiftKey
    ? steps.shift
    : event.ctrlKey || event.metaKey
      ? steps.ctrl
      : steps.plain;
  return { x: way.x * by, y: way.y * by };
};

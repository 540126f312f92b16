import { type PointerEvent, useEffect, useRef } from "react";
import { letPinGo, type Pull, pullTo, putPinBack, takeHold } from "../state/dragging.ts";
import type { Pin } from "./pins.ts";
import { useOncePerFrame } from "./useOncePerFrame.ts";

type Held = { readonly pull: Pull; readonly x: number; readonly y: number };
type Spot = { readonly x: number; readonly y: number; readonly fine: boolean };

/** Pulling: the pointer's way along the shaft, turned into the number. */
export const usePulling = ({ field, way, perMm }: Pin, scale: number) => {
  const held = useRef<Held | null>(null);
  const { ask, flush, drop } = useOncePerFrame();
  const toSpot = ({ pull, x, y }: Held, spot: Spot): void => {
    const along = (spot.x - x) * way.x + (spot.y - y) * way.y;
    pullTo(pull, (along / scale) * perMm, spot.fine);
  };
  const putBack = () => {
    drop();
    if (held.current) putPinBack(held.current.pull);
    held.current = null;
  };
  // A pin that is taken off the drawing is no longer pulled.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only at the end
  useEffect(() => drop, []);
  return {
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      const pull = event.button === 0 ? takeHold(field) : null;
      if (!pull) return;
      event.stopPropagation();
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = { pull, x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: PointerEvent<SVGGElement>) => {
      const now = held.current;
      if (!now) return;
      const spot = { x: event.clientX, y: event.clientY, fine: event.shiftKey };
      ask(() => toSpot(now, spot));
    },
    onPointerUp: () => {
      flush();
      if (held.current) letPinGo();
      held.current = null;
    },
    onPointerCancel: putBack,
    putBack,
  };
};

import { type PointerEvent, type RefObject, useEffect, useRef } from "react";
import type { Point } from "../../geometry/point.ts";
import { moveTable, zoomTable } from "../state/viewing.ts";

const WHEEL = 0.0022;
/** A pointer that moved less than this, in px, tapped. */
const TAP = 5;

type Held = { readonly from: Point; at: Point };

type Asked = {
  readonly onTap: (at: Point) => void;
  /** Given: the first pointer pulls; else it moves the table. */
  readonly onPull: ((from: Point, to: Point) => void) | null;
};

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

const useWheel = (board: RefObject<SVGSVGElement | null>): void => {
  useEffect(() => {
    const found = board.current;
    if (!found) return;
    // Listened to by hand: React's listener may not keep the page from scrolling.
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const box = found.getBoundingClientRect();
      if (event.ctrlKey || event.metaKey) {
        const by = Math.exp(-event.deltaY * WHEEL * 2);
        zoomTable(by, event.clientX - box.left, event.clientY - box.top);
      } else moveTable(-event.deltaX, -event.deltaY);
    };
    found.addEventListener("wheel", onWheel, { passive: false });
    return () => found.removeEventListener("wheel", onWheel);
  }, [board]);
};

const spotOf = (event: PointerEvent<SVGSVGElement>): Point => {
  const box = event.currentTarget.getBoundingClientRect();
  return { x: event.clientX - box.left, y: event.clientY - box.top };
};

/** A tap is a tap; one pointer moves the table or pulls; two move and zoom it; the wheel as well. */
export const usePointer = (board: RefObject<SVGSVGElement | null>, { onTap, onPull }: Asked) => {
  useWheel(board);
  const held = useRef(new Map<number, Held>());
  const wasTwo = useRef(false);
  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = spotOf(event);
    held.current.set(event.pointerId, { from: at, at });
    wasTwo.current = held.current.size > 1;
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    const one = held.current.get(event.pointerId);
    if (!one) return;
    const [was, now] = [one.at, spotOf(event)];
    const other = [...held.current.entries()].find(([id]) => id !== event.pointerId)?.[1].at;
    one.at = now;
    if (other) {
      const [a, b] = [middle(was, other), middle(now, other)];
      moveTable(b.x - a.x, b.y - a.y);
      zoomTable(apart(now, other) / Math.max(1, apart(was, other)), b.x, b.y);
    } else if (apart(one.from, now) < TAP && apart(one.from, was) < TAP) return;
    else if (onPull && event.buttons === 1 && !wasTwo.current) onPull(one.from, now);
    else moveTable(now.x - was.x, now.y - was.y);
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => {
    const one = held.current.get(event.pointerId);
    held.current.delete(event.pointerId);
    if (one && !wasTwo.current && apart(one.from, one.at) < TAP) onTap(one.from);
  };
  const onPointerCancel = (event: PointerEvent<SVGSVGElement>): void => {
    held.current.delete(event.pointerId);
  };
  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel };
};

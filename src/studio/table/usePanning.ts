import { type PointerEvent, type RefObject, useEffect, useRef } from "react";
import { moveTable, zoomTable } from "../state/viewing.ts";

type Spot = { readonly x: number; readonly y: number };
const WHEEL = 0.0022;

/** Wheel scrolls, with Ctrl it zooms at the pointer; listened to by hand, for React's is passive. */
const useWheel = (board: RefObject<SVGSVGElement | null>) => {
  useEffect(() => {
    const found = board.current;
    if (!found) return;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const box = found.getBoundingClientRect();
      if (event.ctrlKey || event.metaKey) {
        const by = Math.exp(-event.deltaY * WHEEL * 2);
        zoomTable(by, event.clientX - box.left, event.clientY - box.top);
      } else {
        moveTable(-event.deltaX, -event.deltaY);
      }
    };
    found.addEventListener("wheel", onWheel, { passive: false });
    return () => found.removeEventListener("wheel", onWheel);
  }, [board]);
};

const apart = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y);

/** Two fingers: their middle moves the table, their distance zooms it. */
const pinched = (before: readonly Spot[], after: readonly Spot[], box: DOMRect): void => {
  const [a, b] = before;
  const [c, d] = after;
  if (!a || !b || !c || !d) return;
  const mid = { x: (c.x + d.x) / 2, y: (c.y + d.y) / 2 };
  moveTable(mid.x - (a.x + b.x) / 2, mid.y - (a.y + b.y) / 2);
  zoomTable(apart(c, d) / Math.max(1, apart(a, b)), mid.x - box.left, mid.y - box.top);
};

/** One finger or the pointer on the bare table moves it; two fingers zoom. */
export const usePanning = (board: RefObject<SVGSVGElement | null>) => {
  useWheel(board);
  const held = useRef(new Map<number, Spot>());
  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const was = held.current.get(event.pointerId);
    if (!was) return;
    const before = [...held.current.values()];
    const now = { x: event.clientX, y: event.clientY };
    held.current.set(event.pointerId, now);
    if (before.length === 1) moveTable(now.x - was.x, now.y - was.y);
    else pinched(before, [...held.current.values()], event.currentTarget.getBoundingClientRect());
  };
  const letGo = (event: PointerEvent<SVGSVGElement>) => held.current.delete(event.pointerId);
  return { onPointerDown, onPointerMove, onPointerUp: letGo, onPointerCancel: letGo };
};

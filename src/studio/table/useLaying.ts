import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from "react";
import type { Piece } from "../../drafting/piece.ts";
import type { Placement } from "../../export/placement.ts";
import type { Sheets } from "../../export/sheets.ts";
import type { Box } from "../../geometry/outline.ts";
import type { Point } from "../../geometry/point.ts";
import { layPiece, letPieceGo, newHand, putPieceBack, takePiece } from "../state/layingPieces.ts";
import { put } from "../state/store.ts";
import { movedBy, placedBox, turnedAQuarter } from "./laying.ts";
import type { MapView } from "./sheetMap.ts";
import { useOncePerFrame } from "./useOncePerFrame.ts";

type Given = {
  readonly piece: Piece;
  readonly at: Placement;
  readonly sheets: Sheets;
  readonly view: MapView;
  /** Where a piece may lie. */
  readonly room: Box;
  /** A click that moved nothing. */
  readonly click: (event: PointerEvent<SVGGElement>) => void;
};

type Hold = {
  readonly x: number;
  readonly y: number;
  readonly at: Placement;
  readonly box: Box;
  readonly sheets: Sheets;
  readonly hand: string;
  moved: boolean;
};

/** Less than this is a click and no drag, in px. */
const STILL = 4;
/** How far an arrow moves a piece, and with Shift, in mm. */
const STEP = { plain: 10, fine: 1 } as const;
const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** A piece of the page map in the hand: dragged, or moved and turned by keys. */
export const useLaying = ({ piece, at, sheets, view, room, click }: Given) => {
  const hold = useRef<Hold | null>(null);
  const keyHand = useRef("");
  const { ask, flush, drop } = useOncePerFrame();
  const putBack = () => {
    drop();
    if (hold.current?.moved) putPieceBack(hold.current.hand);
    hold.current = null;
  };
  const follow = (held: Hold, x: number, y: number) => {
    const by = { x: (x - held.x) / view.scale, y: (y - held.y) / view.scale };
    layPiece(held.sheets, movedBy(held.at, held.box, by, room), held.hand);
  };
  // A piece that is taken off the map is no longer dragged.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only at the end
  useEffect(() => drop, []);
  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.key === "Escape") putBack();
    const way = WAYS[event.key];
    const isTurn = event.key.toLowerCase() === "r" && !event.ctrlKey && !event.metaKey;
    if (!way && !isTurn) return;
    event.preventDefault();
    const step = event.shiftKey ? STEP.fine : STEP.plain;
    const to = way
      ? movedBy(at, placedBox(piece, at), { x: way.x * step, y: way.y * step }, room)
      : turnedAQuarter(piece, at, room);
    layPiece(sheets, to, keyHand.current);
  };
  return {
    onKeyDown,
    onFocus: () => {
      keyHand.current = newHand();
      put({ heldPiece: piece.name });
    },
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const box = placedBox(piece, at);
      const { clientX: x, clientY: y } = event;
      hold.current = { x, y, at, box, sheets, hand: newHand(), moved: false };
    },
    onPointerMove: (event: PointerEvent<SVGGElement>) => {
      const held = hold.current;
      if (!held) return;
      const { clientX: x, clientY: y } = event;
      if (!held.moved && Math.hypot(x - held.x, y - held.y) < STILL) return;
      if (!held.moved) takePiece();
      held.moved = true;
      ask(() => follow(held, x, y));
    },
    onPointerUp: (event: PointerEvent<SVGGElement>) => {
      flush();
      if (hold.current?.moved) letPieceGo();
      else if (hold.current) click(event);
      hold.current = null;
    },
    onPointerCancel: putBack,
  };
};

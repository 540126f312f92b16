import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import { apart, minus, type Point, plus } from "../../geometry/point.ts";
import { dropOwnGesture } from "../ownBlock/state.ts";
import { arrowOf, type Steps } from "./arrows.ts";
import { type Fit, fromPx, toPx } from "./fit.ts";
import { newGesture } from "./piece.ts";

type Props = {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
  readonly fit: Fit;
  readonly steps: Steps;
  readonly isHeld: boolean;
  readonly onHold: () => void;
  readonly onMove: (to: Point, gesture: string) => void;
  /** Taken hold of and let go in one place, or Enter. */
  readonly onTap?: () => void;
  /** Another key; true where it was taken. */
  readonly onKey?: (key: string) => boolean;
  readonly children: ReactNode;
};

/** Less than this, in px, is no drag. */
const TREMBLE = 2;

const spotOf = (event: PointerEvent<SVGGElement>): Point => {
  const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
  return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
};

/** Something on a picture to be taken hold of: dragged, or moved by the arrow keys. */
export function Grip(props: Props) {
  const { id, label, at, fit, steps, isHeld, onHold, onMove, onTap, onKey, children } = props;
  const pull = useRef<{ readonly off: Point; readonly gesture: string; moved: boolean } | null>(
    null,
  );
  const nudge = useRef("");
  const { x, y } = toPx(fit, at);
  const onPointerDown = (event: PointerEvent<SVGGElement>): void => {
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    pull.current = {
      off: minus(toPx(fit, at), spotOf(event)),
      gesture: newGesture(id),
      moved: false,
    };
    event.currentTarget.focus();
    onHold();
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>): void => {
    if (!pull.current) return;
    event.stopPropagation();
    const to = plus(spotOf(event), pull.current.off);
    // A hand that only taps trembles a little: nothing is moved by that.
    if (!pull.current.moved && apart(to, toPx(fit, at)) < TREMBLE) return;
    pull.current.moved = true;
    onMove(fromPx(fit, to), pull.current.gesture);
  };
  const onPointerUp = (event: PointerEvent<SVGGElement>): void => {
    if (pull.current && !pull.current.moved) onTap?.();
    letGo(event);
  };
  const letGo = (event: PointerEvent<SVGGElement>): void => {
    event.stopPropagation();
    pull.current = null;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const by = arrowOf(event, steps);
    if (by) onMove(plus(at, by), nudge.current);
    else if (event.key === "Enter" && onTap) onTap();
    else if (event.key === "Escape" && pull.current) {
      dropOwnGesture(pull.current.gesture);
      pull.current = null;
    } else if (event.ctrlKey || event.metaKey || !onKey?.(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button of its own
    <g
      className={`grip${isHeld ? " held" : ""}`}
      tabIndex={0}
      role="button"
      aria-label={label}
      aria-pressed={isHeld}
      data-grip={id}
      transform={`translate(${x} ${y})`}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={letGo}
      onKeyDown={onKeyDown}
      onFocus={() => {
        nudge.current = newGesture(id);
        onHold();
      }}
    >
      <circle className="gripTarget" r="14" />
      {children}
    </g>
  );
}

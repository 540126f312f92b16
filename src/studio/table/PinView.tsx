import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { fieldOf } from "../fields/fields.ts";
import { labelOf } from "../state/changes.ts";
import { letPinGo, type Pull, pullTo, putPinBack, takeHold } from "../state/dragging.ts";
import { nudged } from "../state/nudge.ts";
import { printField, printValue, usePrint } from "../state/print.ts";
import { rangeNow } from "../state/refusing.ts";
import { put, useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { type Frame, px, toPx } from "./frame.ts";
import type { Pin } from "./pins.ts";

type Props = { readonly pin: Pin; readonly frame: Frame };

const SHAFT = 26;
const BY: Readonly<Record<string, 1 | -1>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  PageUp: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageDown: -1,
};

/** Pulling: the pointer's way along the shaft, turned into the number. */
const usePulling = ({ field, way, perMm }: Pin, scale: number) => {
  const pull = useRef<{ readonly pull: Pull; readonly x: number; readonly y: number } | null>(null);
  return {
    onPointerDown: (event: PointerEvent<SVGGElement>) => {
      const held = takeHold(field);
      if (!held || event.button !== 0) return;
      event.stopPropagation();
      event.currentTarget.setPointerCapture(event.pointerId);
      pull.current = { pull: held, x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: PointerEvent<SVGGElement>) => {
      const now = pull.current;
      if (!now) return;
      const along = (event.clientX - now.x) * way.x + (event.clientY - now.y) * way.y;
      pullTo(now.pull, (along / scale) * perMm, event.shiftKey);
    },
    onPointerUp: () => {
      if (pull.current) letPinGo();
      pull.current = null;
    },
    onPointerCancel: () => {
      if (pull.current) putPinBack(pull.current.pull);
      pull.current = null;
    },
    putBack: () => {
      if (pull.current) putPinBack(pull.current.pull);
      pull.current = null;
    },
  };
};

/** Beside the head of an upright pin, over a level one, and before a slanting one. */
const labelPlace = (way: Pin["way"], head: { x: number; y: number }, wide: number) => {
  const slant = Math.abs(way.x) > 0.3 && Math.abs(way.y) > 0.15;
  if (slant) return { x: head.x - wide - 12, y: head.y + 1 };
  if (Math.abs(way.y) > Math.abs(way.x)) return { x: head.x + 12, y: head.y + 5 };
  return { x: head.x - wide / 2, y: head.y - 13 };
};

let keyRuns = 0;

/** A dressmaker's pin: the red head is taken hold of, the shaft points the way it moves. */
export function PinView({ pin, frame }: Props) {
  const { field, at, way, head: lean } = pin;
  const say = useSay();
  const p = usePrint();
  const value = useStudio((s) => fieldOf(field).read(s.history.present)) ?? 0;
  const lit = useStudio((s) => s.lit === field);
  const { putBack, ...pulling } = usePulling(pin, frame.scale);
  const gesture = useRef("");
  const foot = toPx(frame, at);
  const head = { x: foot.x + lean.x * SHAFT, y: foot.y + lean.y * SHAFT };
  const { least, most } = rangeNow(field, work());
  const shown = printValue(field, value, p);
  const text =
    lit && value >= most
      ? say("table.most", { value: shown })
      : lit && value <= least
        ? say("table.least", { value: shown })
        : shown;
  const wide = text.length * 7.2;
  const upright = Math.abs(way.y) > Math.abs(way.x);
  const label = labelPlace(lean, head, wide);
  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    const by = BY[event.key];
    if (event.key === "Escape") putBack();
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const reach = event.key.startsWith("Page") ? "leap" : event.shiftKey ? "fine" : "step";
    nudged(field, by, reach, gesture.current);
  };
  return (
    <g
      className="pin"
      tabIndex={0}
      role="slider"
      aria-label={labelOf(field)}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={printField(field, value, p)}
      aria-orientation={upright ? "vertical" : "horizontal"}
      data-pin={field}
      {...pulling}
      onKeyDown={onKeyDown}
      onFocus={() => {
        gesture.current = `pin-${field}-${++keyRuns}`;
        put({ lit: field });
      }}
      onBlur={() => put({ lit: null })}
    >
      <path
        className="pinShaft"
        d={`M${px(foot.x - lean.x * 9)} ${px(foot.y - lean.y * 9)}L${px(head.x)} ${px(head.y)}`}
      />
      <circle className="ring" cx={px(head.x)} cy={px(head.y)} r="12" />
      <circle className="pinHead" cx={px(head.x)} cy={px(head.y)} r="6.5" />
      <circle className="pinGlint" cx={px(head.x - 2)} cy={px(head.y - 2)} r="1.6" />
      <circle className="pinTarget" cx={px(head.x)} cy={px(head.y)} r="16" />
      <text className="fig edit halo" x={px(label.x)} y={px(label.y)}>
        {text}
      </text>
      <path className="editLine" d={`M${px(label.x)} ${px(label.y + 4)}h${px(wide)}`} />
    </g>
  );
}

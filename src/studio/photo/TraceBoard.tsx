import { useEffect } from "react";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Point } from "../../geometry/point.ts";
import { type PenLine, type PenPoint, segmentsOf } from "../../trace/pen/pen.ts";
import { usePrint } from "../state/print.ts";
import { Board } from "./Board.tsx";
import { begin } from "./begin.ts";
import { eye, forPiece, look, type Tool, useEye } from "./eye.ts";
import { type Fit, toPx } from "./fit.ts";
import { Grip } from "./Grip.tsx";
import type { Table } from "./photoJobs.ts";
import { usePhotoSay } from "./photoSay.ts";
import { newGesture, pieceName, pieceNow, usePiece, usePieceName } from "./piece.ts";
import { placingKey } from "./placing.ts";
import { pointKey } from "./pointKeys.ts";
import {
  addPointNear,
  closeLine,
  drawPoint,
  followTo,
  insideOf,
  isClosing,
  layTable,
  moveHandle,
  movePoint,
} from "./traceActions.ts";

const STEPS = { plain: 0.5, shift: 0.1, ctrl: 10 };

type PointProps = {
  readonly pen: PenLine;
  readonly point: PenPoint;
  readonly i: number;
  readonly fit: Fit;
};

const tap = (tool: Tool, at: Point, reach: number): void => {
  const { pen } = pieceNow();
  if (tool === "inside") look({ inside: forPiece(eye().inside, pieceName(), at) });
  else if (tool === "mend") addPointNear(at, reach);
  else if (pen.isClosed) return;
  else if (isClosing(pen, at, reach)) {
    const [first] = pen.points;
    if (tool === "follow" && first) begin(followTo(first.at, true));
    else closeLine();
  } else if (tool === "follow") begin(followTo(at, false));
  else drawPoint(at, null, newGesture("draw"));
};

const SIDES = ["before", "after"] as const;

function Handles({ point, i, fit }: PointProps) {
  const say = usePhotoSay();
  const held = useEye((s) => s.held);
  const from = toPx(fit, point.at);
  return SIDES.map((side) => {
    const at = point[side];
    if (!at) return null;
    const id = `point.${i}.${side}`;
    const to = toPx(fit, at);
    return (
      <g key={side}>
        <path className="handleLine" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
        <Grip
          id={id}
          label={say(`photo.handle.${side}`, { n: i + 1 })}
          at={at}
          fit={fit}
          steps={STEPS}
          isHeld={held === id}
          onHold={() => look({ held: id })}
          onMove={(place, gesture) => moveHandle(i, side, place, gesture)}
        >
          <circle className="handleDot" r="4.5" />
        </Grip>
      </g>
    );
  });
}

function PointGrip({ pen, point, i, fit }: PointProps) {
  const say = usePhotoSay();
  const p = usePrint();
  const id = `point.${i}`;
  const isHeld = useEye((s) => s.held === id || Boolean(s.held?.startsWith(`${id}.`)));
  const tool = useEye((s) => s.tool);
  const closes = i === 0 && (tool === "draw" || tool === "follow") && isClosing(pen, point.at, 1);
  const kind = say(point.isCorner ? "photo.kind.corner" : "photo.kind.smooth");
  const label = say("photo.point", {
    n: i + 1,
    of: pen.points.length,
    kind,
    x: p.full(point.at.x),
    y: p.full(point.at.y),
  });
  return (
    <>
      <Grip
        id={id}
        label={label}
        at={point.at}
        fit={fit}
        steps={STEPS}
        isHeld={isHeld}
        onHold={() => look({ held: id })}
        onMove={(to, gesture) => movePoint(i, to, gesture)}
        onKey={(key) => pointKey(i, key)}
        {...(closes ? { onTap: () => tap(tool, point.at, 1) } : {})}
      >
        {point.isCorner ? (
          <rect className="penCorner" x="-5" y="-5" width="10" height="10" />
        ) : (
          <circle className="penSmooth" r="4.5" />
        )}
      </Grip>
      {isHeld ? <Handles pen={pen} point={point} i={i} fit={fit} /> : null}
    </>
  );
}

function Line({ pen, fit }: { readonly pen: PenLine; readonly fit: Fit }) {
  const segments = segmentsOf(pen);
  if (segments.length === 0) return null;
  const data = toPathData(pathOf(segments));
  const place = `translate(${fit.x} ${fit.y}) scale(${fit.scale})`;
  return (
    <g transform={place}>
      <path className="traceHalo" d={data} />
      <path className="traceLine" d={data} />
    </g>
  );
}

function Inside({ table, fit }: { readonly table: Table; readonly fit: Fit }) {
  const { x, y } = toPx(fit, insideOf(table));
  return (
    <g className="insideSpot" transform={`translate(${x} ${y})`}>
      <circle r="11" />
      <path d="M-5 0h10M0 -5v10" />
    </g>
  );
}

let pulling = { from: "", gesture: "" };

/** A pull from where a point was set bends the line through it; all of it is one step. */
const pull = (from: Point, to: Point): void => {
  const key = `${from.x},${from.y}`;
  if (pulling.from !== key) pulling = { from: key, gesture: newGesture("pull") };
  drawPoint(from, to, pulling.gesture);
};

function Shown({ table }: { readonly table: Table }) {
  const say = usePhotoSay();
  const { pen } = usePiece();
  const tool = useEye((s) => s.tool);
  useEye((s) => s.inside);
  const { left, top, step, width, height } = table.window;
  const isTracing = tool === "inside" || tool === "mend" || tool === "draw" || tool === "follow";
  const isDrawing = tool === "draw" && !pen.isClosed;
  return (
    <Board
      label={say("photo.table")}
      bitmap={table.preview}
      box={{ left, top, right: left + width * step, bottom: top + height * step }}
      isFaint
      hint={isTracing ? say(`photo.hint.${tool}`) : ""}
      onTap={(at, reach) => tap(tool, at, reach)}
      {...(isDrawing ? { onPull: pull } : {})}
    >
      {(fit) => (
        <>
          <Line pen={pen} fit={fit} />
          {tool === "inside" ? <Inside table={table} fit={fit} /> : null}
          {pen.points.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a point has no name but its place in order
            <PointGrip key={i} pen={pen} point={point} i={i} fit={fit} />
          ))}
        </>
      )}
    </Board>
  );
}

/** The table from above at half strength, and the line traced over it. */
export function TraceBoard() {
  const name = usePieceName();
  const key = placingKey(usePiece());
  const known = useEye((s) => s.tables[name]);
  const isKnown = known?.key === key;
  useEffect(() => {
    if (!isKnown) begin(layTable());
  }, [isKnown]);
  if (!known || !isKnown) return <section className="table photoBoard" aria-hidden="true" />;
  return <Shown table={known.is} />;
}

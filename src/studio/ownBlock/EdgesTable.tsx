import { type KeyboardEvent, type MouseEvent, type PointerEvent, useRef } from "react";
import { lengthOf } from "../../geometry/length.ts";
import { nearestOnPath } from "../../geometry/nearest.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { joined, pathOf, startOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import { useSay } from "../words/say.ts";
import { addCorner, beginEdgeAt, moveCorner, NO_NAMING } from "./edgeChanges.ts";
import { edgeWord } from "./edgeWord.ts";
import { edgesOf, ringOf } from "./naming.ts";
import { type Fit, OwnTable } from "./OwnTable.tsx";
import type { Brought, OwnPiece } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { dropOwnGesture, useOwn } from "./state.ts";

type Props = { readonly piece: OwnPiece; readonly brought: Brought };
type Here = Props & { readonly fit: Fit; readonly ring: CornerRing };

/** A hand that moved less than this, in px, clicked. */
const CLICKED = 4;
const WORD_OUT = 16;

let gestures = 0;

/** Where the pointer is, in mm of the drawing. */
const pointed = (event: PointerEvent | MouseEvent, { x, y, scale }: Fit): Point => {
  const table = event.currentTarget.closest("svg.draw")?.getBoundingClientRect();
  return {
    x: (event.clientX - (table?.left ?? 0) - x) / scale,
    y: (event.clientY - (table?.top ?? 0) - y) / scale,
  };
};

type CornerProps = Here & { readonly at: number };

/** The edge in hand begins at this corner. */
const beginHere = ({ piece, brought, at }: CornerProps, lit: string | null, name: string): void => {
  const edge = edgesOf(piece, brought.naming?.isWhole ?? false).indexOf(lit ?? "");
  if (edge >= 0) beginEdgeAt(piece, brought, edge, at, name);
};

/** A corner: clicked, the edge in hand begins there; dragged or moved by arrows, it goes along. */
function Corner(props: CornerProps) {
  const { piece, brought, ring, fit, at } = props;
  const say = useOwnSay();
  const lit = useOwn((s) => s.lit);
  const hold = useRef<{ x: number; y: number; gesture: string; moved: boolean } | null>(null);
  const keys = useRef("");
  const run = ring[at];
  const before = ring[(at - 1 + ring.length) % ring.length];
  if (!run || !before) return null;
  const p = startOf(run);
  const onPointerMove = (event: PointerEvent) => {
    const { current } = hold;
    if (!current) return;
    const far = Math.hypot(event.clientX - current.x, event.clientY - current.y);
    if (far > CLICKED) current.moved = true;
    if (!current.moved) return;
    const { along } = nearestOnPath(joined(before, run), pointed(event, fit));
    const by = along - lengthOf(before);
    moveCorner(piece, brought, at, by, say("own.step.moveCorner"), current.gesture);
  };
  const letGo = () => {
    if (hold.current && !hold.current.moved) beginHere(props, lit, say("own.step.corner"));
    hold.current = null;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape" && hold.current) {
      dropOwnGesture(hold.current.gesture);
      hold.current = null;
    }
    if (event.key === "Enter") {
      event.preventDefault();
      beginHere(props, lit, say("own.step.corner"));
    }
    const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    if (keys.current === "") keys.current = `corner-keys-${++gestures}`;
    const far = event.shiftKey ? 0.1 * by : by;
    moveCorner(piece, brought, at, far, say("own.step.moveCorner"), keys.current);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button does not go into a drawing
    <g
      className="cornerMark"
      role="button"
      tabIndex={0}
      data-corner={at + 1}
      aria-label={say("own.corner.mark", { corner: at + 1 })}
      transform={`translate(${fit.x + p.x * fit.scale} ${fit.y + p.y * fit.scale})`}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        hold.current = {
          x: event.clientX,
          y: event.clientY,
          gesture: `corner-${++gestures}`,
          moved: false,
        };
      }}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onKeyDown={onKeyDown}
      onBlur={() => {
        keys.current = "";
      }}
    >
      <circle className="pinTarget" r="14" />
      <circle className="cornerDot" r="9" />
      <text className="cornerNo" textAnchor="middle" y="4.5">
        {at + 1}
      </text>
    </g>
  );
}

/** Outside the middle of an edge, in px. */
const wordPlace = (path: Path, fit: Fit): Point => {
  const half = lengthOf(path) / 2;
  const [p, q] = [pointAlong(path, half - 0.5), pointAlong(path, half + 0.5)];
  const size = Math.hypot(q.x - p.x, q.y - p.y) || 1;
  const at = pointAlong(path, half);
  return {
    x: fit.x + at.x * fit.scale + (WORD_OUT * (q.y - p.y)) / size,
    y: fit.y + at.y * fit.scale - (WORD_OUT * (q.x - p.x)) / size,
  };
};

/** The runs from one edge's corner to the next, as one line each. */
const edgePaths = (ring: CornerRing, corners: readonly number[]): readonly (Path | null)[] =>
  corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from;
    const count = (to - from + ring.length) % ring.length || ring.length;
    const runs = Array.from({ length: count }, (_, k) => ring[(from + k) % ring.length]);
    const [first, ...more] = runs.filter((run) => run !== undefined);
    return first ? joined(first, ...more) : null;
  });

function EdgeWords({ piece, brought, ring, fit }: Here) {
  const say = useOwnSay();
  const studioSay = useSay();
  const lit = useOwn((s) => s.lit);
  const { isWhole, corners } = brought.naming ?? NO_NAMING;
  const paths = edgePaths(ring, corners);
  return edgesOf(piece, isWhole).map((edge, i) => {
    const path = paths[i];
    if (!path) return null;
    const at = wordPlace(path, fit);
    const anchor =
      at.x < fit.x + pointAlong(path, lengthOf(path) / 2).x * fit.scale - 6 ? "end" : "start";
    return (
      <g key={edge}>
        {lit === edge ? (
          <g transform={`translate(${fit.x} ${fit.y}) scale(${fit.scale})`}>
            <path className="seam lit" d={toPathData(path)} />
          </g>
        ) : null}
        <text
          className={`figSeam halo${lit === edge ? " edit" : ""}`}
          x={at.x}
          y={at.y + 4}
          textAnchor={
            Math.abs(at.y - (fit.y + pointAlong(path, lengthOf(path) / 2).y * fit.scale)) > 10
              ? "middle"
              : anchor
          }
        >
          {edgeWord(edge, studioSay, say)}
        </text>
      </g>
    );
  });
}

/** A run of the outline; a double click sets a corner on it. */
function Run({ run, at, ...here }: Here & { readonly run: Path; readonly at: number }) {
  const say = useOwnSay();
  const d = toPathData(run);
  return (
    <>
      <path className="cut" d={d} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: by keys, the page's button parts an edge */}
      <path
        className="reach"
        d={d}
        onDoubleClick={(event) => {
          const { along } = nearestOnPath(run, pointed(event, here.fit));
          addCorner(here.piece, here.brought, at, along, say("own.step.addCorner"));
        }}
      />
    </>
  );
}

/** The piece in hand, its corners numbered and its edges named. */
export function EdgesTable({ piece, brought }: Props) {
  const say = useOwnSay();
  const ring = ringOf(brought.runs, brought.naming?.isTurnedOver ?? false);
  const [first, ...more] = ring;
  const whole = first ? joined(first, ...more) : null;
  return (
    <OwnTable box={whole && boundsOf(whole)} empty={say("own.empty")}>
      {(fit) => {
        const here = { piece, brought, ring, fit };
        return (
          <>
            <g transform={`translate(${fit.x} ${fit.y}) scale(${fit.scale})`}>
              {whole ? <path className="piece" d={`${toPathData(pathOf(whole))}Z`} /> : null}
              {ring.map((run, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a run is known by its place
                <Run key={i} run={run} at={i} {...here} />
              ))}
            </g>
            <EdgeWords {...here} />
            {ring.map((_, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its place
              <Corner key={i} at={i} {...here} />
            ))}
          </>
        );
      }}
    </OwnTable>
  );
}

import type { KeyboardEvent } from "react";
import { type Box, boundsOf } from "../../geometry/outline.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Shape } from "../../trace/edges/sortDrawing.ts";
import { nameClass } from "./BlockPieces.tsx";
import { choiceOf, shapeInHand, sortedOf } from "./drawing.ts";
import { type Fit, OwnTable } from "./OwnTable.tsx";
import { type Drawing, OWN_PIECES } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { putOwn, useOwn } from "./state.ts";

const roundAll = (paths: readonly Path[]): Box | null => {
  if (paths.length === 0) return null;
  const boxes = paths.map(boundsOf);
  return {
    left: Math.min(...boxes.map((b) => b.left)),
    top: Math.min(...boxes.map((b) => b.top)),
    right: Math.max(...boxes.map((b) => b.right)),
    bottom: Math.max(...boxes.map((b) => b.bottom)),
  };
};

const take = (at: number): void => putOwn({ lit: `shape.${at}` });

/** Arrow keys go from line to line; Enter goes to the list that says what it is. */
const onKey = (event: KeyboardEvent, lit: number, count: number): void => {
  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (by !== undefined && count > 0) {
    event.preventDefault();
    take(Number.isNaN(lit) ? 0 : (lit + by + count) % count);
  }
  if (event.key === "Enter") {
    event.preventDefault();
    document.querySelector<HTMLElement>('[data-choice="inHand"]')?.focus();
  }
};

type LineProps = { readonly shape: Shape; readonly at: number; readonly of: string | null };

/** One line of the drawing: it may be clicked, and is drawn heavy where it is a piece or an edge. */
function Line({ shape, at, of }: LineProps) {
  const lit = useOwn((s) => s.lit === `shape.${at}`);
  const d = toPathData(shape.path);
  return (
    <g data-shape={at}>
      <path className={`seam${of ? " wide" : ""}${lit ? " lit" : ""}`} d={d} />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the group takes keys, this the pointer */}
      <path className="reach" d={d} onClick={() => take(at)} />
    </g>
  );
}

type WordProps = {
  readonly shape: Shape;
  readonly text: string;
  readonly fit: Fit;
  readonly isPiece: boolean;
};

/** The name of what a line is, or its number while it is in hand, at its middle. */
function LineWord({ shape, text, fit, isPiece }: WordProps) {
  const box = boundsOf(shape.path);
  const { left, top, right, bottom } = box;
  const at = isPiece
    ? { x: (left + right) / 2, y: (top + bottom) / 2 }
    : pointAlong(shape.path, shape.length / 2);
  return (
    <text
      className={isPiece ? nameClass(box, fit) : "figSeam halo"}
      x={fit.x + at.x * fit.scale}
      y={fit.y + at.y * fit.scale}
      textAnchor="middle"
    >
      {text}
    </text>
  );
}

/** All lines of the drawing, to be said what they are. */
export function DrawingTable({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  const litKey = useOwn((s) => s.lit);
  const { shapes, edges } = sortedOf(drawing);
  const lit = shapeInHand(litKey);
  const named = [...edges.values()];
  const isWhole = (at: number): boolean =>
    OWN_PIECES.some((name) => choiceOf(drawing, name) === at);
  const pieceOf = (at: number): string | null => {
    const piece = OWN_PIECES.find((name) => choiceOf(drawing, name) === at);
    const isEdge = Object.entries(drawing.byHand).some(
      ([key, on]) => key.includes(".") && on === at,
    );
    return piece ? say(`own.piece.${piece}`) : isEdge ? say("own.line.isEdge") : null;
  };
  return (
    <OwnTable
      box={roundAll([...shapes.map(({ path }) => path), ...named])}
      empty={say("own.empty")}
    >
      {(fit) => (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset does not go into a drawing
        // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of a drawing is no control
        <g
          role="group"
          tabIndex={0}
          aria-label={say("own.lines", { count: shapes.length })}
          className="drawnLines"
          onKeyDown={(event) => onKey(event, lit, shapes.length)}
        >
          <g transform={`translate(${fit.x} ${fit.y}) scale(${fit.scale})`}>
            {named.map((path) => (
              <path key={toPathData(path)} className="seam wide" d={toPathData(path)} />
            ))}
            {shapes.map((shape, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
              <Line key={i} shape={shape} at={i} of={pieceOf(i)} />
            ))}
          </g>
          {shapes.map((shape, i) => {
            const text = pieceOf(i) ?? (i === lit ? String(i + 1) : null);
            return text === null ? null : (
              // biome-ignore lint/suspicious/noArrayIndexKey: a line is known by its place
              <LineWord key={i} shape={shape} text={text} fit={fit} isPiece={isWhole(i)} />
            );
          })}
        </g>
      )}
    </OwnTable>
  );
}

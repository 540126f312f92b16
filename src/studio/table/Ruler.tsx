import { useState } from "react";
import type { Piece } from "../../drafting/piece.ts";
import type { Print } from "../state/print.ts";
import type { Say } from "../words/say.ts";
import { edgeWord } from "./edgeWord.ts";
import { type Frame, px, toPx } from "./frame.ts";
import { type Mark, markAt, measured } from "./measuring.ts";

type Props = {
  readonly held: readonly { readonly piece: Piece; readonly frame: Frame }[];
  readonly say: Say;
  readonly print: Print;
};

/** Measures between two places that are pointed at, straight and along a seam. */
export function Ruler({ held, say, print }: Props) {
  const [marks, setMarks] = useState<readonly Mark[]>([]);
  const [from, to] = marks;
  const frameOf = (mark: Mark | undefined) =>
    held.find(({ piece }) => piece.name === mark?.piece)?.frame;
  const shown = marks.flatMap((mark) => {
    const frame = frameOf(mark);
    return frame ? [toPx(frame, mark.at)] : [];
  });
  const result = from && to ? measured(from, to) : null;
  const text = result
    ? result.along
      ? say("table.measuredAlong", {
          length: print.full(result.along.length),
          edge: edgeWord(result.along.edge, say),
          straight: print.full(result.straight),
        })
      : say("table.measured", { length: print.full(result.straight) })
    : say("table.measureHint");
  const [a, b] = shown;
  return (
    <g>
      <rect
        width="100%"
        height="100%"
        fill="transparent"
        data-ruler
        onPointerDown={(event) => {
          event.stopPropagation();
          const box = event.currentTarget.getBoundingClientRect();
          const at = { x: event.clientX - box.left, y: event.clientY - box.top };
          const mark = markAt(held, at);
          if (mark) setMarks(marks.length === 1 ? [...marks, mark] : [mark]);
        }}
      />
      {a && b ? (
        <path className="ruler" d={`M${px(a.x)} ${px(a.y)}L${px(b.x)} ${px(b.y)}`} />
      ) : null}
      {shown.map(({ x, y }) => (
        <circle key={`${x} ${y}`} className="rulerDot" cx={x} cy={y} r="4" />
      ))}
      <text
        className="fig halo"
        x={a && b ? (a.x + b.x) / 2 : 24}
        y={a && b ? (a.y + b.y) / 2 - 10 : 28}
        textAnchor={a && b ? "middle" : "start"}
        data-measured
      >
        {text}
      </text>
    </g>
  );
}

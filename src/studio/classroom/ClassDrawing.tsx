import { useMemo } from "react";
import { toPathData } from "../../geometry/pathData.ts";
import type { LessonStep } from "../../guide/lesson/step.ts";
import { tell } from "../../guide/words/tell.ts";
import type { Size } from "../table/view.ts";
import { useSay } from "../words/say.ts";
import {
  type ClassLayout,
  type ClassLine,
  classLayout,
  linesOf,
  nameSpot,
  numberSpot,
  pathAt,
  toldNumbers,
} from "./classLayout.ts";
import { useClassVoice } from "./classVoice.ts";
import { useShare } from "./useShare.ts";

type Props = {
  readonly step: LessonStep;
  readonly plays: number;
  readonly numbers: boolean;
  readonly size: Size;
};

/** Room about the drawing for its numbers, and the letters of these, in px. */
const MARGIN = 38;
const LETTERS = 20;

type PieceProps = {
  readonly placed: ClassLayout["placed"][number];
  readonly scale: number;
  readonly share: number;
};

/** The fold lies over what runs along it: an old line, or the line to cut. */
const isFold = ({ name, kind }: ClassLine): boolean => name === "centre" && kind !== "old";

function PieceLines({ placed, scale, share }: PieceProps) {
  const say = useSay();
  const lines = useMemo(() => linesOf(placed), [placed]);
  const folds = lines.filter(isFold);
  const { piece, x, y } = placed;
  const name = nameSpot(placed, scale);
  const wide = lines.some((line) => line.name === "cutLine");
  return (
    <>
      <text className="classPiece" textAnchor="middle" x={name.x} y={name.y}>
        {say(`piece.${piece}`)}
      </text>
      <g transform={`translate(${x} ${y}) scale(${scale})`}>
        {lines
          .filter((line) => !isFold(line))
          .map((line) => (
            <path
              key={`${line.kind} ${line.name}`}
              className={`cl-${line.kind}${wide ? (line.name === "cutLine" ? " cl-cut" : " cl-thin") : ""}`}
              opacity={line.kind === "new" ? share : undefined}
              d={toPathData(pathAt(line, share))}
            />
          ))}
        {folds.map((line) => (
          <g key={line.kind}>
            <path className="cl-under" d={toPathData(pathAt(line, share))} />
            <path className="cl-fold" d={toPathData(pathAt(line, share))} />
          </g>
        ))}
      </g>
    </>
  );
}

function Numbers({ step, layout }: { readonly step: LessonStep; readonly layout: ClassLayout }) {
  const voice = useClassVoice();
  return toldNumbers(step.numbers).map((number) => {
    const placed = layout.placed.find(({ piece }) => piece === number.piece);
    if (!placed) return null;
    const text = voice.length(number.value, 1);
    const { x, y, turn } = numberSpot(number, placed, layout.scale);
    return (
      <text
        key={`${number.piece} ${number.edge}`}
        className="classNumber halo"
        textAnchor="middle"
        fontSize={LETTERS}
        transform={`translate(${x} ${y}) rotate(${turn})`}
        dy={LETTERS * 0.35}
      >
        {text}
      </text>
    );
  });
}

/** The pieces that a step changes: the old line dashed, the new moving out of it. */
export function ClassDrawing({ step, plays, numbers, size }: Props) {
  const say = useSay();
  const voice = useClassVoice();
  const share = useShare(`${step.id} ${plays}`);
  const layout = useMemo(
    () => classLayout(step, { width: size.width - 2 * MARGIN, height: size.height - 2 * MARGIN }),
    [step, size],
  );
  return (
    <svg
      className="draw classDrawing"
      role="img"
      aria-label={say("class.drawing", { title: tell(voice, step.title) })}
      data-share={share}
    >
      <g transform={`translate(${MARGIN} ${MARGIN})`}>
        {layout.placed.map((placed) => (
          <PieceLines key={placed.piece} placed={placed} scale={layout.scale} share={share} />
        ))}
        {numbers ? <Numbers step={step} layout={layout} /> : null}
      </g>
    </svg>
  );
}

import {
  FIGURE_HIGH,
  FIGURE_LINES,
  FIGURE_WIDE,
  type FigureId,
  type FigureLine,
  type FigureSide,
  HALF_OUTLINE,
} from "../data/figure.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { NARROW } from "./chapterPieces.ts";
import { Ground } from "./Ground.tsx";
import type { Size } from "./view.ts";

const SIDES: readonly FigureSide[] = ["front", "back"];
const MARGIN = { wide: 52, narrow: 26 } as const;
/** Room for a name beside the figure, in px. */
const NAMES = 128;

type Place = { readonly x: number; readonly y: number; readonly scale: number };

/** The name beside the figure, with a fine line to where the tape lies. */
function Name({ line, place, lit }: { line: FigureLine; place: Place; lit: boolean }) {
  const say = useSay();
  if (!line.from || !line.label) return null;
  const { to, y } = line.label;
  const sign = to === "left" ? -1 : 1;
  const end = place.x + sign * (FIGURE_WIDE / 2 + 42) * place.scale;
  const [fromX, fromY] = [place.x + line.from.x * place.scale, place.y + line.from.y * place.scale];
  const level = place.y + y * place.scale;
  return (
    <>
      <path className="figureLead" d={`M${fromX} ${fromY}L${end} ${level}`} />
      <text
        className={`${lit ? "pieceName" : "figSeam"} halo`}
        textAnchor={to === "left" ? "end" : "start"}
        x={end + sign * 6}
        y={level + 4}
      >
        {say(`name.${line.id}`)}
      </text>
    </>
  );
}

/** Points at the number of a measure, and to it when it is pressed. */
const handsOf = (id: FigureId) => ({
  onPointerEnter: () => put({ lit: `measures.${id}` }),
  onPointerLeave: () => put({ lit: null }),
  onClick: () => document.querySelector<HTMLElement>(`main [data-field="measures.${id}"]`)?.focus(),
});

type SideProps = { readonly side: FigureSide; readonly place: Place; readonly named: boolean };

function Side({ side, place, named }: SideProps) {
  const say = useSay();
  const lit = useStudio((s) => s.lit);
  const isLit = ({ id }: FigureLine) => lit === `measures.${id}`;
  const lines = FIGURE_LINES.filter((line) => line.side === side);
  const frame = `translate(${place.x} ${place.y}) scale(${place.scale})`;
  return (
    <g data-figure={side}>
      <g transform={frame}>
        <path className="figureBody" d={HALF_OUTLINE} />
        <path className="figureBody" d={HALF_OUTLINE} transform="scale(-1 1)" />
      </g>
      {lines.map((line) => (
        <g
          key={line.id}
          className={isLit(line) ? "lit" : ""}
          data-taken={line.id}
          {...handsOf(line.id)}
        >
          <path className="figureTape" d={line.path} transform={frame} />
          {named || isLit(line) ? <Name line={line} place={place} lit={isLit(line)} /> : null}
        </g>
      ))}
      <text
        className="label"
        textAnchor="middle"
        x={place.x}
        y={place.y + FIGURE_HIGH * place.scale + 20}
      >
        {say(`measures.side.${side}`)}
      </text>
    </g>
  );
}

/** A plain figure, front and back, with a tape where each measure is taken. */
export function Figure({ size }: { readonly size: Size }) {
  const say = useSay();
  const { unit } = usePrint();
  const narrow = size.width < NARROW;
  const margin = narrow ? MARGIN.narrow : MARGIN.wide;
  const beside = narrow ? 0 : NAMES;
  const half = size.width / 2;
  const scale = Math.min(
    (size.height - 2 * margin) / FIGURE_HIGH,
    (half - 2 * beside) / (FIGURE_WIDE + 84),
  );
  const y = (size.height - FIGURE_HIGH * scale) / 2 - 6;
  return (
    <svg className="draw" role="img" aria-label={say("measures.figure")}>
      <Ground scale={0.5} view={null} unit={unit} />
      {SIDES.map((side, i) => (
        <Side key={side} side={side} named={!narrow} place={{ x: half * (i + 0.5), y, scale }} />
      ))}
    </svg>
  );
}

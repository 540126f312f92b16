import type { Piece } from "../../drafting/piece.ts";
import { isBand } from "../../export/pieceLines.ts";
import type { Print } from "../state/print.ts";
import type { WordKey } from "../words/en.ts";
import type { Say } from "../words/say.ts";
import { Dimension } from "./Dimension.tsx";
import { type Frame, standing, toPx } from "./frame.ts";
import { cutBox, edgeFigure, foldMark, grainMark, sewBox } from "./marks.ts";
import { Unread } from "./Unread.tsx";

type Props = {
  readonly piece: Piece;
  readonly frame: Frame;
  readonly turnings: boolean;
  readonly dimensions: boolean;
  /** The lowest of the old lines, which figures stand clear of. */
  readonly low: number;
  readonly say: Say;
  readonly print: Print;
};

const MEASURED: readonly string[] = [
  "raglan",
  "side",
  "raglanFront",
  "raglanBack",
  "underarmFront",
  "underarmBack",
];
/** The turning is not more than this on most pieces; figures stand clear of it. */
const TURNING = 9.525;

export const cutWords = ({ cut, onFold }: Piece): WordKey => {
  if (onFold !== null) return "cut.fold";
  return cut > 1 ? "cut.pair" : "cut.one";
};

const LONG_LINE = 12;
/** What to cut is written where there is room for it beside the grain, in px. */
const ROOM_FOR_SUB = 92;
const ROOM_FOR_SIDES = 110;

/** A long line broken at the blank nearest its middle. */
const twoLines = (text: string): readonly string[] => {
  const blank = text.indexOf(" ", text.length / 2 - 3);
  if (text.length <= LONG_LINE || blank < 0) return [text];
  return [text.slice(0, blank), text.slice(blank + 1)];
};

/** The name of a body piece stands in it; that of a small one above it. */
function PieceName({ piece, frame, say }: Props) {
  const name = say(`piece.${piece.name}`);
  const box = cutBox(piece);
  const sub = say(cutWords(piece));
  if (isBand(piece) || piece.name === "vInsert") {
    const { x, y } = toPx(frame, { x: box.left, y: box.top });
    return (
      <g transform={standing(x, y - 10)}>
        <text className="halo">
          <tspan className="pieceName">{name}</tspan>
          <tspan className="pieceSub" dx="10">
            {sub}
          </tspan>
        </text>
      </g>
    );
  }
  const { from, to } = piece.grain;
  const middle = {
    x: Math.max(from.x, to.x),
    y: from.y + (to.y - from.y) * (piece.name === "sleeve" ? 0.62 : 0.45),
  };
  const { x, y } = toPx(frame, middle);
  const room = (box.right - middle.x) * frame.scale;
  return (
    <g transform={standing(x + 14, y)}>
      <text className="pieceName haloP">{name}</text>
      {(room > ROOM_FOR_SUB ? twoLines(sub) : []).map((line, i) => (
        <text key={line} className="pieceSub haloP" y={19 + i * 17}>
          {line}
        </text>
      ))}
    </g>
  );
}

function Figures({ piece, frame, turnings, print }: Props) {
  return piece.edges
    .filter(({ name }) => MEASURED.includes(name))
    .map((edge) => {
      const { x, y, turn } = edgeFigure(edge, frame, turnings ? TURNING : 0);
      return (
        <g key={edge.name} transform={standing(x, y + 4, turn)}>
          <text
            className="figSeam halo"
            textAnchor="middle"
            data-figure={`${piece.name}.${edge.name}`}
          >
            {print.length(edge.length)}
          </text>
        </g>
      );
    });
}

/** Overall length and width outside the piece; bands by what is cut, the others by what is sewn. */
function Overall({ piece, frame, print, turnings, low: oldLow }: Props) {
  if (piece.name === "vInsert") return null;
  const band = isBand(piece);
  const box = band ? cutBox(piece) : sewBox(piece);
  const outer = turnings ? cutBox(piece) : box;
  const hem = piece.name === "sleeve" ? "wrist" : "hem";
  const low = band ? null : piece.edges.find(({ name }) => name === hem);
  const ends = low ? [low.path[0].start.x, low.path.at(-1)?.end.x ?? 0] : [box.left, box.right];
  const [left, right] = [Math.min(...ends), Math.max(...ends)];
  const at = (x: number, y: number) => toPx(frame, { x, y });
  const below = at(0, Math.max(outer.bottom, oldLow)).y + 26;
  const tall = band || piece.name === "front";
  const side = at(outer.left, 0).x - 24;
  return (
    <>
      <Dimension
        from={{ x: at(left, 0).x, y: below }}
        to={{ x: at(right, 0).x, y: below }}
        text={print.length(right - left)}
      />
      {tall ? (
        <Dimension
          from={{ x: side, y: at(0, box.bottom).y }}
          to={{ x: side, y: at(0, box.top).y }}
          text={print.length(box.bottom - box.top)}
        />
      ) : null}
    </>
  );
}

function SleeveSides({ piece, frame, say }: Props) {
  const box = sewBox(piece);
  const y = toPx(frame, { x: 0, y: 0 }).y + 24;
  if (box.right * frame.scale < ROOM_FOR_SIDES) return null;
  return (["back", "front"] as const).map((side) => {
    const x = toPx(frame, { x: (side === "back" ? box.left : box.right) * 0.6, y: 0 }).x;
    return (
      <g key={side} transform={standing(x, y)}>
        <text className="label" textAnchor="middle">
          {say(`table.${side}`)}
        </text>
      </g>
    );
  });
}

/** What is written on and round a piece. Lettering keeps its size at every zoom. */
export function PieceMarks(props: Props) {
  const { piece, frame, dimensions, say } = props;
  const fold = piece.onFold === null ? null : foldMark(piece, frame);
  return (
    <Unread>
      {isBand(piece) || piece.name === "vInsert" ? null : (
        <path className="grain" d={grainMark(piece, frame)} />
      )}
      {fold ? (
        <>
          <path className="grain" d={fold.path} />
          <g transform={standing(fold.x, fold.y, -90)}>
            <text className="label" textAnchor="middle">
              {say("table.fold")}
            </text>
          </g>
        </>
      ) : null}
      {piece.name === "sleeve" ? <SleeveSides {...props} /> : null}
      <PieceName {...props} />
      {dimensions ? <Figures {...props} /> : null}
      {dimensions ? <Overall {...props} /> : null}
    </Unread>
  );
}

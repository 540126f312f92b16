import type { Piece } from "../../drafting/piece.ts";
import { isBand, pieceLines, type Stroke } from "../../export/pieceLines.ts";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import { useStill } from "../state/useStill.ts";
import type { Frame } from "./frame.ts";
import { type Place, place } from "./lines.ts";
import { Reaches } from "./Reaches.tsx";

type Props = {
  readonly piece: Piece;
  readonly frame: Frame;
  readonly old: readonly Path[];
  readonly turnings: boolean;
  readonly lit: readonly Place[];
  readonly partners: readonly string[];
  readonly checked: readonly Place[];
  readonly hover: (at: Place | null) => void;
};

const seamClass = (at: Place, { turnings, lit, partners, checked }: Props): string =>
  [
    "seam",
    turnings ? "" : "wide",
    lit.includes(at) ? "lit" : "",
    partners.includes(at) ? "partner" : "",
    checked.includes(at) ? "checked" : "",
  ].join(" ");

/** The lines drawn besides edges, all of a kind as one: there are many notches. */
const DRAWN = ["cut", "crease", "notch"] as const;

const dataOf = ({ path, closed }: Stroke): string => `${toPathData(path)}${closed ? "Z" : ""}`;

/** Every line of one piece, in its own millimetres; only strokes keep their width on the screen. */
export function PieceLines(props: Props) {
  const { piece, frame, old, turnings, hover } = props;
  const strokes = pieceLines(piece);
  const sewn = pathOf(piece.edges.flatMap(({ path }) => path));
  const shape = toPathData(turnings ? piece.cutLine : sewn);
  // Left alone while a pin is pulled: nothing else is pointed at meanwhile.
  const still = useStill(piece);
  return (
    <g transform={`translate(${frame.x} ${frame.y}) scale(${frame.scale})`}>
      <path className="piece" d={`${shape}Z`} />
      {isBand(piece) ? <path d={`${toPathData(sewn)}Z`} fill="url(#ribLines)" /> : null}
      {old.length > 0 ? <path className="old" d={old.map(toPathData).join("")} /> : null}
      {piece.edges.map(({ name, path }) => {
        const at = place(piece.name, name);
        const d = toPathData(path);
        return name === piece.onFold ? (
          <path key={name} className="fold" d={d} />
        ) : (
          <path key={name} className={seamClass(at, props)} d={d} data-edge={at} />
        );
      })}
      <Reaches piece={still} hover={hover} />
      {DRAWN.filter((kind) => kind !== "cut" || turnings).map((kind) => {
        const d = strokes.filter((stroke) => stroke.kind === kind).map(dataOf);
        return d.length === 0 ? null : (
          <path key={kind} className={kind === "crease" ? "fold" : kind} d={d.join("")} />
        );
      })}
    </g>
  );
}

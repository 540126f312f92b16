import { memo } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { isBand, pieceLines } from "../../export/pieceLines.ts";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import { useStill } from "../state/useStill.ts";
import type { Frame } from "./frame.ts";
import { type Place, place } from "./lines.ts";

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

type ReachProps = Pick<Props, "hover"> & { readonly d: string; readonly at: Place };

/** What the pointer meets round a line: wider than the line, and left alone while a pin is pulled. */
const Reach = memo(function Reach({ d, at, hover }: ReachProps) {
  return (
    <path
      className="reach"
      d={useStill(d)}
      onPointerEnter={() => hover(at)}
      onPointerLeave={() => hover(null)}
    />
  );
});

/** Every line of one piece, in its own millimetres; only strokes keep their width on the screen. */
export function PieceLines(props: Props) {
  const { piece, frame, old, turnings, hover } = props;
  const strokes = pieceLines(piece);
  const sewn = pathOf(piece.edges.flatMap(({ path }) => path));
  const shape = toPathData(turnings ? piece.cutLine : sewn);
  const drawn = strokes.filter(
    ({ kind }) => kind === "notch" || kind === "crease" || (kind === "cut" && turnings),
  );
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
          <g key={name}>
            <path className={seamClass(at, props)} d={d} data-edge={at} />
            <Reach d={d} at={at} hover={hover} />
          </g>
        );
      })}
      {drawn.map(({ kind, path, closed }, i) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: strokes have no name but their order
          key={`${kind}${i}`}
          className={kind === "crease" ? "fold" : kind}
          d={`${toPathData(path)}${closed ? "Z" : ""}`}
        />
      ))}
    </g>
  );
}

import { lengthOf } from "../../geometry/length.ts";
import { mapPath } from "../../geometry/path.ts";
import { readPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { ReportFile, ReportPiece } from "./reportFile.ts";

/** A line of the report, measured afresh. */
export type MeasuredEdge = {
  /** As the report says it: `front.raglan`, `block.front.raglan`. */
  readonly name: string;
  readonly edge: string;
  /** Null where it cannot be read; why is among the findings. */
  readonly path: Path | null;
  readonly drawn: Mm;
  /** Before it was enlarged for the wash. */
  readonly finished: Mm;
  /** What the report says that it measures. */
  readonly said: Mm;
};

export type MeasuredPiece = {
  readonly name: string;
  readonly piece: ReportPiece;
  readonly edges: readonly MeasuredEdge[];
  readonly cutLine: Path | null;
};

/** By how much a piece was enlarged for the wash, across and along (method 3.6). */
type Growth = { readonly x: number; readonly y: number };
const NONE: Growth = { x: 1, y: 1 };

const growthOf = ({ choices }: ReportFile): Growth => {
  const { shrinkLength, shrinkWidth, turned } = choices.cloth.body;
  const [along, across] = [1 / (1 - shrinkLength), 1 / (1 - shrinkWidth)];
  return turned ? { x: along, y: across } : { x: across, y: along };
};

const pathIn = (text: string): Path | null => {
  const read = readPathData(text);
  return "path" in read ? read.path : null;
};

const measureEdge = (
  name: string,
  [edge, { path: text, length }]: readonly [string, ReportPiece["edges"][string]],
  grown: Growth,
): MeasuredEdge => {
  const path = pathIn(text);
  const small = path && mapPath(path, (p) => ({ x: p.x / grown.x, y: p.y / grown.y }));
  return {
    name: `${name}.${edge}`,
    edge,
    path,
    drawn: path ? lengthOf(path) : 0,
    finished: small ? lengthOf(small) : 0,
    said: length,
  };
};

const measurePiece = (name: string, piece: ReportPiece, grown: Growth): MeasuredPiece => ({
  name,
  piece,
  edges: Object.entries(piece.edges).map((entry) => measureEdge(name, entry, grown)),
  cutLine: pathIn(piece.cutLine),
});

/** Every piece of a report, measured; the block's pieces are named `block.front` and so on. */
export type MeasuredReport = {
  readonly report: ReportFile;
  readonly pieces: readonly MeasuredPiece[];
  readonly block: readonly MeasuredPiece[];
};

export const measureReport = (report: ReportFile): MeasuredReport => {
  const grown = growthOf(report);
  const { front, back, sleeve, vInsert, neckband, cuff, hemBand } = report.pieces;
  return {
    report,
    pieces: [
      measurePiece("front", front, grown),
      measurePiece("back", back, grown),
      measurePiece("sleeve", sleeve, grown),
      ...(vInsert ? [measurePiece("vInsert", vInsert, grown)] : []),
      // Rib is washed before it is cut: bands are never enlarged.
      measurePiece("neckband", neckband, NONE),
      measurePiece("cuff", cuff, NONE),
      measurePiece("hemBand", hemBand, NONE),
    ],
    block: [
      measurePiece("block.front", report.block.front, NONE),
      measurePiece("block.back", report.block.back, NONE),
      measurePiece("block.sleeve", report.block.sleeve, NONE),
    ],
  };
};

/** The edge of a garment piece by its name, `front.raglan`; null where the report has none. */
export const edgeNamed = ({ pieces }: MeasuredReport, name: string): MeasuredEdge | null =>
  pieces.flatMap(({ edges }) => edges).find((edge) => edge.name === name) ?? null;

import { nearestOnPath } from "../../geometry/nearest.ts";
import { endOf, startOf } from "../../geometry/path.ts";
import { readPathData } from "../../geometry/pathData.ts";
import { apart } from "../../geometry/point.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { type Finding, isApart, SAME_LENGTH, SAME_PLACE, unlike, words } from "./finding.ts";
import type { MeasuredEdge, MeasuredPiece, MeasuredReport } from "./measured.ts";
import type { ReportFile } from "./reportFile.ts";

/** An edge that can be read is as long as the report says. */
const lengthHolds = ({ piece }: MeasuredPiece, measured: MeasuredEdge): readonly Finding[] => {
  const { name, edge, path, drawn, said } = measured;
  if (path) return unlike(name, "Its length", [said, drawn], SAME_LENGTH);
  const read = readPathData(piece.edges[edge]?.path ?? "");
  return [{ where: name, what: `Its line cannot be read: ${"fault" in read ? read.fault : ""}.` }];
};

/** Edges run round the piece, each from where the one before ends, back to the first. */
const chainHolds = ({ edges }: MeasuredPiece): readonly Finding[] =>
  edges.flatMap((edge, place): readonly Finding[] => {
    const before = edges.at(place - 1);
    if (!edge.path || !before?.path) return [];
    const [end, start] = [endOf(before.path), startOf(edge.path)];
    if (!isApart(end, start)) return [];
    const gap = words(apart(end, start));
    return [{ where: edge.name, what: `It begins ${gap} from the end of ${before.name}.` }];
  });

const cutLineHolds = ({ name, cutLine }: MeasuredPiece): readonly Finding[] => {
  const where = `${name}.cutLine`;
  if (!cutLine) return [{ where, what: "The line cannot be read." }];
  const [start, end] = [startOf(cutLine), endOf(cutLine)];
  if (!isApart(start, end)) return [];
  return [{ where, what: `It is not closed: its ends are ${words(apart(start, end))} apart.` }];
};

/** The allowance of the V as it was used: a small V cannot bear a wide one (method 3.5). */
const allowanceOfV = ({ choices, checks }: ReportFile): Mm =>
  checks.find(({ id }) => id === "rail-v-allowance")?.limit ??
  choices.alterations.vInsert.allowance;

/** How wide the allowance of an edge is (method, section 4). */
const allowanceOf = (edge: MeasuredEdge, report: ReportFile): Mm => {
  const { choices } = report;
  const { raglan, side, underarm, bands } = choices.allowances;
  if (edge.edge.startsWith("raglan")) return raglan;
  if (edge.edge.startsWith("underarm")) return underarm;
  if (edge.edge === "side") return side;
  const isOfV = edge.edge === "v" || edge.name === "vInsert.right" || edge.name === "vInsert.left";
  return isOfV ? allowanceOfV(report) : bands;
};

/** Nearer to a corner than this many allowances, the cut line may be trued or mitred. */
const CLEAR_OF_CORNERS = 4;

/** The front's V is tried nearer its top: in a narrow one the cut line ends on the fold lower down. */
const UP_THE_V = 3 / 4;

/** Away from its corners an edge has the cut line at its allowance. */
const allowanceHolds = (piece: MeasuredPiece, report: ReportFile): readonly Finding[] => {
  const { cutLine } = piece;
  // Where an allowance folds on itself the report says so, and the cut line is nearer there.
  if (!cutLine || report.checks.some(({ id }) => id === "allowance-folds")) return [];
  const all = piece.edges.map((edge) => allowanceOf(edge, report));
  const widest = Math.max(0, ...all);
  return piece.edges.flatMap((edge): readonly Finding[] => {
    if (!edge.path || edge.edge === piece.piece.onFold) return [];
    if (edge.drawn < 2 * CLEAR_OF_CORNERS * widest) return [];
    const wanted = allowanceOf(edge, report);
    const share = edge.edge === "v" ? UP_THE_V : 1 / 2;
    const { away } = nearestOnPath(cutLine, pointAlong(edge.path, edge.drawn * share));
    return unlike(edge.name, "Its allowance", [wanted, away], SAME_PLACE);
  });
};

/** What does not hold of the lines of each piece, and of the block's. */
export const edgeFindings = ({ pieces, block, report }: MeasuredReport): readonly Finding[] =>
  [...block, ...pieces].flatMap((piece) => [
    ...piece.edges.flatMap((edge) => lengthHolds(piece, edge)),
    ...chainHolds(piece),
    ...cutLineHolds(piece),
    ...allowanceHolds(piece, report),
  ]);

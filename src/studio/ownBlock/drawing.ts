import { asMm } from "../../drafting/words.ts";
import { mapPath } from "../../geometry/path.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { pieceByEdges } from "../../trace/edges/assignEdges.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import {
  isClosedShape,
  runsOfShape,
  type SortedDrawing,
  sortDrawing,
} from "../../trace/edges/sortDrawing.ts";
import { soundOutline } from "../../trace/edges/soundOutline.ts";
import type { PagePlace, PdfPageLines, ReadLine } from "../../trace/files/drawing.ts";
import { layPages } from "../../trace/files/joinPages.ts";
import { placesByMarks } from "../../trace/files/pageMarks.ts";
import { faulty, found, type Told } from "../../trace/told.ts";
import { edgesOf } from "./naming.ts";
import type { ByHand, Drawing, OwnPiece } from "./ownBlock.ts";

/** Between pages that are laid side by side, and how many stand in a row. */
const PAGE_GAP: Mm = 12;
const IN_ROW = 4;

/** Pages side by side in rows, in their order. */
export const pagesInRows = (pages: readonly PdfPageLines[]): readonly PagePlace[] => {
  const wide = Math.max(0, ...pages.map(({ width }) => width)) + PAGE_GAP;
  const tall = Math.max(0, ...pages.map(({ height }) => height)) + PAGE_GAP;
  return pages.map(({ page }, i) => ({
    page,
    x: (i % IN_ROW) * wide,
    y: Math.floor(i / IN_ROW) * tall,
  }));
};

export const newDrawing = (
  name: string,
  kind: Drawing["kind"],
  pages: readonly PdfPageLines[],
): Drawing => ({
  name,
  kind,
  pages,
  places: placesByMarks(pages) ?? pagesInRows(pages),
  scale: 1,
  isSized: false,
  byHand: {},
  joined: [],
});

const linesOf = ({ pages, places, scale }: Drawing): readonly ReadLine[] => {
  const lines = layPages(pages, places);
  if (scale === 1) return lines;
  return lines.map((read) => ({
    ...read,
    path: mapPath(read.path, ({ x, y }) => ({ x: x * scale, y: y * scale })),
  }));
};

let last: { readonly of: Drawing; readonly sorted: SortedDrawing } | null = null;

/** The drawing's lines sorted; the same pages, places and scale are not sorted twice. */
export const sortedOf = (drawing: Drawing): SortedDrawing => {
  const same =
    last !== null &&
    last.of.pages === drawing.pages &&
    last.of.places === drawing.places &&
    last.of.scale === drawing.scale;
  if (same && last) return last.sorted;
  const sorted = sortDrawing(linesOf(drawing));
  last = { of: drawing, sorted };
  return sorted;
};

const SHAPE = "shape.";

/** The place of the shape in hand, by what is lit; NaN where none is. */
export const shapeInHand = (lit: string | null): number =>
  lit?.startsWith(SHAPE) ? Number(lit.slice(SHAPE.length)) : Number.NaN;

/** What a piece or an edge is taken from: as the maker said, else as it is named or likely. */
export const choiceOf = (drawing: Drawing, target: string): ByHand => {
  const chosen = drawing.byHand[target];
  if (chosen !== undefined) return chosen;
  const { likely, edges } = sortedOf(drawing);
  for (const [piece, at] of likely) if (piece === target) return at;
  return [...edges.keys()].some((key) => key.startsWith(`${target}.`)) ? "edges" : "none";
};

/** The lines of a piece's edges, by name or by hand. */
const edgeLines = (drawing: Drawing, piece: OwnPiece): ReadonlyMap<string, Path> => {
  const { edges, shapes } = sortedOf(drawing);
  const found = new Map<string, Path>();
  for (const edge of edgesOf(piece, false)) {
    const key = `${piece}.${edge}`;
    const chosen = drawing.byHand[key];
    const path = typeof chosen === "number" ? shapes[chosen]?.path : edges.get(key);
    if (path && chosen !== "none") found.set(key, path);
  }
  return found;
};

/** Runs of a piece, and whether they begin with its first edge: so they do where edges are named. */
export type PieceRuns = { readonly runs: CornerRing; readonly byEdges: boolean };

const openOutline = (piece: OwnPiece, gap: Mm): Told<never> =>
  faulty(
    piece,
    asMm(gap),
    `The outline of the ${piece} is open: its ends stand ${asMm(gap)} apart.`,
    "Join them with a straight line, as a fold is, or choose another line.",
  );

const byOutline = (drawing: Drawing, piece: OwnPiece, at: number): Told<PieceRuns> | null => {
  const shape = sortedOf(drawing).shapes[at];
  if (!shape) return null;
  const isByHand = drawing.byHand[piece] !== undefined;
  if (!isClosedShape(shape) && isByHand && !drawing.joined.includes(piece)) {
    return openOutline(piece, shape.gap);
  }
  const sound = soundOutline(piece, runsOfShape(shape));
  return "fault" in sound ? sound : found({ runs: sound.found, byEdges: false });
};

/** A piece out of the drawing: its runs, what is wrong with it, or null where nothing is it. */
export const pieceIn = (drawing: Drawing, piece: OwnPiece): Told<PieceRuns> | null => {
  const choice = choiceOf(drawing, piece);
  if (choice === "none") return null;
  if (choice !== "edges") return byOutline(drawing, piece, choice);
  const edges = pieceByEdges(piece, edgeLines(drawing, piece));
  return "fault" in edges ? edges : found({ runs: edges.found.ring, byEdges: true });
};

/** What a piece or an edge is said to be, alone: a shape that was another's goes to it. */
export const assigned = (drawing: Drawing, target: string, choice: ByHand): Drawing => {
  const others = Object.entries(drawing.byHand).filter(([, at]) => at !== choice || at === "edges");
  const taken =
    typeof choice === "number"
      ? [...sortedOf(drawing).likely].filter(([piece, at]) => at === choice && piece !== target)
      : [];
  return {
    ...drawing,
    byHand: {
      ...Object.fromEntries(taken.map(([piece]) => [piece, "none" as const])),
      ...Object.fromEntries(others),
      [target]: choice,
    },
    joined: drawing.joined.filter((piece) => piece !== target),
  };
};

/** Pages lie otherwise: lines are put end to end anew, so what was chosen by hand is let go. */
export const withPlaces = (drawing: Drawing, places: readonly PagePlace[]): Drawing => ({
  ...drawing,
  places,
  byHand: {},
  joined: [],
});

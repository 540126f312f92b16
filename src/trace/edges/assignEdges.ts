import { areaOf } from "../../geometry/outline.ts";
import { endOf, joined, mirroredPath, reversed, startOf } from "../../geometry/path.ts";
import { apart } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { ReadLine } from "../files/drawing.ts";
import { chainLines } from "../files/joinPages.ts";
import { faulty, found, type Told } from "../told.ts";
import { EDGES_OF, likenessOf, type NamedOutline } from "./proposeNames.ts";
import { soundOutline } from "./soundOutline.ts";

/** The three pieces of a block. */
export const BLOCK_PIECES = ["front", "back", "sleeve"] as const;
export type BlockPiece = (typeof BLOCK_PIECES)[number];

/** Lines by the edge that they were assigned to, such as `front.raglan`; by name or by hand. */
export type Assigned = ReadonlyMap<string, Path>;

/** The edges that a half front or back, or a sleeve, is drawn with. */
export const edgesOfPiece = (piece: BlockPiece): readonly string[] =>
  piece === "sleeve" ? EDGES_OF.sleeve : EDGES_OF.half;

/** Only letters, small ones: `front_raglan`, `Front raglan` and `frontRaglan` are one name. */
export const plain = (name: string): string => name.toLowerCase().replace(/[^a-z]/gu, "");

/** Whether a line is called an edge: by the whole name, or by the edge within a group of the piece. */
const isCalled = ({ names }: ReadLine, piece: BlockPiece, edge: string): boolean => {
  const called = names.map(plain);
  const [whole, part] = [plain(piece + edge), plain(edge)];
  return called.includes(whole) || (called.includes(part) && called.includes(piece));
};

/**
 * Lines of a file assigned to edges by their ids, labels and classes (`front.raglan`, or `raglan`
 * in a group `front`); parts of one edge are put end to end. What is left is assigned by hand.
 */
export const assignByName = (
  lines: readonly ReadLine[],
): { readonly assigned: Assigned; readonly left: readonly ReadLine[] } => {
  const assigned = new Map<string, Path>();
  const taken = new Set<ReadLine>();
  for (const piece of BLOCK_PIECES) {
    for (const edge of edgesOfPiece(piece)) {
      const mine = lines.filter((line) => isCalled(line, piece, edge));
      const [chain] = chainLines(mine.map(({ path }) => path));
      if (chain) assigned.set(`${piece}.${edge}`, chain);
      for (const line of mine) taken.add(line);
    }
  }
  return { assigned, left: lines.filter((line) => !taken.has(line)) };
};

/** Edges in order, each turned so that it begins where the one before ends. */
const chained = (edges: readonly Path[]): readonly Path[] => {
  const [first, second, ...rest] = edges;
  if (!first || !second) return edges;
  const near = (p: Path): number =>
    Math.min(apart(endOf(p), startOf(second)), apart(endOf(p), endOf(second)));
  const begun = near(first) <= near(reversed(first)) ? first : reversed(first);
  let at = endOf(begun);
  const following = [second, ...rest].map((edge) => {
    const turned = apart(startOf(edge), at) <= apart(endOf(edge), at) ? edge : reversed(edge);
    at = endOf(turned);
    return turned;
  });
  return [begun, ...following];
};

/**
 * A piece from its assigned edges: each turned to run on from the one before, the whole turned over
 * where it was drawn from the other side. Told where an edge is missing or the outline is open.
 */
export const pieceByEdges = (piece: BlockPiece, assigned: Assigned): Told<NamedOutline> => {
  const names = edgesOfPiece(piece);
  const edges = names
    .map((edge) => assigned.get(`${piece}.${edge}`))
    .filter((path) => path !== undefined);
  const missing = names.filter((edge) => !assigned.has(`${piece}.${edge}`));
  const [first, ...more] = chained(edges);
  if (missing.length > 0 || !first) {
    return faulty(
      piece,
      missing.join(", "),
      `The ${piece} lacks ${missing.join(", ")}.`,
      "Assign a line to each of its edges.",
    );
  }
  const isTurnedOver = areaOf(joined(first, ...more)) < 0;
  const sound = soundOutline(piece, [first, ...more]);
  if ("fault" in sound) return sound;
  // In a mirror the same edges, in the same order, run clockwise.
  const ring = isTurnedOver ? [first, ...more].map(mirroredPath) : [first, ...more];
  const named = { piece, isWhole: false, isTurnedOver, ring };
  return found({ ...named, score: likenessOf(named) });
};

import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";

/**
 * The sew line of each piece, by the names of its edges (contract, "Frames"), in order round the
 * piece, clockwise on the page. A wrong name does not compile.
 */
export type BodyEdges = {
  /** Front only, where there is a V: from the point on the fold up to the neckline. */
  readonly v?: Path;
  readonly neckline: Path;
  readonly raglan: Path;
  readonly side: Path;
  readonly hem: Path;
  readonly centre: Path;
};
export type SleeveEdges = {
  readonly neckline: Path;
  readonly raglanFront: Path;
  readonly underarmFront: Path;
  readonly wrist: Path;
  readonly underarmBack: Path;
  readonly raglanBack: Path;
};
export type InsertEdges = { readonly top: Path; readonly right: Path; readonly left: Path };
export type BandEdges = {
  readonly top: Path;
  readonly endB: Path;
  readonly bottom: Path;
  readonly endA: Path;
};

/** The three pieces of a raglan, sew lines only: what alterations work on. */
export type Block = {
  readonly front: BodyEdges;
  readonly back: BodyEdges;
  readonly sleeve: SleeveEdges;
};

/** In the order in which they are cut and listed. */
export const PIECE_NAMES = [
  "front",
  "back",
  "sleeve",
  "vInsert",
  "neckband",
  "cuff",
  "hemBand",
] as const;
export type PieceName = (typeof PIECE_NAMES)[number];

export type EdgeName = keyof BodyEdges | keyof SleeveEdges | keyof InsertEdges | keyof BandEdges;

/** A mark on a sew line that meets its partner on the other side of the seam. */
export type Notch = {
  readonly edge: EdgeName;
  /** Along the edge as drawn, from its start. */
  readonly at: Mm;
  /** The seam that it belongs to (contract: seam ids, `shoulder`, `neckband`, `cuff`, `hem-band`). */
  readonly seam: string;
};

export type DrawnEdge = { readonly name: EdgeName; readonly path: Path; readonly length: Mm };

/** A piece ready to be cut: as drawn, that is enlarged where the cloth shrinks. */
export type Piece = {
  readonly name: PieceName;
  /** In order round the piece, clockwise, each starting where the one before ends. */
  readonly edges: readonly DrawnEdge[];
  /** Closed: ends where it starts. A fold edge stays on the fold. */
  readonly cutLine: Path;
  readonly onFold: "centre" | null;
  /** How many to cut; a piece on the fold counts once. */
  readonly cut: number;
  readonly grain: { readonly from: Point; readonly to: Point };
  readonly notches: readonly Notch[];
};

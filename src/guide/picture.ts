import type { EdgeName, PieceName } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Place } from "./place.ts";
import type { Told } from "./words/told.ts";

/**
 * What a stroke of a picture is. The first three fill a closed path: the right side is left plain,
 * the wrong side has short slanting hatch, rib has ribs. The others are lines.
 */
export type FillKind = "right" | "wrong" | "rib";
/** Lines and marks. */
export type MarkKind =
  /** An edge as it is cut. */
  | "cut"
  /** A seam line that is not sewn yet. */
  | "sew"
  /** A seam that is sewn. */
  | "sewn"
  /** The seam of this step: drawn wide, with stitches. */
  | "stitching"
  /** A line of small stitches that holds one layer. */
  | "stay"
  /** A fold of the cloth. */
  | "fold"
  | "notch"
  /** From a mark to its partner, or the way in which to sew. */
  | "arrow"
  /** A cut with the points of the shears. */
  | "snip"
  /** The point at which to stop. */
  | "stop";

/** Whose line a stroke is: test and screen can find it on the piece again. */
export type Origin = {
  readonly piece: PieceName;
  /** An edge, the line to cut, or (of a fill) any of the piece's lines and its fold. */
  readonly line: EdgeName | "cutLine" | "any";
  readonly place: Place;
};

/** A stroke in mm, y down, in the order in which it is painted. */
export type PictureStroke = {
  readonly kind: FillKind | MarkKind;
  readonly path: Path;
  readonly closed: boolean;
  /** null: an arrow, a snip or a stop, or the neckband as it stands. */
  readonly origin: Origin | null;
};

/** A word beside a mark. Its letters do not grow with the picture. */
export type PictureWord = {
  readonly told: Told;
  readonly at: Point;
  readonly from: "start" | "middle";
};

/** A drawing made of the real pieces' lines. What lies outside `view` is cut off. */
export type Picture = {
  readonly title: Told;
  readonly strokes: readonly PictureStroke[];
  readonly words: readonly PictureWord[];
  readonly view: Box;
};

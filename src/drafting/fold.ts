import { pathOf } from "../geometry/path.ts";
import type { Path, Segment } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import type { Piece } from "./piece.ts";

/** A part of a cut line that lies this near to x = 0 along its whole length is the fold. */
const ON_FOLD: Mm = 1e-4;

const isOnFold = ({ kind, start, end }: Segment): boolean =>
  kind === "line" && Math.abs(start.x) < ON_FOLD && Math.abs(end.x) < ON_FOLD;

/**
 * The line to cut without the fold: from the top of the fold round to its foot. A piece that is not
 * on the fold keeps its whole line.
 */
export const cutLineOffFold = ({ cutLine, onFold }: Pick<Piece, "cutLine" | "onFold">): Path =>
  onFold === null ? cutLine : pathOf(cutLine.filter((segment) => !isOnFold(segment)));

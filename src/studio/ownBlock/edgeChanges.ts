import { lengthOf } from "../../geometry/length.ts";
import type { Mm } from "../../geometry/units.ts";
import { proposeAs } from "../../trace/edges/proposeNames.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import { cornerAdded, cornerMoved, edgesOf, namingOf, ringOf } from "./naming.ts";
import type { Brought, Naming, OwnBlock, OwnPiece } from "./ownBlock.ts";
import { changeOwn, own } from "./state.ts";

/** Remedies were chosen for other edges: they go when an edge changes. */
const withPiece = (now: OwnBlock, piece: OwnPiece, brought: Brought): OwnBlock => ({
  ...now,
  pieces: { ...now.pieces, [piece]: brought },
  remedies: [],
});

const put = (piece: OwnPiece, brought: Brought, name: string, gesture?: string): void =>
  changeOwn(withPiece(own(), piece, brought), name, gesture);

/** What the piece is named as before anything was said: no corners that could be right. */
export const NO_NAMING: Naming = { isWhole: false, isTurnedOver: false, corners: [] };

const evenly = (count: number, wanted: number): readonly number[] =>
  Array.from({ length: wanted }, (_, i) => Math.min(count - 1, i));

/** Named anew as half or whole, this side up or the other: corners by its shape, else in order. */
export const nameAs = (
  piece: OwnPiece,
  brought: Brought,
  as: Pick<Naming, "isWhole" | "isTurnedOver">,
  name: string,
): void => {
  const named = proposeAs(brought.runs, { piece, ...as });
  const naming = named
    ? namingOf(brought.runs, named)
    : { ...as, corners: evenly(brought.runs.length, edgesOf(piece, as.isWhole).length) };
  put(piece, { ...brought, naming }, name);
};

/** One edge begins at another corner. */
export const beginEdgeAt = (
  piece: OwnPiece,
  brought: Brought,
  edge: number,
  corner: number,
  name: string,
): void => {
  const naming = brought.naming ?? NO_NAMING;
  const count = edgesOf(piece, naming.isWhole).length;
  const before =
    naming.corners.length === count ? naming.corners : evenly(brought.runs.length, count);
  const corners = before.map((at, i) => (i === edge ? corner : at));
  put(piece, { ...brought, naming: { ...naming, corners } }, name);
};

/** The piece with its outline taken as it is shown: the right side up. */
const withRing = (brought: Brought, ring: CornerRing, corners: readonly number[]): Brought => ({
  ...brought,
  runs: ring,
  naming: { isWhole: brought.naming?.isWhole ?? false, isTurnedOver: false, corners },
});

/** A corner moved along the outline; the lines stay as they are. */
export const moveCorner = (
  piece: OwnPiece,
  brought: Brought,
  corner: number,
  by: Mm,
  name: string,
  gesture: string,
): void => {
  const { isTurnedOver, corners } = brought.naming ?? NO_NAMING;
  const ring = cornerMoved(ringOf(brought.runs, isTurnedOver), corner, by);
  put(piece, withRing(brought, ring, corners), name, gesture);
};

/** One more corner on a run: in its middle, or where the maker pointed. */
export const addCorner = (
  piece: OwnPiece,
  brought: Brought,
  run: number,
  along: Mm | null,
  name: string,
): void => {
  const { isTurnedOver, corners } = brought.naming ?? NO_NAMING;
  const ring = ringOf(brought.runs, isTurnedOver);
  const here = ring[run];
  if (!here) return;
  const at = along ?? lengthOf(here) / 2;
  const later = corners.map((corner) => (corner > run ? corner + 1 : corner));
  put(piece, withRing(brought, cornerAdded(ring, run, at), later), name);
};

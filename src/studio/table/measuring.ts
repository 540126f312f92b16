import type { Piece } from "../../drafting/piece.ts";
import { nearestOnPath } from "../../geometry/nearest.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { type Frame, toMm, toPx } from "./frame.ts";
import { type Place, place } from "./lines.ts";

/** A place that the maker pointed at: on an edge where one was near, else on the bare table. */
export type Mark = {
  readonly piece: Piece["name"];
  readonly at: Point;
  readonly edge: { readonly name: Place; readonly along: Mm } | null;
};

export type Measured = {
  readonly straight: Mm;
  /** Along an edge, where both places are on one. */
  readonly along: { readonly edge: Place; readonly length: Mm } | null;
};

/** Within so many px of an edge the edge is meant. */
const REACH = 12;

type Held = { readonly piece: Piece; readonly frame: Frame };

/** The place on the nearest edge of the pieces, or on the piece whose frame is given last. */
export const markAt = (held: readonly Held[], px: { x: number; y: number }): Mark | null => {
  const found = held.flatMap(({ piece, frame }) =>
    piece.edges.map(({ name, path }) => {
      const { point, along } = nearestOnPath(path, toMm(frame, px));
      const shown = toPx(frame, point);
      const away = Math.hypot(shown.x - px.x, shown.y - px.y);
      const edge = { name: place(piece.name, name), along };
      return { away, mark: { piece: piece.name, at: point, edge } };
    }),
  );
  const nearest = found.reduce<(typeof found)[number] | null>(
    (best, next) => (best === null || next.away < best.away ? next : best),
    null,
  );
  if (!nearest) return null;
  if (nearest.away <= REACH) return nearest.mark;
  const frame = held.find(({ piece }) => piece.name === nearest.mark.piece)?.frame;
  return frame ? { piece: nearest.mark.piece, at: toMm(frame, px), edge: null } : null;
};

/** Two places measured, straight and along their edge; null where they lie on two pieces. */
export const measured = (from: Mark, to: Mark): Measured | null => {
  if (from.piece !== to.piece) return null;
  const same = from.edge && to.edge && from.edge.name === to.edge.name;
  return {
    straight: apart(from.at, to.at),
    along:
      same && from.edge && to.edge
        ? { edge: from.edge.name, length: Math.abs(to.edge.along - from.edge.along) }
        : null,
  };
};

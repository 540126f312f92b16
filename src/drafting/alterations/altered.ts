import { endOf, startOf, straight } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { BodyEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";

/** What an alteration gives: the thing altered, and what had to be held. */
export type Altered<Thing> = { readonly altered: Thing; readonly rails: readonly Rail[] };

/** The centre line drawn anew: on the fold from the hem's end to the first edge above it. */
export const withCentre = (piece: Omit<BodyEdges, "centre">): BodyEdges => {
  const { v, neckline, raglan, side, hem } = piece;
  const top = startOf(v ?? neckline);
  const centre = straight(point(0, endOf(hem).y), point(0, top.y));
  return v ? { v, neckline, raglan, side, hem, centre } : { neckline, raglan, side, hem, centre };
};

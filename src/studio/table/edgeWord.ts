import { type EdgeName, PIECE_NAMES } from "../../drafting/piece.ts";
import type { Say } from "../words/say.ts";
import type { Place } from "./lines.ts";

const EDGES = [
  "v",
  "neckline",
  "raglan",
  "side",
  "hem",
  "centre",
  "raglanFront",
  "raglanBack",
  "underarmFront",
  "underarmBack",
  "wrist",
  "top",
  "right",
  "left",
  "bottom",
  "endA",
  "endB",
] as const satisfies EdgeName[];

/** "front raglan": the piece and the edge in the maker's words. */
export const edgeWord = (at: Place, say: Say): string => {
  const [piece, edge] = at.split(".");
  const known = PIECE_NAMES.find((name) => name === piece);
  const line = EDGES.find((name) => name === edge);
  if (!known || !line) return at;
  return `${say(`piece.${known}`)}, ${say(`edge.${line}`)}`;
};

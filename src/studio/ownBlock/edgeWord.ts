import { EDGES_OF } from "../../trace/edges/proposeNames.ts";
import type { Say } from "../words/say.ts";
import type { OwnSay } from "./ownSay.ts";

const HALF_EDGES = [...EDGES_OF.half, ...EDGES_OF.sleeve] as const;
/** A whole piece has these on its other side. */
const OTHERS = ["otherSide", "otherRaglan"] as const;

/** What an edge is called on the screen. */
export const edgeWord = (edge: string, say: Say, ownSay: OwnSay): string => {
  const known = HALF_EDGES.find((name) => name === edge);
  if (known) return say(`edge.${known}`);
  const other = OTHERS.find((name) => name === edge);
  return other ? ownSay(`own.edge.${other}`) : edge;
};

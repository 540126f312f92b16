import type { Path } from "../../geometry/segment.ts";
import { halfTraits, sleeveTraits, type Trait, unlike, wholeTraits } from "./likeness.ts";
import { begunAt, type CornerRing, choices, clockwise, turnedOver, withCorners } from "./ring.ts";

/** Which piece an outline may be, and which of its corners begins its first edge. */
export type NamedOutline = {
  readonly piece: "front" | "back" | "sleeve";
  /** A front or back drawn on both sides of its centre. */
  readonly isWhole: boolean;
  /** It lay with its other side up and was turned over. */
  readonly isTurnedOver: boolean;
  /** In order round it, clockwise, the first edge first: see `EDGES_OF`. */
  readonly ring: CornerRing;
  /** 1 is a shape as drafted; below 0.05 it is hardly this piece. */
  readonly score: number;
};

/** The edges of each kind of outline in its ring's order. */
export const EDGES_OF = {
  half: ["neckline", "raglan", "side", "hem", "centre"],
  whole: ["neckline", "raglan", "side", "hem", "otherSide", "otherRaglan"],
  sleeve: ["neckline", "raglanFront", "underarmFront", "wrist", "underarmBack", "raglanBack"],
} as const;

/** An outline with more corners than this is named by hand. */
const MOST_CORNERS = 12;
/** Each corner left out costs this much likeness: corners are seldom found where there are none. */
const LEFT_OUT = 4;

type Kind = {
  readonly piece: NamedOutline["piece"];
  readonly isWhole: boolean;
  readonly corners: number;
  readonly traits: (ring: CornerRing) => readonly Trait[];
};

const KINDS: readonly Kind[] = [
  { piece: "front", isWhole: false, corners: 5, traits: (ring) => halfTraits(ring, "front") },
  { piece: "back", isWhole: false, corners: 5, traits: (ring) => halfTraits(ring, "back") },
  { piece: "front", isWhole: true, corners: 6, traits: (ring) => wholeTraits(ring, "front") },
  { piece: "back", isWhole: true, corners: 6, traits: (ring) => wholeTraits(ring, "back") },
  { piece: "sleeve", isWhole: false, corners: 6, traits: sleeveTraits },
];

/** How like its kind a ring is, 0 to 1. */
export const likenessOf = (named: Omit<NamedOutline, "score">): number => {
  const kind = KINDS.find((k) => k.piece === named.piece && k.isWhole === named.isWhole);
  return kind ? scoreOf(unlike(kind.traits(named.ring)), 0) : 0;
};

const scoreOf = (off: number, leftOut: number): number =>
  Math.exp(-(off + LEFT_OUT * leftOut) / 16);

const bestOf = (ring: CornerRing, kind: Kind, isTurnedOver: boolean): NamedOutline | null => {
  let best: NamedOutline | null = null;
  const leftOut = ring.length - kind.corners;
  for (const kept of choices(ring.length, kind.corners)) {
    const fewer = withCorners(ring, kept);
    for (let at = 0; at < fewer.length; at++) {
      const begun = begunAt(fewer, at);
      const score = scoreOf(unlike(kind.traits(begun)), leftOut);
      if (!best || score > best.score) {
        best = { piece: kind.piece, isWhole: kind.isWhole, isTurnedOver, ring: begun, score };
      }
    }
  }
  return best;
};

/** The likeliest corners of an outline that is said to be this piece, lying this side up. */
export const proposeAs = (
  runs: readonly Path[],
  { piece, isWhole, isTurnedOver }: Pick<NamedOutline, "piece" | "isWhole" | "isTurnedOver">,
): NamedOutline | null => {
  const kind = KINDS.find((k) => k.piece === piece && k.isWhole === isWhole);
  if (!kind || runs.length < kind.corners || runs.length > MOST_CORNERS) return null;
  const ring = clockwise(runs);
  return bestOf(isTurnedOver ? turnedOver(ring) : ring, kind, isTurnedOver);
};

/**
 * What an outline may be, by its shape, the likeliest first: front, back (half or whole) or sleeve,
 * and which corner is which. A proposal only: the maker says so or names the corners by hand.
 */
export const proposeNames = (runs: readonly Path[]): readonly NamedOutline[] => {
  if (runs.length < 5 || runs.length > MOST_CORNERS) return [];
  const ring = clockwise(runs);
  const over = turnedOver(ring);
  return KINDS.filter(({ corners }) => corners <= runs.length)
    .flatMap((kind) => {
      const sides = [bestOf(ring, kind, false), bestOf(over, kind, true)].filter((n) => n !== null);
      return sides.sort((a, b) => b.score - a.score).slice(0, 1);
    })
    .sort((a, b) => b.score - a.score);
};

import { LIMITS } from "../../checks/data/limits.ts";
import { atMost, checkOf, verdictOf } from "../../checks/verdict.ts";
import type { Block } from "../../drafting/piece.ts";
import { asFinePercent, asMm } from "../../drafting/words.ts";
import { lengthOf } from "../../geometry/length.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Finding, Remedy } from "./remedy.ts";
import { raglanRemedies, sideRemedies, underarmRemedies } from "./seamRemedies.ts";

type Pair = {
  readonly id: string;
  readonly one: readonly [string, Path];
  readonly other: readonly [string, Path];
  readonly remedies: (difference: number) => readonly Remedy[];
};

const seamFinding = ({ id, one, other, remedies }: Pair): Finding => {
  const [a, b] = [lengthOf(one[1]), lengthOf(other[1])];
  const difference = a - b;
  const value = Math.abs(difference);
  const { sound, attend } = LIMITS.seam;
  const verdict = verdictOf(atMost(value, sound), atMost(value, attend));
  const check = checkOf(
    { id, verdict, value, limit: sound, unit: "mm" },
    {
      measured: `${one[0]} is ${asMm(a)} and ${other[0]} ${asMm(b)}, ${asMm(value)} apart (${asFinePercent(value / Math.max(1, b))}); the limit is ${asMm(sound)}.`,
      change: "Choose what to correct, or ease it in.",
    },
  );
  return { ...check, remedies: verdict === "sound" ? [] : remedies(difference) };
};

/** The block's own seams, each with the difference of its two edges in mm and what can be done. */
export const seamFindings = ({ front, back, sleeve }: Block): readonly Finding[] => {
  const pairs: readonly Pair[] = [
    {
      id: "raglan-front-match",
      one: ["The front's raglan", front.raglan],
      other: ["the sleeve's", sleeve.raglanFront],
      remedies: (difference) => raglanRemedies("front", difference),
    },
    {
      id: "raglan-back-match",
      one: ["The back's raglan", back.raglan],
      other: ["the sleeve's", sleeve.raglanBack],
      remedies: (difference) => raglanRemedies("back", difference),
    },
    {
      id: "side-match",
      one: ["The front's side", front.side],
      other: ["the back's", back.side],
      remedies: sideRemedies,
    },
    {
      id: "underarm-match",
      one: ["The sleeve's front underarm", sleeve.underarmFront],
      other: ["its back one", sleeve.underarmBack],
      remedies: underarmRemedies,
    },
  ];
  return pairs.map(seamFinding);
};

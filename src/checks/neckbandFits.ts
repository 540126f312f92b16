import type { Garment } from "../bands/garment.ts";
import { wornLength } from "../bands/worn.ts";
import { asMm, asPercent } from "../drafting/words.ts";
import type { Check } from "./check.ts";
import { LIMITS } from "./data/limits.ts";
import { mustStretch } from "./stretchWords.ts";
import { atMost, checkOf, verdictOf } from "./verdict.ts";

/** The band and its seam let the head through (method 6). */
const headPasses = ({ bands, measures, choices }: Garment): readonly Check[] => {
  const { stretch } = choices.cloth.rib;
  const cloth = choices.cloth.body.stretch;
  const { stretchToPass, opening } = bands.neckband;
  const seam = measures.head / opening - 1;
  const limit = LIMITS.passes * stretch;
  return [
    checkOf(
      {
        id: "head-passes",
        verdict: verdictOf(atMost(stretchToPass, limit), atMost(stretchToPass, stretch)),
        value: stretchToPass,
        limit,
        unit: "ratio",
      },
      {
        measured: `The neckband ${mustStretch(stretchToPass)} for the head (limit ${asPercent(limit)}).`,
        change: "Make the band longer or the neckline wider.",
      },
    ),
    checkOf(
      {
        id: "neckline-passes",
        verdict: verdictOf(atMost(seam, cloth), atMost(seam, LIMITS.necklineAttend * cloth)),
        value: seam,
        limit: cloth,
        unit: "ratio",
      },
      {
        measured: `The neck seam, ${asMm(opening)} round, ${mustStretch(seam)} for the head (limit ${asPercent(cloth)}).`,
        change: "Lower or widen the neckline.",
      },
    ),
  ];
};

/** The band lies flat: worn, it is hardly longer than its ring on the body (method 5.2, 6). */
const liesFlat = ({ bands, measures, choices }: Garment): Check => {
  const { finishedLength, bodyRing } = bands.neckband;
  const worn = wornLength(finishedLength, measures.head, choices.cloth.rib);
  const value = worn - bodyRing;
  const limit = LIMITS.slack * bodyRing;
  return checkOf(
    {
      id: "neckband-lies-flat",
      verdict: verdictOf(atMost(value, limit), true),
      value,
      limit,
      unit: "mm",
    },
    {
      measured: `Worn, the neckband is ${asMm(worn)} and its ring on the body ${asMm(bodyRing)}, ${asMm(Math.abs(value))} ${value < 0 ? "shorter" : "longer"}; it lies flat to ${asMm(limit)} longer.`,
      change: "Make the band less deep, use a rib that stretches more, or widen the neckline.",
    },
  );
};

/** Only where the band is as deep as the gap to the neck, or deeper. */
const stands = ({ bands }: Garment): readonly Check[] => {
  const { finishedDepth, neckGap } = bands.neckband;
  if (neckGap === null || finishedDepth < neckGap) return [];
  return [
    checkOf(
      {
        id: "neckband-stands",
        verdict: "attend",
        value: finishedDepth,
        limit: neckGap,
        unit: "mm",
      },
      {
        measured: `The neckband, ${asMm(finishedDepth)}, is deeper than the gap to the neck, ${asMm(neckGap)}; it will stand against the neck.`,
        change: "Make the band less deep, or widen the neckline.",
      },
    ),
  ];
};

const sews = ({ bands, choices }: Garment): Check => {
  const { stretch } = choices.cloth.rib;
  const value = bands.neckband.stretchToSew;
  const limit = LIMITS.sews * stretch;
  return checkOf(
    {
      id: "neckband-sews",
      verdict: verdictOf(atMost(value, limit), atMost(value, stretch)),
      value,
      limit,
      unit: "ratio",
    },
    {
      measured: `The neckband must stretch by ${asPercent(value)} to be sewn on (limit ${asPercent(limit)}).`,
      change: "Make the band longer.",
    },
  );
};

/** Everything that is checked about the neckband (method 6). */
export const neckbandFits = (garment: Garment): readonly Check[] => [
  ...headPasses(garment),
  liesFlat(garment),
  ...stands(garment),
  sews(garment),
];

import type { Band } from "../bands/band.ts";
import { hemPasses } from "../bands/cuffAndHem.ts";
import type { Garment } from "../bands/garment.ts";
import { asKilopascal, asMm, asPercent } from "../drafting/words.ts";
import type { Mm, Ratio } from "../geometry/units.ts";
import type { Check } from "./check.ts";
import { LIMITS } from "./data/limits.ts";
import { mustStretch } from "./stretchWords.ts";
import { atMost, checkOf, verdictOf, within } from "./verdict.ts";

const passes = (
  id: string,
  { band, stretch }: { readonly band: Band; readonly stretch: Ratio },
  words: { readonly band: string; readonly part: string; readonly girth: Mm },
): Check => {
  const value = band.stretchToPass;
  const limit = LIMITS.passes * stretch;
  return checkOf(
    {
      id,
      verdict: verdictOf(atMost(value, limit), atMost(value, stretch)),
      value,
      limit,
      unit: "ratio",
    },
    {
      measured: `${words.band}, ${asMm(band.finishedLength)}, ${mustStretch(value)} for ${words.part}, ${asMm(words.girth)} (limit ${asPercent(limit)}).`,
      change: "Give the band more ease, or use a rib that stretches more.",
    },
  );
};

/** What an edge does to the band that is sewn to it. */
const against = ({ finishedLength, stretchToSew }: Band, words: string): string =>
  stretchToSew < 0
    ? `is ${asPercent(-stretchToSew)} shorter than ${words}, ${asMm(finishedLength)}, that is sewn on`
    : `stretches ${words}, ${asMm(finishedLength)}, by ${asPercent(stretchToSew)} when it is sewn on`;

const holds = (
  id: string,
  { band, stretch }: { readonly band: Band; readonly stretch: Ratio },
  limits: { readonly part: Ratio; readonly attendFrom: Ratio },
  words: { readonly band: string; readonly edge: string; readonly change: string },
): Check => {
  const value = band.stretchToSew;
  const limit = limits.part * stretch;
  const attends = within(value, limits.attendFrom, stretch);
  return checkOf(
    { id, verdict: verdictOf(within(value, 0, limit), attends), value, limit, unit: "ratio" },
    {
      measured: `${words.edge}, ${asMm(band.opening)}, ${against(band, words.band)}; the range is ${asPercent(0)} to ${asPercent(limit)}.`,
      change: words.change,
    },
  );
};

/** A band that hangs is no fault; the maker is told what would hold a blouse (method 5.3). */
const blouseWords = ({ bands }: Garment): string => {
  const { finishedLength, holdsBlouseFrom } = bands.hemBand;
  return finishedLength > holdsBlouseFrom
    ? ` It hangs below the hip; ${asMm(holdsBlouseFrom)} or shorter holds a blouse there.`
    : "";
};

const presses = (id: string, band: Band, words: string, more = ""): Check => {
  const { sound, attend } = LIMITS.pressure;
  const value = band.pressure;
  return checkOf(
    {
      id,
      verdict: verdictOf(atMost(value, sound), atMost(value, attend)),
      value,
      limit: sound,
      unit: "kPa",
    },
    {
      measured: `At rest ${words} presses with ${asKilopascal(value)}; the limit is ${asKilopascal(sound)}.`,
      change: "Give the band more ease.",
      more,
    },
  );
};

/** Cuff and hem band: what passes, what holds, what presses (method 6). */
export const bandsFit = (garment: Garment): readonly Check[] => {
  const { bands, measures, choices } = garment;
  const { stretch } = choices.cloth.rib;
  const cuff = { band: bands.cuff, stretch };
  const hem = { band: bands.hemBand, stretch };
  return [
    passes("hand-passes-cuff", cuff, {
      band: "The cuff",
      part: "the hand",
      girth: measures.hand,
    }),
    holds("cuff-holds", cuff, LIMITS.cuffHolds, {
      band: "the cuff",
      edge: "The sleeve's end",
      change: "Change the wrist width, or the cuff's ease.",
    }),
    presses("cuff-pressure", bands.cuff, "the cuff"),
    passes("hem-band-passes", hem, {
      band: "The hem band",
      part: measures.chest > measures.hip ? "the chest" : "the hip",
      girth: hemPasses(measures),
    }),
    holds("hem-band-holds", hem, LIMITS.hemHolds, {
      band: "the hem band",
      edge: "The hem",
      change: "Change the hem's width, or the band's ease.",
    }),
    presses("hem-band-pressure", bands.hemBand, "the hem band", blouseWords(garment)),
  ];
};

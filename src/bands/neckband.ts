import type { Choices } from "../drafting/choices.ts";
import type { Measures } from "../drafting/measures.ts";
import type { Rail } from "../drafting/rail.ts";
import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import type { Neckband } from "./band.ts";
import { BAND } from "./data/bandConstants.ts";
import type { NecklineRing, Station } from "./necklineRing.ts";
import { pressureOn, type Rib, wornLength } from "./worn.ts";

/** The rings that a neckband's fold meets (method 5.1). In mm. */
export type FoldRings = {
  readonly innerRing: Mm;
  readonly bodyRing: Mm;
  readonly neckGap: Mm | null;
};

/** The ring under the fold on the flat garment, and on the body where it steepens to the neck. */
export const foldRings = (
  { opening, turning }: Pick<NecklineRing, "opening" | "turning">,
  depth: Mm,
  neckBase: Mm,
): FoldRings => {
  const innerRing = opening - turning * depth;
  if (neckBase >= opening) return { innerRing, bodyRing: opening, neckGap: 0 };
  if (turning <= 0) return { innerRing, bodyRing: opening, neckGap: null };
  const neckGap = (4 * (opening - neckBase)) / (3 * turning);
  const bodyRing =
    depth < neckGap ? opening - turning * depth * (1 - depth / (4 * neckGap)) : neckBase;
  return { innerRing, bodyRing, neckGap };
};

/** What a neckband's length must satisfy (method 5.2). In mm. */
export type NeckbandBounds = {
  /** The head passes with a tenth of the stretch in hand. */
  readonly forHead: Mm;
  /** Sewn on with at most half the stretch. */
  readonly forSewing: Mm;
  /** Two per cent shorter, worn, than the ring on the body. */
  readonly target: Mm;
  /** The longest that still lies flat. */
  readonly flat: Mm;
};

export const neckbandBounds = (opening: Mm, bodyRing: Mm, head: Mm, rib: Rib): NeckbandBounds => {
  const { stretch, recovery } = rib;
  const worn = (part: number): Mm => (part * bodyRing - (1 - recovery) * head) / recovery;
  return {
    forHead: head / (1 + BAND.safeStretch * stretch),
    forSewing: opening / (1 + BAND.sewStretch * stretch),
    target: worn(BAND.target),
    flat: worn(BAND.limit),
  };
};

/** The finished length: by a ratio of the maker's own, or found from the rib (method 5.2). */
const finishedLength = (opening: Mm, bounds: NeckbandBounds, ratio: number | null): Mm => {
  if (ratio !== null) return Math.min(opening, ratio * opening);
  const least = Math.max(bounds.forHead, bounds.forSewing);
  const found = least > bounds.flat ? least : Math.min(bounds.flat, Math.max(least, bounds.target));
  return Math.min(opening, found);
};

type Shared = { readonly station: Station; readonly inner: Mm };

/** Every station with its way along the fold, in order of the way along the opening. */
const sharedOut = (ring: NecklineRing, bodyRing: Mm): readonly Shared[] => {
  const { opening, turning } = ring;
  // D·m of the method: what the fold loses to each radian of turning.
  const lost = turning > 0 ? (opening - bodyRing) / turning : 0;
  return ring.stations
    .map((station) => ({ station, inner: station.way - station.turning * lost }))
    .sort((a, b) => a.station.way - b.station.way);
};

/** The shortest way along the fold between two neighbouring marks. */
const shortestBetween = (shared: readonly Shared[]): Mm =>
  Math.min(...shared.slice(1).map((next, i) => next.inner - (shared[i]?.inner ?? 0)));

/** The eight marks in order round the band from its seam at centre back (method 5.2). */
const marksOf = (shared: readonly Shared[], place: (s: Shared) => Mm, whole: Mm) => {
  const half = shared.map((s) => ({ at: place(s), to: s.station.to }));
  const mirror = half.slice(1, -1).map(({ at, to }) => ({ at: whole - at, to }));
  return [...half, ...mirror.reverse()];
};

const quartersOf = (marks: Neckband["marks"]): Neckband["quarterMarks"] => {
  const [left = 0, right = 0] = marks.filter(({ to }) => to === "half-way").map(({ at }) => at);
  const front = marks.find(({ to }) => to === "centre-front")?.at ?? 0;
  return [0, left, front, right];
};

/** The neckband's length, marks and behaviour (method 5.2). In mm. */
export const cutNeckband = (
  ring: NecklineRing,
  body: Measures,
  choices: Choices,
): { readonly neckband: Neckband; readonly rails: readonly Rail[] } => {
  const { finishedDepth, ratio, share } = choices.bands.neckband;
  const { rib } = choices.cloth;
  const allowance = choices.allowances.bands;
  const { opening } = ring;
  const rings = foldRings(ring, finishedDepth, body.neckBase);
  const bounds = neckbandBounds(opening, rings.bodyRing, body.head, rib);
  const finished = finishedLength(opening, bounds, ratio);
  const shared = sharedOut(ring, rings.bodyRing);
  const shortest = shortestBetween(shared);
  const even = shortest <= 0 || share === "even";
  const marks = marksOf(
    shared,
    ({ station, inner }) =>
      even ? (finished * station.way) / opening : (finished * inner) / rings.bodyRing,
    finished,
  );
  const neckband: Neckband = {
    around: "neckline",
    opening,
    finishedLength: finished,
    cutLength: finished + 2 * allowance,
    cutHeight: 2 * (finishedDepth + allowance),
    finishedDepth,
    ratio: finished / opening,
    stretchToSew: opening / finished - 1,
    stretchToPass: body.head / finished - 1,
    quarterMarks: quartersOf(marks),
    pressure: pressureOn(body.neckBase, wornLength(finished, body.head, rib), rib),
    marks,
    ...rings,
  };
  const rails = shortest <= 0 && share === "ring" ? [shareRail(shortest)] : [];
  return { neckband, rails };
};

const shareRail = (shortest: Mm): Rail => ({
  id: "rail-share",
  wanted: shortest,
  used: 0,
  unit: "mm",
  stops: false,
  message: `Between two marks of the neckband the fold would be ${asMm(shortest)} long; it must be more than ${asMm(0)}, so the marks stand evenly. Make the neckband less deep, or the neckline wider.`,
});

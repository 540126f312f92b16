import type { Garment } from "../../bands/garment.ts";
import type { Mm, Ratio } from "../../geometry/units.ts";

/** 0.175 N per mm of folded width is 18 g a mm (band mechanics, section 7). */
const GRAMS_PER_MM = 18;
/** What is marked on the fold before anything is hung on it. */
export const MARKED: Mm = 100;

export type Readings = {
  /** Under the load, after 10 seconds. */
  readonly loaded: Mm | null;
  /** After three stretches, one minute and one hour later. */
  readonly minute: Mm | null;
  readonly hour: Mm | null;
  /** The shortest arc on which 100 of the fold still lies flat. */
  readonly arc: Mm | null;
};

/** The scrap is cut to the neckband's cut height, so folded it is half of that wide. */
export const scrapWidth = ({ bands }: Garment): Mm => bands.neckband.cutHeight / 2;

/** The load to be hung on a band folded to this width, in grams, to the nearest 10. */
export const loadFor = (foldedWidth: Mm): number =>
  Math.round((foldedWidth * GRAMS_PER_MM) / 10) * 10;

/** How far 100 is stretched in use: the neckband's way over the head. */
export const stretchedInUse = ({ bands, measures }: Garment): Mm =>
  (MARKED * measures.head) / bands.neckband.finishedLength;

/** The radius to lay the band round: the opening over its turning. */
export const layRadius = ({ bands, ring }: Garment): Mm =>
  ring.turning > 0 ? bands.neckband.opening / ring.turning : Number.POSITIVE_INFINITY;

export const stretchRead = ({ loaded }: Readings): Ratio | null =>
  loaded === null ? null : (loaded - MARKED) / MARKED;

const backAfter = (stretched: Mm, after: Mm | null): Ratio | null =>
  after === null || stretched <= MARKED ? null : (stretched - after) / (stretched - MARKED);

export const recoveryRead = ({ hour }: Readings, stretched: Mm): Ratio | null =>
  backAfter(stretched, hour);

/** What it has given back after a minute. */
export const minuteRead = ({ minute }: Readings, stretched: Mm): Ratio | null =>
  backAfter(stretched, minute);

/** e = 1 - A(1 - D/ρ)/100: the slack that this rib's fold bears. */
export const slackRead = ({ arc }: Readings, depth: Mm, radius: Mm): Ratio | null =>
  arc === null ? null : 1 - (arc * (1 - depth / radius)) / MARKED;

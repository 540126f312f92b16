import type { Garment } from "../bands/garment.ts";
import { CHOICE_RANGES, type Range } from "../drafting/data/ranges.ts";
import type { Fault } from "../drafting/fault.ts";
import { asMm, asPercent } from "../drafting/words.ts";
import type { Mm, Ratio } from "../geometry/units.ts";
import { TEST } from "./data/tableTest.ts";

/** What was read on the table. Lengths in mm; each starts from the marked 100. */
export type Readings = {
  /** Under the load, after 10 seconds. */
  readonly loaded: Mm;
  /** What the marks were stretched to, three times. */
  readonly stretched: Mm;
  /** After a minute; null where it was not read. */
  readonly afterMinute: Mm | null;
  readonly afterHour: Mm;
  /** The shortest tick at which the fold lay flat; null where it was not tried. */
  readonly flatAt: Mm | null;
};

/** The rib as it was found. */
export type RibFound = {
  readonly stretch: Ratio;
  readonly recovery: Ratio;
  readonly recoveryAfterMinute: Ratio | null;
  /** What the fold bears before it lifts. */
  readonly slack: Ratio | null;
};

/** The rib, or the first reading that cannot be. */
export type RibRead = { readonly rib: RibFound } | { readonly fault: Fault };

const fault = (field: string, value: Mm, reason: string, cure: string): { fault: Fault } => ({
  fault: { field, value: asMm(value), reason, do: cure },
});

/** Shares of whole millimetres are not exact. */
const ROUNDING = 1e-9;

const isIn = (value: number, { least, most }: Range): boolean =>
  value >= least - ROUNDING && value <= most + ROUNDING;

/** The share of a stretch that has gone back. */
const goneBack = (stretched: Mm, after: Mm): Ratio =>
  (stretched - after) / (stretched - TEST.marked);

const faultOfStretch = (loaded: Mm): { fault: Fault } | null => {
  const { least, most } = CHOICE_RANGES.stretch;
  if (isIn(loaded / TEST.marked - 1, CHOICE_RANGES.stretch)) return null;
  return fault(
    "loaded",
    loaded,
    `Under the load the marks were read ${asMm(loaded)} apart; from ${asMm(TEST.marked)} they must come to ${asMm(TEST.marked * (1 + least))} to ${asMm(TEST.marked * (1 + most))}.`,
    "Read the whole distance between the marks, not what it gained.",
  );
};

const faultOfRecovery = (field: string, stretched: Mm, after: Mm): { fault: Fault } | null => {
  const { least, most } = CHOICE_RANGES.recovery;
  if (isIn(goneBack(stretched, after), CHOICE_RANGES.recovery)) return null;
  return fault(
    field,
    after,
    `Stretched to ${asMm(stretched)} the marks came back to ${asMm(after)}; ${asPercent(least)} to ${asPercent(most)} of the stretch must go back.`,
    "Read the whole distance between the marks again, or take another rib.",
  );
};

const faultOf = (readings: Readings): { fault: Fault } | null => {
  const { loaded, stretched, afterMinute, afterHour, flatAt } = readings;
  const numbers = [loaded, stretched, afterMinute ?? 0, afterHour, flatAt ?? 0];
  if (numbers.some((value) => !Number.isFinite(value))) {
    return fault(
      "readings",
      Number.NaN,
      "A reading is not a number.",
      "Write each in millimetres.",
    );
  }
  const wrong = faultOfStretch(loaded);
  if (wrong) return wrong;
  if (stretched <= TEST.marked) {
    return fault(
      "stretched",
      stretched,
      `The marks were stretched to ${asMm(stretched)}; it must be more than ${asMm(TEST.marked)}.`,
      "Write how far apart the marks were while you held them.",
    );
  }
  if (flatAt !== null && (flatAt < TEST.marked || flatAt > 2 * TEST.marked)) {
    return fault(
      "flatAt",
      flatAt,
      `The fold lay flat from the tick ${asMm(flatAt)} on; it must be ${asMm(TEST.marked)} to ${asMm(2 * TEST.marked)}.`,
      "Read the number of the tick on the printed arc.",
    );
  }
  return (
    faultOfRecovery("afterHour", stretched, afterHour) ??
    (afterMinute === null || afterMinute <= stretched
      ? null
      : faultOfRecovery("afterMinute", stretched, afterMinute))
  );
};

/** e = 1 − A(1 − D/ρ)/100: how much longer than the ring under it the fold was, and lay flat. */
const slackOf = (flatAt: Mm, { ring, bands }: Pick<Garment, "ring" | "bands">): Ratio => {
  const curved =
    ring.turning > 0 ? (bands.neckband.finishedDepth * ring.turning) / ring.opening : 0;
  return 1 - (flatAt * (1 - curved)) / TEST.marked;
};

/** The rib from what was read of it on the table, or what cannot be. */
export const readTableTest = (
  readings: Readings,
  garment: Pick<Garment, "ring" | "bands">,
): RibRead => {
  const wrong = faultOf(readings);
  if (wrong) return wrong;
  const { loaded, stretched, afterMinute, afterHour, flatAt } = readings;
  return {
    rib: {
      stretch: loaded / TEST.marked - 1,
      recovery: Math.min(1, goneBack(stretched, afterHour)),
      recoveryAfterMinute: afterMinute === null ? null : goneBack(stretched, afterMinute),
      slack: flatAt === null ? null : slackOf(flatAt, garment),
    },
  };
};

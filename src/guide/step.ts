import type { MarkTable } from "./bandMarks.ts";
import type { Picture } from "./picture.ts";
import type { Told } from "./words/told.ts";

/** The steps of making up, in the order of work (common practice, no source). */
const STEP_IDS = [
  "prepare",
  "stay-v",
  "v-insert",
  "raglan-front",
  "raglan-back",
  "underarm-and-side",
  "neckband",
  "cuffs",
  "hem-band",
  "press",
] as const;
export type StepId = (typeof STEP_IDS)[number];

/** A stitch for a step: on an overlock, on a home machine, or on whichever there is. */
export type Stitch = { readonly machine: "overlock" | "home" | "either"; readonly told: Told };

/** One step of making up, as data; `tell` puts it into words. */
export type GuideStep = {
  readonly id: StepId;
  readonly title: Told;
  readonly sentences: readonly Told[];
  /** Where the marks of a band fall on it and on its opening; null where no band is sewn. */
  readonly marks: MarkTable | null;
  readonly stitches: readonly Stitch[];
  readonly cautions: readonly Told[];
  readonly pictures: readonly Picture[];
};

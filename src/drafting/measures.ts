import type { Mm } from "../geometry/units.ts";

/** The sixteen body measures that a draft holds, in the order in which they are shown. */
export const MEASURE_IDS = [
  "height",
  "chest",
  "waist",
  "hip",
  "neckBase",
  "shoulder",
  "acrossBack",
  "napeToWaist",
  "napeToHip",
  "scyeDepth",
  "upperArm",
  "wrist",
  "hand",
  "head",
  "armLength",
  "spineToWrist",
] as const;
export type MeasureId = (typeof MEASURE_IDS)[number];

/** Accepted and kept with the body; nothing is worked from them yet. */
export const KEPT_IDS = ["elbow", "waistToHip", "torsoGirth"] as const;
export type KeptId = (typeof KEPT_IDS)[number];

export type Measures = Readonly<Record<MeasureId, Mm>>;
export type GivenMeasures = { readonly [K in MeasureId | KeptId]?: Mm } & {
  readonly height: Mm;
  readonly chest: Mm;
};

export type Sex = "female" | "male";

/** A body as its maker gave it. Lengths in mm. */
export type Body = {
  readonly id: string;
  readonly name?: string;
  /** Only chooses the regressions of what is missing. */
  readonly sex?: Sex;
  readonly age?: number;
  readonly measures: GivenMeasures;
};

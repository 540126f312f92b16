import type { Ratio } from "../../geometry/units.ts";
import type { WordKey } from "../words/en.ts";

/** What cloth of a kind may be expected to do. Every row: common practice, no source. */
export type BodyCloth = { readonly id: string; readonly name: WordKey; readonly stretch: Ratio };

export const BODY_CLOTHS: readonly BodyCloth[] = [
  { id: "fleece", name: "cloth.preset.fleece", stretch: 0.25 },
  { id: "jersey", name: "cloth.preset.jersey", stretch: 0.3 },
  { id: "interlock", name: "cloth.preset.interlock", stretch: 0.4 },
  { id: "ribknit", name: "cloth.preset.ribknit", stretch: 0.6 },
];

export type Rib = {
  readonly id: string;
  readonly name: WordKey;
  readonly stretch: Ratio;
  readonly recovery: Ratio;
};

/** The first is the default of the choices; the others only say where ribs differ. */
export const RIBS: readonly Rib[] = [
  { id: "twobytwo", name: "rib.preset.twobytwo", stretch: 0.8, recovery: 0.95 },
  { id: "firm", name: "rib.preset.firm", stretch: 0.6, recovery: 0.95 },
  { id: "onebyone", name: "rib.preset.onebyone", stretch: 0.6, recovery: 0.85 },
];

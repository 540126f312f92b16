import type { Mm, Ratio } from "../geometry/units.ts";

/** Every choice a maker makes about the garment (contract, "Choices"). Defaults: data/defaults.ts. */
export type Choices = {
  readonly fit: {
    readonly chestEase: Mm;
    readonly upperArmEase: Mm;
    readonly lengthBelowHip: Mm;
  };
  readonly alterations: {
    readonly moveSideSeams: { readonly on: boolean; readonly by: Mm };
    readonly raiseHem: { readonly on: boolean; readonly by: Mm };
    readonly endSleeve: { readonly on: boolean; readonly aboveWrist: Mm };
    readonly neckline: {
      readonly on: boolean;
      readonly lowerFront: Mm;
      readonly lowerBack: Mm;
      readonly widen: Mm;
    };
    readonly vInsert: {
      readonly on: boolean;
      readonly halfWidth: Mm;
      readonly depth: Mm;
      readonly allowance: Mm;
      readonly method: "true" | "cut-away";
    };
  };
  readonly cloth: {
    readonly body: {
      readonly stretch: Ratio;
      readonly shrinkLength: Ratio;
      readonly shrinkWidth: Ratio;
      readonly turned: boolean;
    };
    readonly rib: { readonly stretch: Ratio; readonly recovery: Ratio };
  };
  readonly bands: {
    readonly neckband: {
      readonly finishedDepth: Mm;
      /** null: found from the rib (method 5.2). */
      readonly ratio: Ratio | null;
      readonly share: "ring" | "even";
    };
    readonly cuff: { readonly cutHeight: Mm; readonly ease: Mm };
    readonly hemBand: { readonly cutHeight: Mm; readonly ease: Mm };
  };
  readonly allowances: {
    readonly raglan: Mm;
    readonly side: Mm;
    readonly underarm: Mm;
    readonly bands: Mm;
  };
};

import type { Kilopascal, Mm, Ratio } from "../geometry/units.ts";

export type MarkTo = "centre-back" | "raglan-back" | "half-way" | "raglan-front" | "centre-front";

/** What a rib band is cut to and how it behaves (contract, BAND). */
export type Band = {
  readonly around: "neckline" | "wrist" | "hem";
  /** The sewn length that the band meets. */
  readonly opening: Mm;
  readonly finishedLength: Mm;
  readonly cutLength: Mm;
  readonly cutHeight: Mm;
  readonly finishedDepth: Mm;
  readonly ratio: Ratio;
  readonly stretchToSew: Ratio;
  readonly stretchToPass: Ratio;
  /** Along the finished length, from the band's own seam. */
  readonly quarterMarks: readonly [Mm, Mm, Mm, Mm];
  /** At rest on the body. */
  readonly pressure: Kilopascal;
};

export type Neckband = Band & {
  readonly marks: readonly { readonly at: Mm; readonly to: MarkTo }[];
  /** The ring under the fold on the flat garment. */
  readonly innerRing: Mm;
  /** The ring on the body, by which the band is cut. */
  readonly bodyRing: Mm;
  /** From the neckline to the neck base along the body; null where the ring does not turn inward. */
  readonly neckGap: Mm | null;
};

export type HemBand = Band & {
  /** At this finished length or shorter the band holds a blouse; longer it hangs. */
  readonly holdsBlouseFrom: Mm;
};

export type Bands = { readonly neckband: Neckband; readonly cuff: Band; readonly hemBand: HemBand };

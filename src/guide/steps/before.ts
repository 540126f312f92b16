import type { Garment } from "../../bands/garment.ts";
import { SETTINGS } from "../data/stitches.ts";
import { hasPiece } from "../shapes.ts";
import type { GuideStep } from "../step.ts";
import { count, given, said, type Told, told } from "../words/told.ts";
import { vAllowance } from "./vInsert.ts";

/** For whom it is made, as far as cautions hang on it. */
export type Wearer = { readonly isChild: boolean };

const childCautions: readonly Told[] = [
  said("caution.cord"),
  said("caution.smallParts"),
  said("caution.sleepwear"),
];

/** Cloth, marks, needle and a try: before the first seam. */
export const prepare = (garment: Garment, { isChild }: Wearer): GuideStep => {
  const { allowances, cloth } = garment.choices;
  const isEnlarged = cloth.body.shrinkLength !== 0 || cloth.body.shrinkWidth !== 0;
  return {
    id: "prepare",
    title: said("prepare.title"),
    sentences: [
      said(isEnlarged ? "prepare.grown" : "prepare.washed"),
      told("prepare.turnings", {
        raglan: given(allowances.raglan),
        side: given(allowances.side),
        underarm: given(allowances.underarm),
        bands: given(allowances.bands),
      }),
      ...(hasPiece(garment, "vInsert")
        ? [told("prepare.turningV", { v: given(vAllowance(garment)) })]
        : []),
      said("prepare.notches"),
      told("prepare.needle", {
        needle: count(SETTINGS.needle),
        least: count(SETTINGS.needleLeast),
      }),
      said("prepare.try"),
    ],
    marks: null,
    stitches: [],
    cautions: [
      said("caution.cutter"),
      said("caution.blade"),
      said("caution.machine"),
      ...(isChild ? childCautions : []),
      said("caution.local"),
    ],
    pictures: [],
  };
};

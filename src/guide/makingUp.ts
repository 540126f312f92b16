import type { Garment } from "../bands/garment.ts";
import { bandPicture } from "./pictures/assembled.ts";
import type { GuideStep } from "./step.ts";
import { bandSteps } from "./steps/bands.ts";
import { prepare, type Wearer } from "./steps/before.ts";
import { seamSteps } from "./steps/seams.ts";
import { vInsertSteps } from "./steps/vInsert.ts";
import { said } from "./words/told.ts";

const press = (garment: Garment): GuideStep => ({
  id: "press",
  title: said("press.title"),
  sentences: [said("press.seams"), said("press.rib")],
  marks: null,
  stitches: [],
  cautions: [said("caution.iron"), said("caution.ironDown")],
  pictures: [bandPicture(garment, "finished")],
});

/**
 * The sewing guide of one garment, step by step, with its own numbers and pictures of its own
 * pieces. Lengths are those of the pieces as cut, so that they can be checked at the machine; with
 * cloth that shrinks they are longer than the finished ones. The order is common practice, no
 * source. Pure data: `tell` puts it into a language.
 */
export const makingUp = (
  garment: Garment,
  wearer: Wearer = { isChild: false },
): readonly GuideStep[] => [
  prepare(garment, wearer),
  ...vInsertSteps(garment),
  ...seamSteps(garment),
  ...bandSteps(garment),
  press(garment),
];

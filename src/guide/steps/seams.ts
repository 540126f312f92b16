import type { Garment } from "../../bands/garment.ts";
import type { Seam, SeamId } from "../../drafting/seams.ts";
import { SEAM_MEETS } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import { sidePicture } from "../pictures/assembled.ts";
import { notchesOn } from "../pictures/marks.ts";
import { raglanPicture } from "../pictures/raglan.ts";
import { pieceOf } from "../shapes.ts";
import type { GuideStep } from "../step.ts";
import { SEAM_STITCHES } from "../stitches.ts";
import { given, mm, said, type Told, told, words } from "../words/told.ts";

const seamOf = ({ seams }: Garment, id: SeamId): Seam => {
  const seam = seams.find((one) => one.id === id);
  if (!seam) throw new Error(`The garment has no seam ${id}.`);
  return seam;
};

/** Less than this is not seen at the machine. */
const EASE_TOLD: Mm = 0.05;

/** What must be eased in or shared out, if anything. `names` are those of the seam's two sides. */
const easeSentences = (
  { ease, difference }: Seam,
  names: readonly [Told, Told],
): readonly Told[] => [
  ...(Math.abs(ease) >= EASE_TOLD
    ? [
        told("seam.ease", {
          longer: words(ease > 0 ? names[0] : names[1]),
          ease: mm(Math.abs(ease)),
        }),
      ]
    : []),
  ...(Math.abs(difference) > SEAM_MEETS
    ? [told("seam.apart", { difference: mm(Math.abs(difference)) })]
    : []),
];

const NAMES = {
  "raglan-front": [said("longer.front"), said("longer.sleeve")],
  "raglan-back": [said("longer.back"), said("longer.sleeve")],
  side: [said("longer.front"), said("longer.back")],
  underarm: [said("longer.sleeveFront"), said("longer.sleeveBack")],
} as const;

const CAUTIONS: readonly Told[] = [said("caution.pins"), said("caution.needle")];

const raglan = (garment: Garment, body: "front" | "back"): GuideStep => {
  const id = body === "front" ? "raglan-front" : "raglan-back";
  const seam = seamOf(garment, id);
  const [notch = 0] = notchesOn(pieceOf(garment, body), "raglan", id);
  const step = body === "front" ? "raglanFront" : "raglanBack";
  return {
    id,
    title: said(`${step}.title`),
    sentences: [
      said(`${step}.pin`),
      told("raglan.sew", {
        length: mm(seam.lengthA),
        allowance: given(garment.choices.allowances.raglan),
      }),
      told("raglan.notch", { notch: mm(notch) }),
      ...easeSentences(seam, NAMES[id]),
    ],
    marks: null,
    stitches: SEAM_STITCHES,
    cautions: CAUTIONS,
    pictures: [raglanPicture(garment, body)],
  };
};

const turningSentence = ({ choices }: Garment): Told => {
  const { underarm, side } = choices.allowances;
  return underarm === side
    ? told("side.turning", { allowance: given(side) })
    : told("side.turnings", { underarm: given(underarm), side: given(side) });
};

const underarmAndSide = (garment: Garment): GuideStep => {
  const [underarm, side] = [seamOf(garment, "underarm"), seamOf(garment, "side")];
  return {
    id: "underarm-and-side",
    title: said("side.title"),
    sentences: [
      said("side.fold"),
      told("side.sew", {
        underarm: mm(underarm.lengthA),
        side: mm(side.lengthA),
        whole: mm(underarm.lengthA + side.lengthA),
      }),
      turningSentence(garment),
      said("side.cross"),
      ...easeSentences(underarm, NAMES.underarm),
      ...easeSentences(side, NAMES.side),
    ],
    marks: null,
    stitches: SEAM_STITCHES,
    cautions: CAUTIONS,
    pictures: [sidePicture(garment)],
  };
};

/** Raglan seams, front then back, then underarm and side in one. */
export const seamSteps = (garment: Garment): readonly GuideStep[] => [
  raglan(garment, "front"),
  raglan(garment, "back"),
  underarmAndSide(garment),
];

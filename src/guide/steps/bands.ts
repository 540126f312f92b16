import type { Band } from "../../bands/band.ts";
import type { Garment } from "../../bands/garment.ts";
import type { Mm } from "../../geometry/units.ts";
import { cuffMarks, halfWayMark, hemMarks, type MarkTable, neckbandMarks } from "../bandMarks.ts";
import { SETTINGS } from "../data/stitches.ts";
import { bandPicture } from "../pictures/assembled.ts";
import { cuffMarksPicture, hemMarksPicture, neckbandMarksPicture } from "../pictures/bandMarks.ts";
import { neckOpeningPicture } from "../pictures/neckOpening.ts";
import type { GuideStep } from "../step.ts";
import { NECKBAND_STITCHES, SEAM_STITCHES } from "../stitches.ts";
import { given, mm, said, share, type Told, told } from "../words/told.ts";

/** Less than this is not seen at the machine. */
const TOLD_FROM: Mm = 0.05;
const CAUTIONS: readonly Told[] = [said("caution.pins"), said("caution.needle")];

/** Joined into a ring and folded. */
const ringSentences = (band: Band, { choices }: Garment): readonly Told[] => [
  told("band.ring", {
    allowance: given(choices.allowances.bands),
    length: mm(band.finishedLength),
  }),
  told("band.fold", { depth: mm(band.finishedDepth) }),
];

/** How much the band is stretched in all, or eased in. */
const stretchSentence = ({ bandLength, openingLength }: MarkTable): Told => {
  const by = openingLength - bandLength;
  if (Math.abs(by) < TOLD_FROM) return said("band.flat");
  return by > 0
    ? told("band.stretch", { by: mm(by), stretch: share(by / bandLength) })
    : told("band.ease", { by: mm(-by) });
};

const washSentences = (band: Band, { openingLength }: MarkTable): readonly Told[] =>
  Math.abs(openingLength - band.opening) < TOLD_FROM
    ? []
    : [told("band.wash", { cut: mm(openingLength), finished: mm(band.opening) })];

const sewSentences = (band: Band, marks: MarkTable, { choices }: Garment): readonly Told[] => [
  told("band.sew", { allowance: given(choices.allowances.bands) }),
  stretchSentence(marks),
  ...washSentences(band, marks),
];

const HALF_WAY = {
  front: "neckband.halfWayFront",
  back: "neckband.halfWayBack",
  sleeve: "neckband.halfWaySleeve",
} as const;

/** Shares as a maker reads them; where all read alike nothing is said of their difference. */
const unequalSentences = ({ rows }: MarkTable): readonly Told[] => {
  const stretches = rows.map(({ stretch }) => stretch);
  const [least, most] = [Math.min(...stretches), Math.max(...stretches)];
  return Math.round(most * 100) === Math.round(least * 100)
    ? []
    : [told("neckband.unequal", { least: share(least), most: share(most) })];
};

const neckband = (garment: Garment): GuideStep => {
  const { neckband: band } = garment.bands;
  const marks = neckbandMarks(garment);
  const [, a, b, c, d] = marks.rows.map(({ onBand }) => mm(onBand));
  const { piece, from } = halfWayMark(garment);
  return {
    id: "neckband",
    title: said("neckband.title"),
    sentences: [
      ...ringSentences(band, garment),
      ...(a && b && c && d ? [told("neckband.marks", { a, b, c, d })] : []),
      told(HALF_WAY[piece], { from: mm(from) }),
      ...sewSentences(band, marks, garment),
      ...unequalSentences(marks),
      told("neckband.topstitch", { aside: given(SETTINGS.topstitch) }),
    ],
    marks,
    stitches: NECKBAND_STITCHES,
    cautions: CAUTIONS,
    pictures: [
      bandPicture(garment, "neckband"),
      neckOpeningPicture(garment),
      neckbandMarksPicture(garment),
    ],
  };
};

const cuffs = (garment: Garment): GuideStep => {
  const { cuff: band } = garment.bands;
  const marks = cuffMarks(garment);
  return {
    id: "cuffs",
    title: said("cuffs.title"),
    sentences: [
      ...ringSentences(band, garment),
      told("cuffs.quarters", {
        quarter: mm(marks.bandLength / 4),
        opening: mm(marks.openingLength / 4),
      }),
      said("cuffs.seam"),
      ...sewSentences(band, marks, garment),
    ],
    marks,
    stitches: SEAM_STITCHES,
    cautions: CAUTIONS,
    pictures: [bandPicture(garment, "cuffs"), cuffMarksPicture(garment)],
  };
};

const hemBand = (garment: Garment): GuideStep => {
  const { hemBand: band } = garment.bands;
  const marks = hemMarks(garment);
  const [, front = 0, side = 0, back = 0] = band.quarterMarks;
  const holds = mm(band.holdsBlouseFrom);
  const hangs = band.finishedLength > band.holdsBlouseFrom;
  return {
    id: "hem-band",
    title: said("hemBand.title"),
    sentences: [
      ...ringSentences(band, garment),
      told("hemBand.marks", { front: mm(front), side: mm(side), back: mm(back) }),
      said("hemBand.seam"),
      ...sewSentences(band, marks, garment),
      told(hangs ? "hemBand.hangs" : "hemBand.holds", { holds }),
    ],
    marks,
    stitches: SEAM_STITCHES,
    cautions: CAUTIONS,
    pictures: [bandPicture(garment, "hemBand"), hemMarksPicture(garment)],
  };
};

/** Neckband, cuffs and hem band. */
export const bandSteps = (garment: Garment): readonly GuideStep[] => [
  neckband(garment),
  cuffs(garment),
  hemBand(garment),
];

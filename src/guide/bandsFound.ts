import type { Bands } from "../bands/band.ts";
import { cutCuff, cutHemBand } from "../bands/cuffAndHem.ts";
import type { Garment } from "../bands/garment.ts";
import { cutNeckband, neckbandBounds } from "../bands/neckband.ts";
import { wornLength } from "../bands/worn.ts";
import { LIMITS } from "../checks/data/limits.ts";
import type { Choices } from "../drafting/choices.ts";
import type { Mm } from "../geometry/units.ts";
import { TEST } from "./data/tableTest.ts";
import type { RibFound } from "./readings.ts";
import { mm, said, share, type Told, told } from "./words/told.ts";

/** What a test of the rib changes. */
export type BandsFound = {
  /** The maker's choices with the rib as it was found. */
  readonly choices: Choices;
  /** The bands cut for that rib. */
  readonly bands: Bands;
  /** What was found and what it changes, in order. */
  readonly sentences: readonly Told[];
};

const bandsFor = (garment: Garment, choices: Choices): Bands => {
  const { ring, measures, finished } = garment;
  return {
    neckband: cutNeckband(ring, measures, choices).neckband,
    cuff: cutCuff(finished.sleeve.wrist.length, measures, choices),
    hemBand: cutHemBand(
      { front: finished.front.hem.length, back: finished.back.hem.length },
      measures,
      choices,
    ),
  };
};

const foundSentences = ({ stretch, recovery, recoveryAfterMinute }: RibFound): readonly Told[] => [
  told("test.found.stretch", { stretch: share(stretch) }),
  told("test.found.recovery", { recovery: share(recovery) }),
  ...(recoveryAfterMinute !== null && recoveryAfterMinute < TEST.minute
    ? [told("test.found.minute", { recovery: share(recoveryAfterMinute) })]
    : []),
];

/** Less than this is the same length on cloth. */
const SAME: Mm = 0.05;

/** Whether this rib's own slack bears the band, and what to do where it does not (FT, method 5.2). */
const slackSentences = (
  garment: Garment,
  { choices, bands }: Omit<BandsFound, "sentences">,
  slack: number | null,
): readonly Told[] => {
  if (slack === null) return [];
  const { rib } = choices.cloth;
  const { head } = garment.measures;
  const { finishedLength, bodyRing } = bands.neckband;
  const { target, forHead, forSewing } = neckbandBounds(garment.ring.opening, bodyRing, head, rib);
  const bears = told("test.found.slack", { slack: share(slack), limit: share(TEST.slack) });
  if (wornLength(finishedLength, head, rib) * (1 - slack) <= bodyRing + SAME) {
    return slack < TEST.slack && finishedLength <= target + SAME
      ? [bears, said("test.found.target")]
      : [bears];
  }
  return [
    bears,
    target + SAME >= Math.max(forHead, forSewing)
      ? told("test.found.slackLess", { target: mm(target) })
      : said("test.found.noTarget"),
  ];
};

const neckbandSentence = (garment: Garment, { neckband }: Bands): Told => {
  const [before, after] = [garment.bands.neckband.finishedLength, neckband.finishedLength];
  if (garment.choices.bands.neckband.ratio !== null) {
    return told("test.change.fixed", { after: mm(after) });
  }
  return Math.abs(after - before) < SAME
    ? told("test.change.same", { after: mm(after) })
    : told("test.change.neckband", {
        before: mm(before),
        after: mm(after),
        cut: mm(neckband.cutLength),
      });
};

const passSentences = (
  { neckband, cuff, hemBand }: Bands,
  { stretch }: RibFound,
): readonly Told[] => {
  const most = Math.max(neckband.stretchToPass, cuff.stretchToPass, hemBand.stretchToPass);
  return [
    told("test.change.pass", {
      neckband: share(neckband.stretchToPass),
      cuff: share(cuff.stretchToPass),
      hemBand: share(hemBand.stretchToPass),
      stretch: share(stretch),
    }),
    ...(most > LIMITS.passes * stretch ? [said("test.change.tight")] : []),
  ];
};

/** How the bands change with the rib that the table test found. */
export const bandsForRib = (garment: Garment, rib: RibFound): BandsFound => {
  const { stretch, recovery } = rib;
  const { choices: before } = garment;
  const choices: Choices = {
    ...before,
    cloth: { ...before.cloth, rib: { stretch, recovery } },
  };
  const found = { choices, bands: bandsFor(garment, choices) };
  const [blouse, blouseNow] = [
    garment.bands.hemBand.holdsBlouseFrom,
    found.bands.hemBand.holdsBlouseFrom,
  ];
  return {
    ...found,
    sentences: [
      ...foundSentences(rib),
      neckbandSentence(garment, found.bands),
      ...slackSentences(garment, found, rib.slack),
      told("test.change.hem", { before: mm(blouse), after: mm(blouseNow) }),
      ...passSentences(found.bands, rib),
    ],
  };
};

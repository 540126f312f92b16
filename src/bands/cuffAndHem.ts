import type { Choices } from "../drafting/choices.ts";
import type { Measures } from "../drafting/measures.ts";
import type { Mm } from "../geometry/units.ts";
import type { Band, HemBand } from "./band.ts";
import { BAND } from "./data/bandConstants.ts";
import { roundOf } from "./shortBands.ts";
import { pressureOn, wornLength } from "./worn.ts";

/** What a plain band is worked from. In mm. */
type BandPlan = {
  readonly around: Band["around"];
  readonly opening: Mm;
  readonly finished: Mm;
  readonly cutHeight: Mm;
  /** What passes through when it is put on, and what it then lies on. */
  readonly passed: Mm;
  readonly girth: Mm;
  readonly quarterMarks: Band["quarterMarks"];
};

const plainBand = (plan: BandPlan, choices: Choices): Band => {
  const { finished, opening, cutHeight, passed, girth } = plan;
  const { rib } = choices.cloth;
  const allowance = choices.allowances.bands;
  return {
    around: plan.around,
    opening,
    finishedLength: finished,
    cutLength: finished + 2 * allowance,
    cutHeight,
    finishedDepth: cutHeight / 2 - allowance,
    ratio: finished / opening,
    stretchToSew: opening / finished - 1,
    stretchToPass: passed / finished - 1,
    quarterMarks: plan.quarterMarks,
    pressure: pressureOn(girth, wornLength(finished, passed, rib), rib),
  };
};

/** The cuff: as long as the wrist and its ease (method 5.3). `opening` is the wrist edge, in mm. */
export const cutCuff = (opening: Mm, body: Measures, choices: Choices): Band => {
  const { cutHeight, ease } = choices.bands.cuff;
  const finished = roundOf(body.wrist, ease);
  const quarter = finished / 4;
  return plainBand(
    {
      around: "wrist",
      opening,
      finished,
      cutHeight,
      passed: body.hand,
      girth: body.wrist,
      quarterMarks: [0, quarter, 2 * quarter, 3 * quarter],
    },
    choices,
  );
};

/** The girth that a hem band must pass on its way to the hip. */
export const hemPasses = (body: Measures): Mm => Math.max(body.hip, body.chest);

/**
 * The hem band: as long as the hip and its ease, its seam at a side (method 5.3). `front` and
 * `back` are the lengths of the half hems, in mm.
 */
export const cutHemBand = (
  { front, back }: { readonly front: Mm; readonly back: Mm },
  body: Measures,
  choices: Choices,
): HemBand => {
  const { cutHeight, ease } = choices.bands.hemBand;
  const finished = roundOf(body.hip, ease);
  const opening = 2 * (front + back);
  const share = finished / opening;
  const band = plainBand(
    {
      around: "hem",
      opening,
      finished,
      cutHeight,
      passed: hemPasses(body),
      girth: body.hip,
      quarterMarks: [0, share * front, share * 2 * front, share * (2 * front + back)],
    },
    choices,
  );
  return { ...band, holdsBlouseFrom: body.hip * (1 - BAND.blouse * choices.cloth.rib.stretch) };
};

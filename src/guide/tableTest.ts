import type { Garment } from "../bands/garment.ts";
import type { Mm } from "../geometry/units.ts";
import { type PrintedArc, printedArc } from "./arc.ts";
import { TEST } from "./data/tableTest.ts";
import { count, given, mm, number, said, type Told, told } from "./words/told.ts";

/** One reading of the table test. */
type TestStep = { readonly title: Told; readonly sentences: readonly Told[] };

/** The test of the rib, as data: what is needed, three readings, cautions, the arc to print. */
export type TableTest = {
  readonly title: Told;
  readonly need: Told;
  readonly steps: readonly TestStep[];
  readonly cautions: readonly Told[];
  readonly arc: PrintedArc;
  readonly arcTitle: Told;
};

const GRAMS = 1000;

/** What hangs on the scrap, in grams, for a folded width in mm. */
export const loadOn = (width: Mm): number => (GRAMS * TEST.loadPerMm * width) / TEST.gravity;

/** To which length 100 mm are stretched when the head passes the neckband. */
export const stretchOfUse = ({ bands }: Pick<Garment, "bands">): Mm =>
  TEST.marked * (1 + bands.neckband.stretchToPass);

const stretchStep = (width: Mm): TestStep => {
  const grams = loadOn(width);
  return {
    title: said("test.stretch.title"),
    sentences: [
      told("test.stretch.mark", { marked: given(TEST.marked) }),
      told("test.stretch.load", {
        grams: count(grams),
        perMm: count(loadOn(1)),
        width: given(width),
      }),
      // A millilitre of water weighs a gram, within half of one part in a hundred at room heat.
      told("test.stretch.bottle", { millilitres: count(grams) }),
      said("test.stretch.read"),
    ],
  };
};

const recoveryStep = (garment: Garment): TestStep => ({
  title: said("test.recovery.title"),
  sentences: [
    told("test.recovery.pull", { stretched: mm(stretchOfUse(garment)) }),
    said("test.recovery.read"),
  ],
});

const slackStep: TestStep = {
  title: said("test.slack.title"),
  sentences: [
    said("test.slack.pin"),
    told("test.slack.down", {
      most: number(TEST.ticks.most),
      by: number(TEST.ticks.step),
    }),
    said("test.slack.steam"),
  ],
};

const arcTitle = ({ radius }: PrintedArc, opening: Mm): Told =>
  radius === null
    ? said("test.arcStraight")
    : told("test.arc", { radius: mm(radius), opening: mm(opening) });

/** The table test of this garment's rib: stretch, recovery, slack, and the arc to print. */
export const tableTest = (garment: Garment): TableTest => {
  const { neckband } = garment.bands;
  const arc = printedArc(garment);
  return {
    title: said("test.title"),
    need: told("test.need", { long: given(TEST.scrap), height: given(neckband.cutHeight) }),
    // The scrap is folded as the band will be: half as wide as it is cut high.
    steps: [stretchStep(neckband.cutHeight / 2), recoveryStep(garment), slackStep],
    cautions: [said("test.caution.bottle"), said("test.caution.pins"), said("caution.iron")],
    arc,
    arcTitle: arcTitle(arc, garment.ring.opening),
  };
};

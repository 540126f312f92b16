import type { Garment } from "../bands/garment.ts";
import { asMm } from "../drafting/words.ts";
import { startOf } from "../geometry/path.ts";
import type { Mm } from "../geometry/units.ts";
import type { Check } from "./check.ts";
import { LIMITS } from "./data/limits.ts";
import { checkOf, verdictOf, within } from "./verdict.ts";

type Range = {
  readonly from: Mm;
  readonly to: Mm;
  readonly attendFrom: Mm;
  readonly attendTo: Mm;
};

/** One girth of the garment over the body's: which, how much, and which choice changes it. */
type Ease = {
  readonly id: string;
  readonly garment: string;
  readonly girth: Mm;
  readonly body: Mm;
  readonly more: string;
  readonly less: string;
};

const easeCheck = (ease: Ease, range: Range): Check => {
  const value = ease.girth - ease.body;
  const { from, to, attendFrom, attendTo } = range;
  return checkOf(
    {
      id: ease.id,
      verdict: verdictOf(within(value, from, to), within(value, attendFrom, attendTo)),
      value,
      limit: from,
      unit: "mm",
    },
    {
      measured: `${ease.garment} ${asMm(ease.girth)}, ${asMm(Math.abs(value))} ${value < 0 ? "less" : "more"} than the body's ${asMm(ease.body)}; the range is ${asMm(from)} to ${asMm(to)}.`,
      change: value < from ? ease.more : ease.less,
    },
  );
};

/** The garment's girths over the body's (method 6). Lengths in mm. */
export const easeFits = ({ finished, measures, choices }: Garment): readonly Check[] => {
  const { front, back, sleeve } = finished;
  const chest = 2 * (startOf(front.side.path).x + startOf(back.side.path).x);
  const arm = startOf(sleeve.underarmFront.path).x - startOf(sleeve.raglanBack.path).x;
  const attendFrom = -LIMITS.hipStretch * choices.cloth.body.stretch * measures.hip;
  return [
    easeCheck(
      {
        id: "chest-ease",
        garment: "Round the chest the garment is",
        girth: chest,
        body: measures.chest,
        more: "Give the chest more ease, or move the side seams further out.",
        less: "Give the chest less ease, or move the side seams by less.",
      },
      LIMITS.chestEase,
    ),
    easeCheck(
      {
        id: "hip-ease",
        garment: "Round the hem the garment is",
        girth: 2 * (front.hem.length + back.hem.length),
        body: measures.hip,
        more: "Keep the shaped side seams, or give the chest more ease.",
        less: "Give the chest less ease, or move the side seams by less.",
      },
      { ...LIMITS.hipEase, attendFrom },
    ),
    easeCheck(
      {
        id: "upper-arm-ease",
        garment: "Round the upper arm the sleeve is",
        girth: arm,
        body: measures.upperArm,
        more: "Give the upper arm more ease.",
        less: "Give the upper arm less ease, or move the side seams by less.",
      },
      LIMITS.upperArmEase,
    ),
  ];
};

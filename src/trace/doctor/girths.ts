import type { Verdict } from "../../checks/check.ts";
import { LIMITS } from "../../checks/data/limits.ts";
import { verdictOf, within } from "../../checks/verdict.ts";
import type { Measures } from "../../drafting/measures.ts";
import type { Block } from "../../drafting/piece.ts";
import { asMm } from "../../drafting/words.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, startOf } from "../../geometry/path.ts";
import type { Mm } from "../../geometry/units.ts";

/** A girth of the block beside the body's. */
export type BlockGirth = {
  readonly id: "chest" | "hem" | "sleeve" | "wrist" | "neckline";
  readonly girth: Mm;
  /** What it is compared with, where the body is known. */
  readonly body: Mm | null;
  readonly ease: Mm | null;
  readonly verdict: Verdict | null;
  readonly message: string;
};

type Range = {
  readonly from: Mm;
  readonly to: Mm;
  readonly attendFrom: Mm;
  readonly attendTo: Mm;
};

/** The wrist of a block is wider than the hand; a neckline lies outside the neck base. Ours. */
const WRIST: Range = { from: 20, to: 160, attendFrom: 0, attendTo: 240 };
const NECKLINE: Range = { from: 60, to: 320, attendFrom: 0, attendTo: 450 };
const HEM: Range = { ...LIMITS.hipEase, attendFrom: -20 };

const compared = (
  id: BlockGirth["id"],
  what: string,
  girth: Mm,
  to: { readonly body: Mm; readonly named: string; readonly range: Range } | null,
): BlockGirth => {
  if (!to) {
    const message = `${what} measures ${asMm(girth)}.`;
    return { id, girth, body: null, ease: null, verdict: null, message };
  }
  const ease = girth - to.body;
  const { from, attendFrom, attendTo } = to.range;
  const verdict = verdictOf(within(ease, from, to.range.to), within(ease, attendFrom, attendTo));
  const message = `${what} measures ${asMm(girth)}, ${asMm(Math.abs(ease))} ${ease < 0 ? "less" : "more"} than ${to.named} of ${asMm(to.body)}; ${asMm(from)} to ${asMm(to.range.to)} more is usual.`;
  return { id, girth, body: to.body, ease, verdict, message };
};

/** The block's girths in mm, all the way round, beside the body's where they are known. */
export const blockGirths = (block: Block, measures: Measures | null): readonly BlockGirth[] => {
  const { front, back, sleeve } = block;
  const chest = 2 * (endOf(front.raglan).x + endOf(back.raglan).x);
  const hem = 2 * (lengthOf(front.hem) + lengthOf(back.hem));
  const arm = startOf(sleeve.underarmFront).x - endOf(sleeve.underarmBack).x;
  const neckline =
    2 * (lengthOf(front.neckline) + lengthOf(back.neckline) + lengthOf(sleeve.neckline));
  const to = (body: (m: Measures) => Mm, named: string, range: Range) =>
    measures && { body: body(measures), named, range };
  return [
    compared(
      "chest",
      "Round the chest the block",
      chest,
      to((m) => m.chest, "the chest", LIMITS.chestEase),
    ),
    compared(
      "hem",
      "Round the hem the block",
      hem,
      to((m) => m.hip, "the hip", HEM),
    ),
    compared(
      "sleeve",
      "The sleeve at the underarm",
      arm,
      to((m) => m.upperArm, "the upper arm", LIMITS.upperArmEase),
    ),
    compared(
      "wrist",
      "The sleeve at the wrist",
      lengthOf(sleeve.wrist),
      to((m) => m.wrist, "the wrist", WRIST),
    ),
    compared(
      "neckline",
      "Round the neckline the block",
      neckline,
      to((m) => m.neckBase, "the neck", NECKLINE),
    ),
  ];
};

import type { Garment } from "../bands/garment.ts";
import type { Doubt } from "../drafting/doubts.ts";
import { bandsFit } from "./bandsFit.ts";
import type { Check, Verdict } from "./check.ts";
import { easeFits } from "./easeFits.ts";
import { edgesRunOn } from "./edgesRunOn.ts";
import { allowanceFolds, measuresDoubted, railsHeld } from "./held.ts";
import { neckbandFits } from "./neckbandFits.ts";
import { necklineCrosses } from "./necklineCrosses.ts";
import { seamsMeet } from "./seamsMeet.ts";

/** Every check of a garment, sound ones too, in the order in which they are read (method 6). */
export const checkGarment = (garment: Garment, doubts: readonly Doubt[]): readonly Check[] => [
  ...seamsMeet(garment),
  ...edgesRunOn(garment),
  ...easeFits(garment),
  ...neckbandFits(garment),
  ...bandsFit(garment),
  ...necklineCrosses(garment),
  ...allowanceFolds(garment),
  ...railsHeld(garment),
  ...measuresDoubted(doubts),
];

/** The worst of a body's checks. */
export const worstOf = (checks: readonly Check[]): Verdict =>
  checks.some(({ verdict }) => verdict === "stop")
    ? "stop"
    : checks.some(({ verdict }) => verdict === "attend")
      ? "attend"
      : "sound";

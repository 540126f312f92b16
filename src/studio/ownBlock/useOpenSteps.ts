import { tapeOf } from "./blockNow.ts";
import type { OwnBlock } from "./ownBlock.ts";
import { STEPS, type Step, useOwn } from "./state.ts";

/** The steps that can be turned to: the tape has no edges to name, and no turnings. */
export const openSteps = ({ way, pieces, drawing, tape }: OwnBlock): readonly Step[] => {
  if (way === null && !pieces.front && !pieces.back && !pieces.sleeve) return ["way"];
  if (way === "tape") {
    return tapeOf(tape) ? ["way", "pieces", "doctor"] : ["way", "pieces"];
  }
  const any = pieces.front ?? pieces.back ?? pieces.sleeve;
  const all = pieces.front && pieces.back && pieces.sleeve;
  return STEPS.filter((step) => {
    if (way === "drawing" && drawing && !drawing.isSized && step !== "way" && step !== "pieces") {
      return false;
    }
    if (step === "edges") return Boolean(any);
    return step === "way" || step === "pieces" || Boolean(all);
  });
};

/** The step that is shown: after an undo the one in hand may be closed, and the last open one is. */
export const useStepInHand = (): Step => {
  const open = useOpenSteps();
  const step = useOwn((s) => s.step);
  const before = STEPS.slice(0, STEPS.indexOf(step) + 1).filter((name) => open.includes(name));
  return before.at(-1) ?? "way";
};

export const useOpenSteps = (): readonly Step[] => openSteps(useOwn((s) => s.history.present));

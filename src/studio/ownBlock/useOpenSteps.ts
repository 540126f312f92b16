import type { OwnBlock } from "./ownBlock.ts";
import { STEPS, type Step, useOwn } from "./state.ts";

/** The steps that can be turned to: the tape has no edges to name, and no turnings. */
export const openSteps = ({ way, pieces }: OwnBlock): readonly Step[] => {
  if (way === null) return ["way"];
  if (way === "tape") return ["way", "pieces", "doctor"];
  const any = pieces.front ?? pieces.back ?? pieces.sleeve;
  const all = pieces.front && pieces.back && pieces.sleeve;
  return STEPS.filter((step) => {
    if (step === "edges") return Boolean(any);
    return step === "way" || step === "pieces" || Boolean(all);
  });
};

export const useOpenSteps = (): readonly Step[] => openSteps(useOwn((s) => s.history.present));

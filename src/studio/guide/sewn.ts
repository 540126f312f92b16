import type { StepId } from "../../guide/step.ts";
import { heldBody, type Work } from "../../project/work.ts";

/** Beside the steps of a body: the garment is for a child. */
const CHILD = "for-a-child";

/** Steps as the first handbooks kept them, by number. */
const BY_NUMBER: Readonly<Record<string, StepId>> = {
  "1": "stay-v",
  "2": "v-insert",
  "3": "raglan-front",
  "4": "raglan-back",
  "5": "underarm-and-side",
  "6": "neckband",
  "7": "cuffs",
  "8": "hem-band",
};

const NONE: readonly string[] = [];

const marksOf = (work: Work): readonly string[] =>
  (work.sewn[heldBody(work).id] ?? NONE).map((mark) => BY_NUMBER[mark] ?? mark);

const withMark = (work: Work, mark: string, on: boolean): Work => {
  const others = marksOf(work).filter((one) => one !== mark);
  return { ...work, sewn: { ...work.sewn, [heldBody(work).id]: on ? [...others, mark] : others } };
};

/** Whether a step is sewn, for the body on the table. */
export const isSewn = (work: Work, step: StepId): boolean => marksOf(work).includes(step);
export const withSewn = (work: Work, step: StepId, on: boolean): Work => withMark(work, step, on);

export const isForChild = (work: Work): boolean => marksOf(work).includes(CHILD);
export const withForChild = (work: Work, on: boolean): Work => withMark(work, CHILD, on);

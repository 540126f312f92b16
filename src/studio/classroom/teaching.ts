import { create } from "zustand";
import type { Choices } from "../../drafting/choices.ts";
import { heldBody, type Work, type WorkBody } from "../../project/work.ts";
import { type FieldId, fieldOf } from "../fields/fields.ts";
import { change } from "../state/changes.ts";
import { sameValue } from "../state/sameValue.ts";
import { useStudio, work } from "../state/store.ts";
import { say } from "../words/say.ts";

/** What the class is shown, beside the work itself. Nothing of it is kept with the work. */
export type Teaching = {
  /** The step-through stands in place of the studio. */
  readonly open: boolean;
  /** The class's own measures; null: those of the body on the table. */
  readonly pupil: WorkBody | null;
  /** With the numbers that the teacher changed before the class; null: none. */
  readonly choices: Choices | null;
  /** It is asked whether to keep those numbers. */
  readonly asksToKeep: boolean;
};

export const useTeaching = create<Teaching>()(() => ({
  open: false,
  pupil: null,
  choices: null,
  asksToKeep: false,
}));

const teaching = (): Teaching => useTeaching.getState();
const put = (part: Partial<Teaching>): void => useTeaching.setState(part);

/** The work as the class sees it: on its own measures, with the numbers as they were changed. */
const asTaught = (now: Work, { pupil, choices }: Teaching): Work => ({
  ...now,
  bodies: [pupil ?? heldBody(now)],
  held: 0,
  choices: choices ?? now.choices,
  // A block that was brought is the block of the body that it was brought for.
  useBlock: pupil === null && now.useBlock,
});

export const taughtWork = (): Work => asTaught(work(), teaching());
export const useTaughtWork = (): Work => {
  const now = useStudio((s) => s.history.present);
  return asTaught(now, useTeaching());
};

/** A number changed before the class: the drawing, the reason and the questions follow. */
export const setTaught = (id: FieldId, value: number): void =>
  put({ choices: fieldOf(id).write(taughtWork(), value).choices });

export const teachOn = (pupil: WorkBody | null): void => put({ pupil });
export const isTeaching = (): boolean => teaching().open;
export const asksToKeep = (): boolean => teaching().asksToKeep;
export const showInClass = (): void => put({ open: true });

/** Full screen is left with the class. */
const leave = (): void => {
  put({ open: false, choices: null, asksToKeep: false });
  if (document.fullscreenElement) document.exitFullscreen().catch(() => undefined);
};

/** Numbers that were changed are not lost unasked. */
export const leaveClass = (): void => {
  const { choices } = teaching();
  if (choices === null || sameValue(choices, work().choices)) leave();
  else put({ asksToKeep: true });
};

export const stayInClass = (): void => put({ asksToKeep: false });
export const leaveAsBefore = leave;

/** One step of undo, whatever was changed. */
export const keepAndLeave = (): void => {
  const { choices } = teaching();
  if (choices) change({ ...work(), choices }, () => say("class.kept"));
  leave();
};

/** Where the browser has it: a page that fills the projector. */
export const turnFullScreen = (): void => {
  const turned = document.fullscreenElement
    ? document.exitFullscreen()
    : document.documentElement.requestFullscreen?.();
  turned?.catch(() => undefined);
};

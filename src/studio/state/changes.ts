import { heldBody, isBlockOfBody, type Work } from "../../project/work.ts";
import { type FieldId, fieldOf, isChoice } from "../fields/fields.ts";
import { measureOf } from "../fields/measureFields.ts";
import { say } from "../words/say.ts";
import { changed, letGo, redone, undone } from "./history.ts";
import { print, printField } from "./print.ts";
import { put, studio, work } from "./store.ts";

/** One named step; with the same gesture as the last it becomes part of it. */
export const change = (to: Work, name: (before: Work) => string, gesture?: string): void => {
  const { history } = studio();
  const next = changed(history, { to, name, ...(gesture === undefined ? {} : { gesture }) });
  if (next !== history) put({ history: next });
};

const shown = (id: FieldId, value: number | null): string =>
  value === null ? say("notGiven") : printField(id, value, print());

/** A number of the work, changed and named: "Hem raised by: 50.8 mm to 60 mm". */
export const setNumber = (id: FieldId, value: number | null, gesture?: string): void => {
  const field = fieldOf(id);
  const before = work();
  if (field.read(before) === value) return;
  const label = labelOf(id);
  change(
    field.write(before, value),
    (was) => say("step.number", { label, from: shown(id, field.read(was)), to: shown(id, value) }),
    gesture,
  );
};

/** The number's name apart from its sentence. */
export const labelOf = (id: FieldId): string =>
  isChoice(id) ? say(`label.${id}`) : say(`name.${measureOf(id)}`);

export const undo = (): void => put({ history: undone(studio().history), refused: {} });
export const redo = (): void => put({ history: redone(studio().history), refused: {} });
export const dropGesture = (gesture: string): void =>
  put({ history: letGo(studio().history, gesture) });

/** That a body is drafted where the block brought is another's; null where that is not so. */
export const otherBodySentence = (of: Work): string | null => {
  const { block, useBlock } = of;
  if (!block || !useBlock || isBlockOfBody(of)) return null;
  const owner = of.bodies.find(({ id }) => id === block.body);
  const body = owner && owner.name !== "" ? owner.name : (block.body ?? "");
  return say("block.other", { name: block.name, body, who: bodyName(of) });
};

/** Another body on the table. */
export const turnBody = (by: number): void => {
  const now = work();
  const all = now.bodies.length;
  const held = (now.held + by + all) % all;
  if (held !== now.held) {
    put({ refused: {} });
    change({ ...now, held }, () => say("step.body"));
    const sentence = otherBodySentence(work());
    if (sentence !== null) put({ notice: { text: sentence, urgent: false } });
  }
};

export const bodyName = (of: Work): string => {
  const { name } = heldBody(of);
  return name === "" ? say("work.noName") : name;
};

import { type FieldId, fieldOf } from "../fields/fields.ts";
import { snapped } from "../units/unit.ts";
import { dropGesture, setNumber } from "./changes.ts";
import { rangeNow } from "./refusing.ts";
import { put, studio, work } from "./store.ts";

/** One pull on a pin: which number, what it was, and the step of undo that it becomes. */
export type Pull = { readonly field: FieldId; readonly from: number; readonly gesture: string };

let pulls = 0;

export const takeHold = (field: FieldId): Pull | null => {
  const from = fieldOf(field).read(work());
  if (from === null) return null;
  put({ dragging: true, lit: field });
  return { field, from, gesture: `pull-${++pulls}` };
};

/** The number where the pin is now: at a round value of the unit, and within its limits. */
export const pullTo = ({ field, from, gesture }: Pull, by: number, fine: boolean): void => {
  const { least, most } = rangeNow(field, work());
  const rest = snapped(from + by, studio().unit, fine);
  setNumber(field, Math.min(most, Math.max(least, rest)), gesture);
};

/** The pin keeps the focus, and its sentence stays lit, until something else has it. */
export const letPinGo = (): void => put({ dragging: false });

export const putPinBack = ({ gesture }: Pull): void => {
  dropGesture(gesture);
  letPinGo();
};

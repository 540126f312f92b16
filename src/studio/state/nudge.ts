import { type FieldId, fieldOf } from "../fields/fields.ts";
import { STEPS, type Unit } from "../units/unit.ts";
import { setNumber } from "./changes.ts";
import { rangeNow } from "./refusing.ts";
import { studio, work } from "./store.ts";

export type Reach = "step" | "fine" | "leap";

/** Shares go in hundredths; a ratio too. */
const SHARE_STEPS: Readonly<Record<Reach, number>> = { step: 0.01, fine: 0.001, leap: 0.1 };
/** Takes off what adding decimals leaves. */
const DUST = 1e6;

const stepOf = (id: FieldId, reach: Reach, unit: Unit): number =>
  fieldOf(id).kind === "length" ? STEPS[unit][reach] : SHARE_STEPS[reach];

/** The number moved by one step of its unit, held to what it may be. */
export const nudged = (id: FieldId, by: 1 | -1, reach: Reach, gesture: string): void => {
  const now = work();
  const value = fieldOf(id).read(now);
  if (value === null) return;
  const { least, most } = rangeNow(id, now);
  const wanted = value + by * stepOf(id, reach, studio().unit);
  const clean = Math.round(wanted * DUST) / DUST;
  setNumber(id, Math.min(most, Math.max(least, clean)), gesture);
};

import type { Work } from "../../project/work.ts";
import { type FieldId, fieldOf } from "../fields/fields.ts";
import { STEPS, type Unit } from "../units/unit.ts";
import { setNumber } from "./changes.ts";
import { rangeNow } from "./refusing.ts";
import { studio, work } from "./store.ts";

type Reach = "step" | "fine" | "leap";
export type Way = { readonly by: 1 | -1; readonly reach: Reach };

/** What arrow and page keys do in a number; with Shift by less. */
export const wayOfKey = (key: string, isShift: boolean): Way | undefined => {
  const way = Object.hasOwn(WAYS, key) ? WAYS[key] : undefined;
  return way && isShift ? { ...way, reach: "fine" } : way;
};
const WAYS: Readonly<Record<string, Way>> = {
  ArrowUp: { by: 1, reach: "step" },
  ArrowDown: { by: -1, reach: "step" },
  PageUp: { by: 1, reach: "leap" },
  PageDown: { by: -1, reach: "leap" },
};

/** Shares go in hundredths; a ratio too. */
const SHARE_STEPS: Readonly<Record<Reach, number>> = { step: 0.01, fine: 0.001, leap: 0.1 };
/** Takes off what adding decimals leaves. */
const DUST = 1e6;

/** A printed square is read to a tenth. */
const READ_STEPS: Readonly<Record<Reach, number>> = { step: 0.1, fine: 0.05, leap: 1 };

const stepOf = (id: FieldId, reach: Reach, unit: Unit): number => {
  const { kind } = fieldOf(id);
  if (kind === "length") return STEPS[unit][reach];
  return (kind === "mm" ? READ_STEPS : SHARE_STEPS)[reach];
};

/** A number of the work moved by one step of its unit, held to what it may be; null: none is given. */
export const nudgedValue = (id: FieldId, now: Work, { by, reach }: Way, unit: Unit) => {
  const value = fieldOf(id).read(now);
  if (value === null) return null;
  const { least, most } = rangeNow(id, now);
  const wanted = value + by * stepOf(id, reach, unit);
  const clean = Math.round(wanted * DUST) / DUST;
  return Math.min(most, Math.max(least, clean));
};

/** The number of the work on the table, moved by one step. */
export const nudged = (id: FieldId, way: Way, gesture: string): void => {
  const to = nudgedValue(id, work(), way, studio().unit);
  if (to !== null) setNumber(id, to, gesture);
};

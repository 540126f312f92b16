import type { Check, Verdict } from "./check.ts";

/** Rounding may not turn a verdict (method 6). */
const ROUNDING = 1e-9;

export const atMost = (value: number, most: number): boolean => value <= most + ROUNDING;
export const within = (value: number, least: number, most: number): boolean =>
  value >= least - ROUNDING && value <= most + ROUNDING;

/** Sound, else attend, else stop. */
export const verdictOf = (isSound: boolean, attends: boolean): Verdict =>
  isSound ? "sound" : attends ? "attend" : "stop";

/** What a check says: what was measured against its limit, what to change, and what else there is. */
export type Words = {
  readonly measured: string;
  readonly change: string;
  readonly more?: string;
};

/** A check whose cure is told only where there is something to cure. */
export const checkOf = (
  { id, verdict, value, limit, unit }: Omit<Check, "message">,
  { measured, change, more = "" }: Words,
): Check => {
  const found = verdict === "sound" ? measured : `${measured} ${change}`;
  return { id, verdict, value, limit, unit, message: found + more };
};

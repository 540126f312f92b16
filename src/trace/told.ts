import type { Fault } from "../drafting/fault.ts";

/** What was asked for, or what is wrong, in words that the maker can act on. Never an exception. */
export type Told<Thing> = { readonly found: Thing } | { readonly fault: Fault };

export const found = <Thing>(thing: Thing): Told<Thing> => ({ found: thing });

/** A fault by its parts: the field, its value, one sentence why, one sentence what to do. */
export const faulty = (
  field: string,
  value: string,
  reason: string,
  cure: string,
): { readonly fault: Fault } => ({ fault: { field, value, reason, do: cure } });

import type { Fault } from "../drafting/fault.ts";

/** Something that was not drafted, and why (contract, `refused.json`). */
export type Refusal = Fault & {
  /** Lines of data from 1; null where a whole file was refused. */
  readonly row: number | null;
  readonly id: string;
};

/** The fault of a file as a whole: no row, no body. */
export const ofFile = (fault: Fault): Refusal => ({ row: null, id: "", ...fault });

/** A refusal as one line for a person: what, value, limit, what to do. */
export const sentence = ({ reason, do: cure }: Fault): string => `${reason} ${cure}`;

/** Either the thing itself or why it was refused. */
export type Read<Thing> = { readonly read: Thing } | { readonly refusal: Refusal };

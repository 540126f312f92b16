import type { Garment } from "../bands/garment.ts";
import type { Check } from "../checks/check.ts";

/** What sheets are made from: one body's garment and what the checks said of it. */
export type SheetSubject = {
  readonly body: {
    readonly id: string;
    readonly name?: string;
    /** A standard size in place of a body: `W90-regular`. */
    readonly size?: string;
    /** Several in one file: the names of them all. The garment is then that of the smallest. */
    readonly among?: readonly string[];
  };
  readonly garment: Pick<Garment, "measures" | "choices" | "pieces" | "bands">;
  readonly checks: readonly Check[];
};

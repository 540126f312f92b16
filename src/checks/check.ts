/** A measurement held against its limit, always told, sound ones too (contract, "Checks"). */
export type Verdict = "sound" | "attend" | "stop";

export type Check = {
  readonly id: string;
  readonly verdict: Verdict;
  readonly value: number;
  /** The sound limit; of a range of ease the lower one. */
  readonly limit: number;
  readonly unit: "mm" | "deg" | "ratio" | "kPa";
  /** One sentence or two: measure, value, limit, what to change. */
  readonly message: string;
};

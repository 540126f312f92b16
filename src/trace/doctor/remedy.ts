import type { Check } from "../../checks/check.ts";
import type { Block } from "../../drafting/piece.ts";

/** A remedy for what was found: a pure step from block to block, shown before it is applied. */
export type Remedy = {
  /**
   * Leave it and ease it in, correct the sleeve or the body; where two edges of one kind differ, both
   * by halves (`sleeve`, `body`) or one of them alone.
   */
  readonly id: "leave" | "sleeve" | "body" | "front" | "back";
  /** One sentence: what it changes. */
  readonly words: string;
  readonly apply: (block: Block) => Block;
};

/** What the doctor found at one place of a block, and what can be done about it. */
export type Finding = Check & { readonly remedies: readonly Remedy[] };

/** The remedy that changes nothing. */
export const leave = (words: string): Remedy => ({ id: "leave", words, apply: (block) => block });

/**
 * What is wrong with something that a maker gave us, in words they can act on. A value, never an
 * exception. `src/project/refusal.ts` adds the row and the body it belongs to.
 */
export type Fault = {
  /** The measure, the choice (`fit.chestEase`) or the edge (`front.side`). */
  readonly field: string;
  /** As it was given. */
  readonly value: string;
  /** One sentence: what, its value, the limit. */
  readonly reason: string;
  /** One sentence: what to change. */
  readonly do: string;
};

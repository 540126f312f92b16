/**
 * A rail: the method held a value so that all lines can still be drawn. It never stops the draft;
 * it becomes the check `rail-…` of the report, and the maker is told.
 */
export type Rail = {
  readonly id: `rail-${string}`;
  readonly wanted: number;
  readonly used: number;
  readonly unit: "mm" | "ratio";
  /** The piece cannot be sewn as drawn. */
  readonly stops: boolean;
  /** One or two sentences: what, its value, the limit, what to change. */
  readonly message: string;
};

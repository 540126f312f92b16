import type { Path } from "../../geometry/segment.ts";

/** A line read from a file: one unbroken run, in mm. */
export type ReadLine = {
  /** What it is called: its id, classes and label, and those of the groups round it, inmost first. */
  readonly names: readonly string[];
  readonly path: Path;
  /** Closed in the file, or ends where it starts. */
  readonly isClosed: boolean;
};

/** All lines of a file, in the order in which they are drawn. */
export type ReadDrawing = { readonly lines: readonly ReadLine[] };

/** More parts than this are no pattern: a photograph turned into lines. Ours. */
export const MOST_SEGMENTS = 200_000;

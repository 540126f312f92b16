import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";

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

/** A corner mark of the tool's own sheets: a diamond with a letter, the same on each sheet there. */
export type PageMark = { readonly letter: string; readonly at: Point };

/** A word of a page and where it begins, mm from the page's upper left corner. */
export type PageWord = { readonly text: string; readonly at: Point };

/** One page of a PDF: its size and its lines in mm, from its upper left corner. */
export type PdfPageLines = {
  readonly page: number;
  readonly width: Mm;
  readonly height: Mm;
  readonly lines: readonly ReadLine[];
  /** The tool's own corner marks on it. */
  readonly marks: readonly PageMark[];
};

/** Where a page's upper left corner stands in the whole drawing, mm. */
export type PagePlace = { readonly page: number; readonly x: Mm; readonly y: Mm };

import { MM_PER_INCH, type Mm } from "../../geometry/units.ts";

type Paper = {
  readonly title: string;
  readonly width: Mm;
  /** null: a roll, cut as long as the drawing needs. */
  readonly height: Mm | null;
  readonly source: string;
};

/** Upright. Sizes are the trimmed sheet, not the printable part. */
export const PAPERS = {
  a4: { title: "A4", width: 210, height: 297, source: "ISO 216:2007" },
  letter: {
    title: "Letter",
    width: 8.5 * MM_PER_INCH,
    height: 11 * MM_PER_INCH,
    source: "ASME Y14.1, size A",
  },
  a3: { title: "A3", width: 297, height: 420, source: "ISO 216:2007" },
  a0: { title: "A0", width: 841, height: 1189, source: "ISO 216:2007" },
  "roll-914": {
    title: "Roll, 914 mm wide",
    width: 914,
    height: null,
    source: "36 in roll, sold as 914 mm: common practice, no source",
  },
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof PAPERS;
export const PAPER_NAMES = ["a4", "letter", "a3", "a0", "roll-914"] as const satisfies PaperName[];

/** What a home printer may leave bare along each edge. Common practice, no source. */
export const MARGIN: Mm = 10;
/** How far a sheet repeats what its neighbour shows. Common practice, no source. */
export const OVERLAP: Mm = 10;
/** Viewers stop at 14,400 points (5.08 m, PDF of old); a roll is cut before that. */
export const LONGEST_SHEET: Mm = 4900;
/** Title and map: pages that carry no line of the pattern. */
export const FRONT_PAGES = 2;

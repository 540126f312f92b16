import { MM_PER_INCH, type Mm } from "../../geometry/units.ts";

export type Paper = {
  readonly title: string;
  /** Across the feed of the printer. */
  readonly width: Mm;
  /** Along the feed. null: a roll, cut as long as the drawing needs. */
  readonly height: Mm | null;
  readonly source: string;
};

const roll = (width: Mm, source: string) => ({
  title: `Roll, ${width} mm wide`,
  width,
  height: null,
  source,
});

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
  legal: {
    title: "Legal",
    width: 8.5 * MM_PER_INCH,
    height: 14 * MM_PER_INCH,
    source: "8.5 by 14 in, the legal sheet of American offices: common practice, no source",
  },
  a0: { title: "A0", width: 841, height: 1189, source: "ISO 216:2007" },
  "ansi-e": {
    title: "ANSI E",
    width: 34 * MM_PER_INCH,
    height: 44 * MM_PER_INCH,
    source: "ASME Y14.1, size E",
  },
  "roll-594": roll(594, "as wide as A1 is high, ISO 216:2007"),
  "roll-610": roll(610, "24 in roll, sold as 610 mm: common practice, no source"),
  "roll-841": roll(841, "as wide as A0, ISO 216:2007"),
  "roll-914": roll(914, "36 in roll, sold as 914 mm: common practice, no source"),
  "roll-1067": roll(1067, "42 in roll, sold as 1067 mm: common practice, no source"),
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof PAPERS;
export const PAPER_NAMES = [
  "a4",
  "letter",
  "a3",
  "legal",
  "a0",
  "ansi-e",
  "roll-594",
  "roll-610",
  "roll-841",
  "roll-914",
  "roll-1067",
] as const satisfies PaperName[];

/** What a home printer may leave bare along each edge. Common practice, no source. */
export const MARGIN: Mm = 10;
/** How far a sheet repeats what its neighbour shows. Common practice, no source. */
export const OVERLAP: Mm = 10;
/** Viewers stop at 14,400 points (5.08 m, PDF of old); a roll is cut before that. */
export const LONGEST_SHEET: Mm = 4900;
/** Title and map: pages that carry no line of the pattern. */
export const FRONT_PAGES = 2;
/** The side of the test square on every sheet (contract, "sheets"). */
export const TEST_SQUARE: Mm = 50;

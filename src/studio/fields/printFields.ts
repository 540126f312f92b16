import type { Range } from "../../drafting/data/ranges.ts";
import {
  LEAST_OVERLAP,
  LEAST_WINDOW,
  MARGIN_LIMIT,
  OWN_SIZE,
  SQUARE_LIMIT,
} from "../../export/data/printLimits.ts";
import { isPaperName, type PaperChoice, paperOf } from "../../export/paperSize.ts";
import type { Margins, PrintChoices } from "../../export/printChoices.ts";
import { DEFAULT_PRINT } from "../../export/printChoices.ts";
import { printFaults } from "../../export/printFaults.ts";
import { paperGrid } from "../../export/tiles.ts";
import type { Mm } from "../../geometry/units.ts";
import type { Work } from "../../project/work.ts";
import type { NumberField } from "./numberField.ts";

/** Sheets are named by their place: where the sheets change, the names that were asked for are void. */
export const withPrint = (work: Work, change: Partial<PrintChoices>): Work => ({
  ...work,
  print: { ...work.print, only: [], ...change },
});

/** What every printer leaves bare; less on a sheet so narrow that the ruled scale would not go on it. */
const usualMargins = (paper: PaperChoice): Margins => {
  const { width, height } = paperOf(paper);
  const { top, left } = DEFAULT_PRINT.margins;
  const sides = Math.min(left, (width - LEAST_WINDOW.across) / 2);
  const ends = Math.min(top, ((height ?? Infinity) - LEAST_WINDOW.along) / 2);
  return { top: ends, right: sides, bottom: ends, left: sides };
};

/** Another paper. What does not go on it goes back to what is usual. */
export const withPaper = (work: Work, paper: PaperChoice): Work => {
  const usual = { margins: usualMargins(paper), overlap: DEFAULT_PRINT.overlap };
  const fits = printFaults(paper, work.print).length === 0;
  return { ...withPrint(work, fits ? {} : usual), paper };
};

/** What an own size begins with where a roll has no length: a little more than A4. Ours. */
const OWN_HEIGHT: Mm = 330;

/** A size of the maker's own in place of the paper, as large as it. */
export const ownSizeOf = (paper: PaperChoice): PaperChoice => {
  const { width, height } = paperOf(paper);
  return `${width}x${height ?? OWN_HEIGHT}`;
};
export const isOwnSize = (paper: PaperChoice): boolean => !isPaperName(paper);

const mmRange = ({ least, most }: { readonly least: Mm; readonly most: Mm }): Range => ({
  least,
  most,
  unit: "mm",
});

const ofSize = (side: "width" | "height"): NumberField => ({
  kind: "length",
  range: mmRange(OWN_SIZE[side]),
  why: "paper.why.size",
  mayBeEmpty: false,
  pieces: [],
  read: ({ paper }) => paperOf(paper)[side],
  write: (work, value) => {
    const { width, height } = paperOf(work.paper);
    const size = { width, height: height ?? OWN_HEIGHT, [side]: value ?? 0 };
    return withPaper(work, `${size.width}x${size.height}`);
  },
});

const ACROSS_FROM = { top: "bottom", bottom: "top", left: "right", right: "left" } as const;

/** What the margin across from it leaves: the ruled scale stands between them. */
const marginNow = ({ paper, print }: Work, side: keyof Margins): Range => {
  const { width, height } = paperOf(paper);
  const isAcross = side === "left" || side === "right";
  const [size, least] = isAcross
    ? [width, LEAST_WINDOW.across]
    : [height ?? Infinity, LEAST_WINDOW.along];
  const room = size - least - print.margins[ACROSS_FROM[side]];
  return mmRange({ ...MARGIN_LIMIT, most: Math.min(MARGIN_LIMIT.most, room) });
};

const ofMargin = (side: keyof Margins): NumberField => ({
  kind: "length",
  range: mmRange(MARGIN_LIMIT),
  rangeNow: (work) => marginNow(work, side),
  why: "paper.why.margin",
  mayBeEmpty: false,
  pieces: [],
  read: ({ print }) => print.margins[side],
  write: (work, value) =>
    withPrint(work, { margins: { ...work.print.margins, [side]: value ?? 0 } }),
});

const overlapNow = ({ paper, print }: Work): Range => {
  const { windowWidth, windowHeight } = paperGrid(paper, print);
  const most = Math.floor(Math.min(windowWidth, windowHeight) / 2);
  return mmRange({ least: LEAST_OVERLAP, most });
};

const overlap: NumberField = {
  kind: "length",
  range: mmRange({ least: LEAST_OVERLAP, most: OWN_SIZE.width.most / 2 }),
  rangeNow: overlapNow,
  why: "paper.why.overlap",
  mayBeEmpty: false,
  pieces: [],
  read: ({ print }) => print.overlap,
  write: (work, value) => withPrint(work, { overlap: value ?? LEAST_OVERLAP }),
};

const ofSquare = (way: keyof PrintChoices["square"]): NumberField => ({
  // The square on the sheet is 50 mm in any unit: it is measured with a rule that has millimetres.
  kind: "mm",
  range: mmRange(SQUARE_LIMIT),
  why: "paper.why.square",
  mayBeEmpty: false,
  pieces: [],
  read: ({ print }) => print.square[way],
  write: (work, value) => withPrint(work, { square: { ...work.print.square, [way]: value ?? 0 } }),
});

export const PRINT_FIELDS = {
  "sheet.width": ofSize("width"),
  "sheet.height": ofSize("height"),
  "print.top": ofMargin("top"),
  "print.right": ofMargin("right"),
  "print.bottom": ofMargin("bottom"),
  "print.left": ofMargin("left"),
  "print.overlap": overlap,
  "print.along": ofSquare("along"),
  "print.across": ofSquare("across"),
} as const;

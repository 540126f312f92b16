import type { Fault } from "../drafting/fault.ts";
import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { TEST_SQUARE } from "./data/paper.ts";
import {
  LEAST_OVERLAP,
  LEAST_WINDOW,
  MARGIN_LIMIT,
  OWN_SIZE,
  SQUARE_LIMIT,
} from "./data/printLimits.ts";
import { isPaperName, type PaperChoice, paperOf } from "./paperSize.ts";
import type { PrintChoices } from "./printChoices.ts";
import type { Sheets } from "./sheets.ts";
import { paperGrid, sheetName } from "./tiles.ts";

type Range = { readonly least: Mm; readonly most: Mm };

const isWithin = (value: Mm, { least, most }: Range): boolean => value >= least && value <= most;

/** A size that is smaller or larger than a sheet may be. */
const sizeFaults = (paper: PaperChoice): readonly Fault[] => {
  if (isPaperName(paper)) return [];
  const { width, height, title } = paperOf(paper);
  const { width: across, height: along } = OWN_SIZE;
  if (isWithin(width, across) && height !== null && isWithin(height, along)) return [];
  const isSmall = width < across.least || (height ?? 0) < along.least;
  return [
    {
      field: "paper",
      value: paper,
      reason: `The paper is ${title}; a sheet must be ${across.least} to ${across.most} mm wide and ${along.least} to ${along.most} mm high${isSmall ? `, or the test square of ${TEST_SQUARE} mm, the scale of 150 mm and the title page do not go on it` : ""}.`,
      do: `Take ${isSmall ? "larger" : "smaller"} paper, width before height, such as 210x330.`,
    },
  ];
};

type Side = keyof PrintChoices["margins"];

/** A margin by itself: what no printer leaves bare. */
const sideFaults = ({ margins }: PrintChoices): readonly Fault[] => {
  const { least, most } = MARGIN_LIMIT;
  const side = (["top", "right", "bottom", "left"] as const).find(
    (one) => !isWithin(margins[one], MARGIN_LIMIT),
  );
  if (side === undefined) return [];
  return [
    {
      field: `margins.${side}`,
      value: String(margins[side]),
      reason: `The ${side} margin is ${asMm(margins[side])}; it may be ${least} to ${most} mm.`,
      do: "Measure what your printer leaves bare, and write that.",
    },
  ];
};

/** Two opposite margins: enough must be left between them. */
const pairFaults = (
  size: Mm,
  [one, other]: readonly [Side, Side],
  { margins }: PrintChoices,
): readonly Fault[] => {
  const both = margins[one] + margins[other];
  const isAcross = one === "left";
  const least = isAcross ? LEAST_WINDOW.across : LEAST_WINDOW.along;
  if (size - both >= least) return [];
  const across = isAcross ? "wide" : "high";
  const what = isAcross ? "the scale of 150 mm" : "the title page";
  return [
    {
      field: `margins.${one}`,
      value: String(margins[one]),
      reason: `The margins ${one} and ${other} are ${asMm(both)} together on a sheet ${asMm(size)} ${across}; ${least} mm must be left between them for ${what}.`,
      do: "Make the margins smaller, or take larger paper.",
    },
  ];
};

const marginFaults = (paper: PaperChoice, print: PrintChoices): readonly Fault[] => {
  const { width, height } = paperOf(paper);
  const pairs = [
    ...pairFaults(width, ["left", "right"], print),
    ...(height === null ? [] : pairFaults(height, ["top", "bottom"], print)),
  ];
  return pairs.length > 0 ? pairs : sideFaults(print);
};

const overlapFaults = (paper: PaperChoice, print: PrintChoices): readonly Fault[] => {
  const { windowWidth, windowHeight } = paperGrid(paper, print);
  const most = Math.floor(Math.min(windowWidth, windowHeight) / 2);
  if (isWithin(print.overlap, { least: LEAST_OVERLAP, most })) return [];
  const over = print.overlap > most ? ", half of what a sheet prints" : "";
  return [
    {
      field: "overlap",
      value: String(print.overlap),
      reason: `The overlap is ${asMm(print.overlap)}; on this paper it may be ${LEAST_OVERLAP} to ${most} mm${over}.`,
      do: `Make it ${print.overlap > most ? "smaller" : "larger"}.`,
    },
  ];
};

const squareFaults = ({ square }: PrintChoices): readonly Fault[] =>
  (["along", "across"] as const).flatMap((way) => {
    if (isWithin(square[way], SQUARE_LIMIT)) return [];
    const { least, most, why } = SQUARE_LIMIT;
    return [
      {
        field: `square.${way}`,
        value: String(square[way]),
        reason: `The test square measures ${asMm(square[way])} ${way} the feed; it may be ${least} to ${most} mm; ${why}.`,
        do: "Measure it again from line to line; if it is right, print at actual size, with no fitting to the page.",
      },
    ];
  });

/** Everything about paper and print choices that cannot be printed; none: all is well. */
export const printFaults = (paper: PaperChoice, print: PrintChoices): readonly Fault[] => {
  const size = sizeFaults(paper);
  if (size.length > 0) return size;
  const margins = marginFaults(paper, print);
  if (margins.length > 0) return margins;
  const squares = squareFaults(print);
  return squares.length > 0 ? squares : overlapFaults(paper, print);
};

/** Sheets that are wanted and that there are not; they are known only once all is laid out. */
export const wantedFaults = ({
  pages,
  print,
}: Pick<Sheets, "pages" | "print">): readonly Fault[] => {
  const names = pages.map(({ row, column }) => sheetName(row, column));
  const missing = print.only.filter((name) => !names.includes(name));
  if (missing.length === 0) return [];
  const what = missing.length === 1 ? "is no sheet" : "are no sheets";
  return [
    {
      field: "only",
      value: missing.join(","),
      reason: `There ${what} ${missing.join(", ")}; the ${names.length} sheets are ${names.join(" ")}.`,
      do: "Take their names from the page map.",
    },
  ];
};

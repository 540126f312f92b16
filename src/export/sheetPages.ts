import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import type { FrontScene } from "./frontPage.ts";
import { cornerMarks, jointIn } from "./joints.ts";
import { NO_ART, type PageArt } from "./pageArt.ts";
import type { PdfFile } from "./pdfFile.ts";
import { artOps, movedOps, num, scaledOps, wordOps } from "./pdfOps.ts";
import { RULER_START, ruler, rulerLengths } from "./rulers.ts";
import { sheetArt } from "./sheetArt.ts";
import type { SheetPage } from "./sheets.ts";
import { type Grid, windowOf } from "./tiles.ts";
import { boxOf, grown, meets, type Word } from "./word.ts";

/** Half the broadest line, so that a form does not clip what it holds. */
export const PEN: Mm = 1;

/** The scales of a sheet with their words, drawn from the window's upper left corner. */
const scaleOps = (grid: Grid, pdf: PdfFile): string => {
  const { windowWidth, windowHeight } = grid;
  const [across, down] = rulerLengths(grid);
  const inward = jointIn(grid);
  const start = inward + RULER_START;
  const parts = [
    { art: ruler(across, "across"), at: { x: start, y: windowHeight - inward } },
    { art: ruler(down, "down"), at: { x: windowWidth - inward, y: start } },
  ];
  return parts
    .map(({ art, at }) => {
      const box = { left: -1, top: -1, right: windowWidth, bottom: windowHeight };
      return movedOps(pdf.addForm(box, artOps(art, pdf.encode)), at);
    })
    .join("\n");
};

/** Lines written once: how far they reach, and the operator that draws them. */
export type Form = { readonly box: Box; readonly ops: string };

/** Of some forms and words those that a window shows. */
export const shownIn = (
  window: Box,
  forms: readonly Form[],
  words: readonly Word[],
  pdf: PdfFile,
): readonly string[] => [
  ...forms.filter(({ box }) => meets(box, window)).map(({ ops }) => ops),
  ...words
    .filter((word) => meets(grown(boxOf(word), PEN), window))
    .map((word) => wordOps(word, pdf.encode)),
];

/** What a sheet shows, as large as the page must have it for this printer. */
export const drawnOps = ({ drawnX, drawnY }: Grid, ops: string): string =>
  drawnX === 1 && drawnY === 1 ? ops : scaledOps(ops, drawnX, drawnY);

/** What of the pattern a window shows, as page contents in the layout's frame. */
type Shown = (window: Box) => readonly string[];

/** What stands in a sheet's margins; from its upper left corner. */
type InMargins = (page: SheetPage) => PageArt;
const NOTHING: InMargins = () => NO_ART;

/**
 * Gives what adds a sheet of the pattern to a file: what its window shows, and what helps to print
 * and join it.
 */
export const sheetMaker = (
  pdf: PdfFile,
  scene: FrontScene,
  shown: Shown,
  inMargins: InMargins = NOTHING,
): ((page: SheetPage) => void) => {
  const { subject, sheets, drawing } = scene;
  const { grid } = sheets;
  const scales = scaleOps(grid, pdf);
  const marks = cornerMarks(sheets);
  return (page) => {
    const window = windowOf(grid, page.row, page.column);
    const { left, top } = window;
    const clip = `${num(left)} ${num(top)} ${num(grid.windowWidth)} ${num(grid.windowHeight)} re W n`;
    const art = sheetArt({ subject, sheets, drawing, marks, page });
    const ops = [
      clip,
      ...shown(window),
      movedOps(scales, { x: left, y: top }),
      artOps(art, pdf.encode),
    ];
    const margin = artOps(inMargins(page), pdf.encode);
    const all = movedOps(ops.join("\n"), { x: -page.x, y: -page.y });
    const drawn = drawnOps(grid, margin === "" ? all : `${all}\n${margin}`);
    pdf.addPage(sheets.width, sheets.height, drawn);
  };
};

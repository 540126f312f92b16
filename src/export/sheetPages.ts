import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import type { LayoutDrawing } from "./drawing.ts";
import type { FrontScene } from "./frontPage.ts";
import { cornerMarks, jointIn } from "./joints.ts";
import { NO_ART, type PageArt } from "./pageArt.ts";
import type { PdfFile } from "./pdfFile.ts";
import { artOps, movedOps, num, scaledOps, wordOps } from "./pdfOps.ts";
import { RULER_START, ruler, rulerLengths } from "./rulers.ts";
import { sheetArt } from "./sheetArt.ts";
import type { SheetPage } from "./sheets.ts";
import { type Grid, windowOf } from "./tiles.ts";
import { grown, meets } from "./word.ts";

/** Half the broadest line, so that a form does not clip what it holds. */
export const PEN: Mm = 1;

/** Scales as operators, by way and length: every file has the same two, and they have no words. */
const drawnRulers = new Map<string, string>();

const rulerOps = (length: Mm, way: "across" | "down", { encode }: PdfFile): string => {
  const key = `${way} ${length}`;
  const known = drawnRulers.get(key);
  if (known !== undefined) return known;
  const ops = artOps(ruler(length, way), encode);
  drawnRulers.set(key, ops);
  return ops;
};

/** The scales of a sheet with their words, drawn from the window's upper left corner. */
const scaleOps = (grid: Grid, pdf: PdfFile): string => {
  const { windowWidth, windowHeight } = grid;
  const [across, down] = rulerLengths(grid);
  const inward = jointIn(grid);
  const start = inward + RULER_START;
  const parts = [
    { ops: rulerOps(across, "across", pdf), at: { x: start, y: windowHeight - inward } },
    { ops: rulerOps(down, "down", pdf), at: { x: windowWidth - inward, y: start } },
  ];
  return parts
    .map(({ ops, at }) => {
      const box = { left: -1, top: -1, right: windowWidth, bottom: windowHeight };
      return movedOps(pdf.addForm(box, ops), at);
    })
    .join("\n");
};

/** What several sheets may show, written once: how far it reaches, and the operators that draw it. */
export type Form = { readonly box: Box; readonly ops: string };

/** The words of a drawing, each drawn wherever a sheet shows some of it. */
export const wordForms = (pdf: PdfFile, { pieces, wordBoxes }: LayoutDrawing): readonly Form[] => {
  const words = pieces.flatMap((piece) => piece.words);
  return wordBoxes.flatMap((box, i) => {
    const word = words[i];
    return word ? [{ box: grown(box, PEN), ops: wordOps(word, pdf.encode) }] : [];
  });
};

/** Of some forms those that a window shows. */
export const shownIn = (window: Box, forms: readonly Form[]): readonly string[] =>
  forms.filter(({ box }) => meets(box, window)).map(({ ops }) => ops);

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

import { type Box, boundsOf } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { drawLayout, type LayoutDrawing, type PieceDrawing } from "./drawing.ts";
import { type FrontScene, frontPage } from "./frontPage.ts";
import { frontSize } from "./frontSize.ts";
import { cornerMarks, jointIn } from "./joints.ts";
import { mapPage } from "./mapPage.ts";
import { openPdf, type PdfFile } from "./pdfFile.ts";
import { artOps, movedOps, num, scaledOps, strokeOps, wordOps } from "./pdfOps.ts";
import { RULER_START, ruler, rulerLengths } from "./rulers.ts";
import { sheetArt } from "./sheetArt.ts";
import type { SheetPage, Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { type Grid, windowOf } from "./tiles.ts";
import { isWhole, wantedPages } from "./wanted.ts";
import { grown, meets } from "./word.ts";

export type PdfOptions = {
  /** The print font, read by the caller: by fetch in the studio, from disk on the command line. */
  readonly font: Uint8Array;
  /** YYYY-MM-DD, printed on the first page. Without it nothing in the file tells the time. */
  readonly date?: string;
};

/** Half the broadest line, so that a form does not clip what it holds. */
const PEN: Mm = 1;

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

/** What several sheets may show, written once: how far it reaches, and the operators that draw it. */
type Form = { readonly box: Box; readonly ops: string };

type Printed = {
  readonly scene: FrontScene;
  readonly pdf: PdfFile;
  readonly grid: Grid;
  /** Of each piece. */
  readonly forms: readonly Form[];
  /** Of each word on a piece. */
  readonly words: readonly Form[];
  readonly scales: string;
};

const shownOps = ({ forms, words }: Printed, window: Box): readonly string[] =>
  [...forms, ...words].filter(({ box }) => meets(box, window)).map(({ ops }) => ops);

/** What a sheet shows, as large as the page must have it for this printer. */
const drawnOps = ({ drawnX, drawnY }: Grid, ops: string): string =>
  drawnX === 1 && drawnY === 1 ? ops : scaledOps(ops, drawnX, drawnY);

/** A sheet of the pattern: what its window shows, and what helps to print and join it. */
const sheetOps = (printed: Printed, page: SheetPage, marks: ReturnType<typeof cornerMarks>) => {
  const { scene, pdf, grid, scales } = printed;
  const { subject, sheets, drawing } = scene;
  const window = windowOf(grid, page.row, page.column);
  const { left, top } = window;
  const clip = `${num(left)} ${num(top)} ${num(grid.windowWidth)} ${num(grid.windowHeight)} re W n`;
  const art = sheetArt({ subject, sheets, drawing, marks, page });
  const ops = [
    clip,
    ...shownOps(printed, window),
    movedOps(scales, { x: left, y: top }),
    artOps(art, pdf.encode),
  ];
  return drawnOps(grid, movedOps(ops.join("\n"), { x: -page.x, y: -page.y }));
};

/** Round a piece's lines and the line that leads to a label beside it, with half a pen's width. */
const reachOf = ({ box, strokes }: PieceDrawing): Box => {
  const leaders = strokes.filter(({ kind }) => kind === "bracket");
  const boxes = [box, ...leaders.map(({ path }) => boundsOf(path))];
  return {
    left: Math.min(...boxes.map(({ left }) => left)) - PEN,
    top: Math.min(...boxes.map(({ top }) => top)) - PEN,
    right: Math.max(...boxes.map(({ right }) => right)) + PEN,
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)) + PEN,
  };
};

const formOf = (pdf: PdfFile, piece: PieceDrawing): Form => {
  const box = reachOf(piece);
  return { box, ops: pdf.addForm(box, strokeOps(piece.strokes)) };
};

const wordForms = (pdf: PdfFile, { pieces, wordBoxes }: LayoutDrawing): readonly Form[] => {
  const words = pieces.flatMap((piece) => piece.words);
  return wordBoxes.flatMap((box, i) => {
    const word = words[i];
    return word ? [{ box: grown(box, PEN), ops: wordOps(word, pdf.encode) }] : [];
  });
};

/** A pattern as a PDF at true scale: title, page map, and a page for each sheet that has a line. */
export const toPdf = async (
  subject: SheetSubject,
  sheets: Sheets,
  options: PdfOptions,
): Promise<Uint8Array> => {
  const date = options.date ?? null;
  const drawing = drawLayout(subject, sheets);
  const scene: FrontScene = { subject, sheets, drawing, date };
  const front = frontSize(sheets);
  const { width, height } = isWhole(sheets) ? front : sheets;
  const title = `Ribwright pattern, ${subject.body.id}`;
  const pdf = await openPdf({ font: options.font, title, date, width, height, unpacked: true });
  const { grid } = sheets;
  const forms = drawing.pieces.map((piece) => formOf(pdf, piece));
  const words = wordForms(pdf, drawing);
  const printed: Printed = { scene, pdf, grid, forms, words, scales: scaleOps(grid, pdf) };
  const marks = cornerMarks(sheets);
  for (const art of isWhole(sheets) ? [frontPage(scene), mapPage(scene)] : []) {
    pdf.addPage(width, height, drawnOps(front.grid, artOps(art, pdf.encode)));
  }
  for (const page of wantedPages(sheets)) {
    pdf.addPage(sheets.width, sheets.height, sheetOps(printed, page, marks));
  }
  return pdf.bytes();
};

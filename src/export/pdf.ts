import { type Box, boundsOf } from "../geometry/outline.ts";
import { drawLayout, type PieceDrawing } from "./drawing.ts";
import { type FrontScene, frontPage } from "./frontPage.ts";
import { frontSize } from "./frontSize.ts";
import { mapPage } from "./mapPage.ts";
import { openPdf, type PdfFile } from "./pdfFile.ts";
import { artOps, strokeOps } from "./pdfOps.ts";
import { drawnOps, type Form, PEN, sheetMaker, shownIn, wordForms } from "./sheetPages.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { isWhole, wantedPages } from "./wanted.ts";

export type PdfOptions = {
  /** The print font, read by the caller: by fetch in the studio, from disk on the command line. */
  readonly font: Uint8Array;
  /** YYYY-MM-DD, printed on the first page. Without it nothing in the file tells the time. */
  readonly date?: string;
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

/** A piece's lines as a form of the file. */
export const formOf = (pdf: PdfFile, piece: PieceDrawing): Form => {
  const box = reachOf(piece);
  return { box, ops: pdf.addForm(box, strokeOps(piece.strokes)) };
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
  const forms = drawing.pieces.map((piece) => formOf(pdf, piece));
  const shown = [...forms, ...wordForms(pdf, drawing)];
  const addSheet = sheetMaker(pdf, scene, (window) => shownIn(window, shown));
  for (const art of isWhole(sheets) ? [frontPage(scene), mapPage(scene)] : []) {
    pdf.addPage(width, height, drawnOps(front.grid, artOps(art, pdf.encode)));
  }
  for (const page of wantedPages(sheets)) addSheet(page);
  return pdf.bytes();
};

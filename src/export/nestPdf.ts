import type { Box } from "../geometry/outline.ts";
import { boundsOf } from "../geometry/outline.ts";
import { LAYER_STYLES, SEAM_STYLE } from "./data/layerStyles.ts";
import type { PieceDrawing } from "./drawing.ts";
import type { FrontScene } from "./frontPage.ts";
import { frontSize } from "./frontSize.ts";
import { mapPage } from "./mapPage.ts";
import { type Nest, nestSpeaker } from "./nest.ts";
import { drawNest, type SizeDrawing } from "./nestDrawing.ts";
import { nestFront } from "./nestFront.ts";
import { formOf, type PdfOptions } from "./pdf.ts";
import { openPdf, type PdfFile } from "./pdfFile.ts";
import { inLayer } from "./pdfLayers.ts";
import { alikeOps, artOps, wordOps } from "./pdfOps.ts";
import type { Stroke } from "./pieceLines.ts";
import { drawnOps, type Form, PEN, sheetMaker, shownIn, wordForms } from "./sheetPages.ts";
import type { Sheets } from "./sheets.ts";
import { isWhole, wantedPages } from "./wanted.ts";
import { grown, type Word, widthOf } from "./word.ts";

type Pen = (typeof LAYER_STYLES)[number];

const boxRound = (strokes: readonly Stroke[]): Box => {
  const boxes = strokes.map(({ path }) => boundsOf(path));
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

/** Lines in the size's own kind; notches are too short for dashes. */
const penOps = (strokes: readonly Stroke[], pen: Pen): string => {
  const notches = strokes.filter(({ kind }) => kind === "notch");
  const lines = alikeOps(
    strokes.filter(({ kind }) => kind !== "notch"),
    pen,
  );
  return notches.length === 0 ? lines : `${lines}\n${alikeOps(notches, { ...pen, dash: [] })}`;
};

/** Each piece's lines as a form, all drawn alike. */
const alikeForms = (
  pieces: readonly (readonly Stroke[])[],
  pen: Pen,
  pdf: PdfFile,
): readonly Form[] =>
  pieces
    .filter((strokes) => strokes.length > 0)
    .map((strokes) => {
      const box = grown(boxRound(strokes), PEN);
      return { box, ops: pdf.addForm(box, penOps(strokes, pen)) };
    });

/** A word may lie at any slant: the square round all of them. */
const slantedBox = (word: Word): Box => {
  const reach = widthOf(word.text, word.size) / 2 + word.size;
  const { x, y } = word;
  return { left: x - reach, top: y - reach, right: x + reach, bottom: y + reach };
};

/** What is always seen of a piece: its grain, and the bracket of its fold. */
const alwaysSeen = (piece: PieceDrawing): PieceDrawing => ({
  ...piece,
  strokes: piece.strokes.filter(({ kind }) => kind === "grain" || kind === "bracket"),
});

/** What a window shows of one size, in its layer; its seam lines in their layer as well. */
const sizeShown = (size: SizeDrawing, place: number, seams: string, pdf: PdfFile) => {
  const pen = LAYER_STYLES[place] ?? SEAM_STYLE;
  const layer = pdf.layers.add(size.name, true);
  const outlines = alikeForms(size.outlines, pen, pdf);
  const seamForms = alikeForms(size.seams, SEAM_STYLE, pdf);
  const names = size.names.map((word) => ({
    box: grown(slantedBox(word), PEN),
    ops: wordOps(word, pdf.encode),
  }));
  return (window: Box): readonly string[] => {
    const own = shownIn(window, [...outlines, ...names]);
    const sewn = shownIn(window, seamForms);
    const inner = [...own, ...(sewn.length > 0 ? [inLayer(seams, sewn.join("\n"))] : [])];
    return inner.length > 0 ? [inLayer(layer, inner.join("\n"))] : [];
  };
};

/** Several sizes in one PDF at true scale, each in a layer of its own with its own kind of line. */
export const nestPdf = async (
  nest: Nest,
  sheets: Sheets,
  options: PdfOptions,
): Promise<Uint8Array> => {
  const date = options.date ?? null;
  const { common, sizes } = drawNest(nest, sheets);
  const scene: FrontScene = { subject: nestSpeaker(nest), sheets, drawing: common, date };
  const front = frontSize(sheets);
  const { width, height } = isWhole(sheets) ? front : sheets;
  const title = `Ribwright pattern, ${nest.length} sizes`;
  const pdf = await openPdf({ font: options.font, title, date, width, height });
  const seams = pdf.layers.add("Seam lines", false);
  const forms = [
    ...common.pieces.map((piece) => formOf(pdf, alwaysSeen(piece))),
    ...wordForms(pdf, common),
  ];
  const shown = sizes.map((size, place) => sizeShown(size, place, seams, pdf));
  const addSheet = sheetMaker(pdf, scene, (window) => [
    ...shownIn(window, forms),
    ...shown.flatMap((of) => of(window)),
  ]);
  for (const art of isWhole(sheets) ? [nestFront(nest, scene), mapPage(scene)] : []) {
    pdf.addPage(width, height, drawnOps(front.grid, artOps(art, pdf.encode)));
  }
  for (const page of wantedPages(sheets)) addSheet(page);
  return pdf.bytes();
};

import type { Piece } from "../drafting/piece.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_KINDS, LINE_STYLES } from "./data/lineStyles.ts";
import { PROJECTOR } from "./data/projector.ts";
import { drawLayout } from "./drawing.ts";
import { layOut } from "./layout.ts";
import { type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import type { PdfOptions } from "./pdf.ts";
import { openPdf, type PdfFile } from "./pdfFile.ts";
import { alikeOps, artOps, movedOps, num, wordOps } from "./pdfOps.ts";
import { bodyName } from "./pieceFacts.ts";
import type { Stroke } from "./pieceLines.ts";
import { DEFAULT_PRINT } from "./printChoices.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";

/** The whole drawing on one page as wide as a cutting table, as long as it takes. */
export const projectorSheets = (pieces: readonly Piece[]): Sheets =>
  layOut(pieces, "roll-1067", { ...DEFAULT_PRINT, margins: PROJECTOR.margins });

/** Whole steps of the grid from 0 to the end of the page. */
const stepsTo = (end: Mm, every: Mm): readonly Mm[] =>
  Array.from({ length: Math.floor(end / every) + 1 }, (_, i) => i * every);

const isStrong = (at: Mm): boolean => at % (2 * PROJECTOR.grid.every) === 0;

/** The grid's lines, fine or strong. It counts from where the pattern's part of the page begins. */
const gridOps = (width: Mm, height: Mm, strong: boolean): string => {
  const { every, fine, strong: bold } = PROJECTOR.grid;
  const { width: pen, light } = strong ? bold : fine;
  const lines = (end: Mm) => stepsTo(end, every).filter((at) => isStrong(at) === strong);
  const runs = [
    ...lines(width).map((x) => straightRun({ x, y: 0 }, { x, y: height })),
    ...lines(height).map((y) => straightRun({ x: 0, y }, { x: width, y })),
  ];
  return `${num(light)} G\n${artOps({ shapes: [ruled(runs, pen)], words: [] }, (text) => text)}`;
};

const NUMBER: Mm = 7;

/** A number at every strong line, along the top and down the left. */
const numberArt = (width: Mm, height: Mm): PageArt => ({
  shapes: [],
  words: [
    ...stepsTo(width, 100).map((x) =>
      wordOf(String(x), { x, y: -3 }, NUMBER, { from: "middle" as const }),
    ),
    ...stepsTo(height, 100).map((y) => wordOf(String(y), { x: -22, y: y + NUMBER / 3 }, NUMBER)),
  ],
});

/** Two long lines with ends, across and down, by which the projector is set. */
const gaugeArt = (): PageArt => {
  const { length, width, tick } = PROJECTOR.gauge;
  const [x, y] = [-34, -22];
  const runs = [
    straightRun({ x: 0, y }, { x: length, y }),
    ...[0, length].map((at) => straightRun({ x: at, y: y - tick / 2 }, { x: at, y: y + tick / 2 })),
    straightRun({ x, y: 0 }, { x, y: length }),
    ...[0, length].map((at) => straightRun({ x: x - tick / 2, y: at }, { x: x + tick / 2, y: at })),
  ];
  return {
    shapes: [ruled(runs, width)],
    words: [
      wordOf(
        `${length} mm: set the projector until a rule says so`,
        { x: length / 2, y: y - 4 },
        9,
        {
          from: "middle",
        },
      ),
      wordOf(`${length} mm this way too`, { x: x - 5, y: length / 2 }, 9, {
        from: "middle",
        turn: -90,
      }),
    ],
  };
};

const TITLE: Mm = 18;

const titleArt = ({ body }: SheetSubject): PageArt => ({
  shapes: [],
  words: [
    wordOf(bodyName(body), { x: 0, y: -52 }, TITLE, { strong: true }),
    wordOf(
      "Each square of the grid is 50 mm. Show this page at its own size, 100 %.",
      { x: 0, y: -38 },
      9,
    ),
  ],
});

/** The lines of all pieces, kind by kind, as thick as light needs them. */
const lineOps = (strokes: readonly Stroke[]): string =>
  LINE_KINDS.map((kind) => {
    const same = strokes.filter((stroke) => stroke.kind === kind);
    if (same.length === 0) return "";
    const { width, dash } = LINE_STYLES[kind];
    const thicker = (length: Mm): Mm => length * PROJECTOR.thicker;
    return alikeOps(same, { width: thicker(width), dash: dash.map(thicker) });
  }).join("\n");

const pageOps = (subject: SheetSubject, sheets: Sheets, y: Mm, pdf: PdfFile): string => {
  const { width, height, grid } = sheets;
  const { pieces } = drawLayout(subject, sheets);
  const words = pieces.flatMap((piece) => piece.words);
  const { windowWidth, windowHeight } = grid;
  const frame = [
    gridOps(windowWidth, windowHeight, false),
    gridOps(windowWidth, windowHeight, true),
    `${num(PROJECTOR.lines)} G ${num(PROJECTOR.lines)} g`,
    artOps(numberArt(windowWidth, windowHeight), pdf.encode),
    artOps(gaugeArt(), pdf.encode),
    artOps(titleArt(subject), pdf.encode),
  ].join("\n");
  const pattern = [
    lineOps(pieces.flatMap(({ strokes }) => strokes)),
    ...words.map((word) => wordOps(word, pdf.encode)),
  ].join("\n");
  return [
    `${num(PROJECTOR.ground)} g 0 0 ${num(width)} ${num(height)} re f`,
    movedOps(frame, { x: grid.left, y: grid.top }),
    `${num(PROJECTOR.lines)} G ${num(PROJECTOR.lines)} g`,
    movedOps(pattern, { x: grid.left, y: grid.top - y }),
  ].join("\n");
};

/** The pattern for a projector: one large page, light lines on a dark ground over a grid, 1 : 1. */
export const projectorPdf = async (
  subject: SheetSubject,
  sheets: Sheets,
  options: PdfOptions,
): Promise<Uint8Array> => {
  const { width, height, pages, grid } = sheets;
  const title = `Ribwright pattern for a projector, ${subject.body.id}`;
  const date = options.date ?? null;
  const pdf = await openPdf({ font: options.font, title, date, width, height });
  for (const { row } of pages) {
    pdf.addPage(width, height, pageOps(subject, sheets, row * grid.stepY, pdf));
  }
  return pdf.bytes();
};

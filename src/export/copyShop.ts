import type { Fault } from "../drafting/fault.ts";
import type { Piece } from "../drafting/piece.ts";
import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { stopList } from "./checkList.ts";
import { cutList } from "./cutList.ts";
import { COPY_SHOP_WORDS, TURNING_WORDS } from "./data/frontWords.ts";
import { drawLayout } from "./drawing.ts";
import type { FrontScene } from "./frontPage.ts";
import { layOut } from "./layout.ts";
import { lineKey } from "./lineKey.ts";
import { joinArt, type PageArt } from "./pageArt.ts";
import { type PaperChoice, paperOf } from "./paperSize.ts";
import { formOf, type PdfOptions } from "./pdf.ts";
import { openPdf } from "./pdfFile.ts";
import { bodyName } from "./pieceFacts.ts";
import { DEFAULT_PRINT } from "./printChoices.ts";
import { ASIDE, squaresBeside } from "./scaleTest.ts";
import { sheetMaker, shownIn, wordForms } from "./sheetPages.ts";
import type { Sheets } from "./sheets.ts";
import { fittedHeading, heading, hung, type Part, paragraph, space, stacked } from "./stack.ts";
import type { SheetSubject } from "./subject.ts";

/** A band along the top of the sheet, with title and squares: they need no page of their own. */
const BAND: Mm = 132;
const MARGIN: Mm = 10;
/** The narrowest sheet that a copy shop's plotter takes, and on which the band's columns stand. */
const NARROWEST: Mm = 590;
const COLUMN: Mm = 200;
const GAP: Mm = 10;
const TEXT: Mm = 3.4;

/** Whether a paper is for a copy shop; none: it is. */
export const copyShopFaults = (paper: PaperChoice): readonly Fault[] => {
  const { width, title } = paperOf(paper);
  if (width >= NARROWEST) return [];
  return [
    {
      field: "copy-shop",
      value: paper,
      reason: `The copy shop's paper is ${title}, ${asMm(width)} wide; it must be at least ${NARROWEST} mm wide.`,
      do: "Take a roll, such as roll-914, or a0 or ansi-e.",
    },
  ];
};

/** The whole drawing on as few large sheets as it takes, a band for title and squares left free. */
export const copyShopSheets = (pieces: readonly Piece[], paper: PaperChoice): Sheets =>
  layOut(pieces, paper, { ...DEFAULT_PRINT, margins: { ...DEFAULT_PRINT.margins, top: BAND } });

const titlePart = ({ subject, date }: FrontScene, width: Mm): Part => {
  const { chest, hip, height } = subject.garment.measures;
  const drawn = date === null ? "" : ` Drawn ${date}.`;
  return stacked(
    paragraph("Raglan sweatshirt, sewing pattern", TEXT, width),
    fittedHeading(bodyName(subject.body), [10, 8, 6], width),
    paragraph(
      `Chest ${asMm(chest)}, hip ${asMm(hip)}, height ${asMm(height)}.${drawn}`,
      TEXT,
      width,
    ),
    space(2),
    ...COPY_SHOP_WORDS.map((text, i) =>
      stacked(hung(String(i + 1), text, TEXT, width), space(0.8)),
    ),
    stopList(subject.checks, width, BAND / 3) ?? space(0),
  );
};

/** What stands along the top of each sheet. */
const bandArt = (scene: FrontScene): PageArt => {
  const { sheetWidth } = scene.sheets.grid;
  const first = squaresBeside(titlePart(scene, COLUMN))(MARGIN, MARGIN);
  const left = MARGIN + ASIDE + COLUMN + GAP;
  const width = Math.min(300, sheetWidth - MARGIN - left);
  const list = stacked(
    heading("What to cut", TEXT + 0.6),
    cutList(scene, width),
    space(2),
    lineKey(width, 2),
    paragraph(TURNING_WORDS, 2.9, width),
  )(left, MARGIN);
  return joinArt(first.art, list.art);
};

/** The pattern for a copy shop: true scale on a roll or a large sheet, title and squares on it. */
export const copyShopPdf = async (
  subject: SheetSubject,
  sheets: Sheets,
  options: PdfOptions,
): Promise<Uint8Array> => {
  const date = options.date ?? null;
  const drawing = drawLayout(subject, sheets);
  const scene: FrontScene = { subject, sheets, drawing, date };
  const { width, height } = sheets;
  const title = `Ribwright pattern for a copy shop, ${subject.body.id}`;
  const pdf = await openPdf({ font: options.font, title, date, width, height });
  const forms = [...drawing.pieces.map((piece) => formOf(pdf, piece)), ...wordForms(pdf, drawing)];
  const band = bandArt(scene);
  const addSheet = sheetMaker(
    pdf,
    scene,
    (window) => shownIn(window, forms),
    () => band,
  );
  for (const page of sheets.pages) addSheet(page);
  return pdf.bytes();
};

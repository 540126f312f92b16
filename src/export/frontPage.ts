import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { attendList, stopList } from "./checkList.ts";
import { clothList } from "./clothList.ts";
import { cutList } from "./cutList.ts";
import { CAUTIONS, TURNING_WORDS } from "./data/frontWords.ts";
import { FRONT_PAGES } from "./data/paper.ts";
import type { LayoutDrawing } from "./drawing.ts";
import { frontSize, insideMargins } from "./frontSize.ts";
import { lineKey } from "./lineKey.ts";
import { joinArt, type PageArt } from "./pageArt.ts";
import { paperOf } from "./paperSize.ts";
import { bodyName } from "./pieceFacts.ts";
import type { PrintChoices } from "./printChoices.ts";
import { ASIDE, scaleTest, squaresBeside } from "./scaleTest.ts";
import type { Sheets } from "./sheets.ts";
import {
  fittedHeading,
  heading,
  heightOf,
  hung,
  type Part,
  paragraph,
  space,
  stacked,
} from "./stack.ts";
import type { SheetSubject } from "./subject.ts";

const TEXT: Mm = 3;
const HEAD: Mm = 3.8;

export type FrontScene = {
  readonly subject: SheetSubject;
  readonly sheets: Sheets;
  readonly drawing: LayoutDrawing;
  /** As it is printed; null: none. */
  readonly date: string | null;
};

/** "19 sheets of A4, after this page and the map." */
const sheetWords = (sheets: Sheets): string => {
  const { paper, pages } = sheets;
  const count = pages.length === 1 ? "One sheet" : `${pages.length} sheets`;
  const { title, width, height } = paperOf(paper);
  const kind = height === null ? `from a roll ${width} mm wide` : `of ${title}`;
  const size = frontSize(sheets).width === width ? "" : ", both A4";
  return `${count} ${kind}, after this page and the page map${size}: ${FRONT_PAGES + pages.length} pages in all.`;
};

const titlePart = ({ subject, sheets, date }: FrontScene, width: Mm): Part => {
  const { measures } = subject.garment;
  const girths = `Chest ${asMm(measures.chest)}, hip ${asMm(measures.hip)}, height ${asMm(measures.height)}.`;
  const drawn = date === null ? "" : ` Drawn ${date}.`;
  return stacked(
    paragraph("Raglan sweatshirt, sewing pattern", 3.4, width),
    fittedHeading(bodyName(subject.body), [8, 6.5, 5], width),
    paragraph(`${girths}${drawn}`, TEXT, width),
    paragraph(sheetWords(sheets), TEXT, width),
  );
};

/** What lines mean: in two columns where there is the whole width for them. */
const linesPart = (width: Mm, columns: 1 | 2): Part =>
  stacked(heading("Lines", HEAD), lineKey(width, columns), paragraph(TURNING_WORDS, 2.9, width));

/** Beside the squares the key to the lines makes the page lower only where its words have so much room. */
const ROOMY: Mm = 75;

/** The squares, the scale test and the key to the lines: beside the squares, or else below. */
const squaresPart = (print: PrintChoices, width: Mm): Part => {
  const test = scaleTest(print, width - ASIDE);
  return width - ASIDE >= ROOMY
    ? squaresBeside(stacked(test, space(1.4), linesPart(width - ASIDE, 1)))
    : stacked(squaresBeside(test), space(3), linesPart(width, 2));
};

const cautionPart = (width: Mm): Part =>
  stacked(heading("Take care", 3.4), ...CAUTIONS.map((text) => hung("–", text, 2.7, width)));

/** The first page: whose it is, what to measure, what to cut, and what to look at first. */
export const frontPage = (scene: FrontScene): PageArt => {
  const front = frontSize(scene.sheets);
  const room = insideMargins(front);
  const width = room.right - room.left;
  const title = stacked(titlePart(scene, width), space(3));
  const middle = stacked(
    squaresPart(front.print, width),
    space(3),
    heading("What to cut", HEAD),
    cutList(scene, width),
    space(3),
  );
  const cautions = cautionPart(width);
  const free = room.bottom - room.top - heightOf(title) - heightOf(middle) - heightOf(cautions);
  const stops = stopList(scene.subject.checks, width, free);
  const stopped = stops ? stacked(stops, space(3)) : space(0);
  const left = free - heightOf(stopped) - 2;
  const attend = attendList(scene.subject.checks, width, left) ?? space(0);
  // The guide has the cloth as well: what must be looked at first comes before it.
  const cloth = clothList(scene.subject.garment, width);
  const bought = heightOf(attend) + heightOf(cloth) <= left ? cloth : space(0);
  const upper = stacked(title, stopped, middle, bought, attend)(room.left, room.top);
  const lower = cautions(room.left, room.bottom - heightOf(cautions));
  return joinArt(upper.art, lower.art);
};

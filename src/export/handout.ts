import type { Garment } from "../bands/garment.ts";
import type { PieceName } from "../drafting/piece.ts";
import type { Mm } from "../geometry/units.ts";
import { lesson } from "../guide/lesson.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { count, given, said, told, words } from "../guide/words/told.ts";
import { FIFTH, QUARTER, SHEET_SCALES } from "./data/scales.ts";
import { LETTERS, nameLine, stepAnswered, stepToDo } from "./handoutParts.ts";
import { joinArt, ruled, straightRun } from "./pageArt.ts";
import { bodyName } from "./pieceFacts.ts";
import {
  flowed,
  type Page,
  type Print,
  type PrintOptions,
  pagesPdf,
  printOf,
  roomOn,
  together,
  widthIn,
} from "./printPage.ts";
import { blockApart, blockOnSheets, blockOverlaid, type SmallPage } from "./scaledSheet.ts";
import { heading, type Part, paragraph } from "./stack.ts";
import type { SheetSubject } from "./subject.ts";

/** One body of a class and its garment. */
export type HandoutSubject = {
  readonly body: SheetSubject["body"];
  readonly garment: Garment;
};

export type HandoutOptions = PrintOptions & {
  /** With the answers on its last pages, for the teacher. */
  readonly answers: boolean;
};

const GAP: Mm = 4;
type Scale = (typeof SHEET_SCALES)[number];

const sayPlain = (voice: Voice, key: Parameters<typeof said>[0]): string => tell(voice, said(key));

const scaleWord = ({ word }: Scale) => words({ key: word, slots: {} });

/** How long the bar on a small sheet is: to be held against a rule before anything is cut. */
const BAR: Mm = 50;

const bar =
  (times: number, voice: Voice, width: Mm): Part =>
  (left, top) => {
    const y = top + 2.5;
    const long = BAR;
    const ends = [0, long].map((x) =>
      straightRun({ x: left + x, y: y - 2 }, { x: left + x, y: y + 2 }),
    );
    const line = ruled([straightRun({ x: left, y }, { x: left + long, y }), ...ends], 0.25);
    const sentence = told("paper.bar", { real: given(BAR * times), paper: given(BAR) });
    const text = paragraph(tell(voice, sentence), LETTERS.small, width - long - 6);
    const drawn = text(left + long + 4, top);
    return {
      art: joinArt({ shapes: [line], words: [] }, drawn.art),
      bottom: Math.max(drawn.bottom, top + 5),
    };
  };

/** How a small sheet came about, where that must be told. */
type Told = { readonly isHeld: boolean; readonly isOverlaid: boolean };
const AS_ASKED: Told = { isHeld: false, isOverlaid: false };

/** What stands over the pieces of a small sheet. */
const sheetHead = (
  name: string,
  scale: Scale,
  { isHeld, isOverlaid }: Told,
  print: Print,
): Part => {
  const { voice } = print;
  const width = widthIn(roomOn(print.options.paper));
  const size = told("paper.scale", { scale: scaleWord(scale), times: count(scale.times) });
  const sentences = [
    tell(voice, size),
    sayPlain(voice, "paper.net"),
    ...(isOverlaid ? [sayPlain(voice, "paper.overlaid")] : []),
    ...(isHeld ? [sayPlain(voice, "paper.larger")] : []),
  ];
  return together(
    0.6,
    heading(name, LETTERS.step),
    paragraph(sentences.join(" "), LETTERS.small, width),
    bar(scale.times, voice, width),
  );
};

const titlesIn =
  (voice: Voice) =>
  (name: PieceName): string => {
    const word = tell(voice, said(`piece.${name}`));
    return `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;
  };

/** A sheet under its head: the head's drawing, and where the pieces may stand. */
const sheetUnder = (name: string, scale: Scale, how: Told, print: Print) => {
  const room = roomOn(print.options.paper);
  const head = sheetHead(name, scale, how, print)(room.left, room.top);
  const corner = { x: room.left, y: head.bottom + 2 };
  const size = { width: widthIn(room), height: room.bottom - corner.y };
  const page: SmallPage = { corner, size, times: scale.times, titles: titlesIn(print.voice) };
  return { head: head.art, page };
};

/** The block at one scale, on as many sheets as it takes. */
const sheetsAt = (
  { body, garment }: HandoutSubject,
  scale: Scale,
  print: Print,
): readonly Page[] => {
  const { head, page } = sheetUnder(bodyName(body), scale, AS_ASKED, print);
  return blockOnSheets(garment.block, page).map((art) => ({
    art: joinArt(head, art),
    lying: false,
  }));
};

/**
 * The block on one sheet: at a quarter with its pieces apart, or else with the front over the back,
 * or else at the next scale that goes on one sheet.
 */
const oneSheet = ({ body, garment }: HandoutSubject, print: Print): readonly Page[] => {
  const ways = SHEET_SCALES.flatMap((scale) => {
    const isHeld = scale.times > QUARTER.times;
    return [
      { scale, how: { isHeld, isOverlaid: false }, draw: blockApart },
      ...(isHeld ? [] : [{ scale, how: { isHeld, isOverlaid: true }, draw: blockOverlaid }]),
    ];
  });
  for (const { scale, how, draw } of ways) {
    const { head, page } = sheetUnder(bodyName(body), scale, how, print);
    const art = draw(garment.block, page);
    if (art) return [{ art: joinArt(head, art), lying: false }];
  }
  return [];
};

const lessonPages = ({ garment }: HandoutSubject, print: Print): readonly Page[] => {
  const { voice } = print;
  const room = roomOn(print.options.paper);
  const setting = { voice, width: widthIn(room) };
  const byHand = told("paper.byHand", { scale: scaleWord(QUARTER) });
  const head = together(
    1,
    heading(sayPlain(voice, "paper.lesson"), LETTERS.title),
    nameLine(setting),
    paragraph(tell(voice, byHand), LETTERS.text, setting.width),
  );
  const steps = lesson(garment).map((step, i) => stepToDo(step, i + 1, setting));
  return flowed([head, ...steps], room, GAP).map((art) => ({ art, lying: false }));
};

const answerPages = ({ garment }: HandoutSubject, print: Print): readonly Page[] => {
  const { voice } = print;
  const room = roomOn(print.options.paper);
  const setting = { voice, width: widthIn(room) };
  const head = together(
    0.5,
    heading(sayPlain(voice, "paper.answers"), LETTERS.title),
    paragraph(sayPlain(voice, "paper.old"), LETTERS.small, setting.width),
  );
  const steps = lesson(garment).map((step, i) => stepAnswered(step, i + 1, setting));
  return flowed([head, ...steps], room, GAP).map((art) => ({ art, lying: false }));
};

/**
 * A class's handout: steps with blanks, the block to cut out at a quarter and at a fifth, and on
 * its last pages, where asked, the answers with their sums.
 */
export const handoutPdf = async (
  subject: HandoutSubject,
  options: HandoutOptions,
): Promise<Uint8Array> => {
  const print = printOf(bodyName(subject.body), options);
  const pages = [
    ...lessonPages(subject, print),
    ...sheetsAt(subject, QUARTER, print),
    ...sheetsAt(subject, FIFTH, print),
    ...(options.answers ? answerPages(subject, print) : []),
  ];
  return pagesPdf(`Ribwright handout, ${subject.body.id}`, pages, print);
};

/** Every pupil's block on a sheet of its own, at a quarter or the next scale that fits one sheet. */
export const classPdf = async (
  title: string,
  pupils: readonly HandoutSubject[],
  options: PrintOptions,
): Promise<Uint8Array> => {
  const print = printOf(title, options);
  const pages = pupils.flatMap((pupil) => oneSheet(pupil, print));
  return pagesPdf(`Ribwright class, ${title}`, pages, print);
};

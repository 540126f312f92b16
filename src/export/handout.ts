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
import { blockOnOneSheet, blockOnSheets, type ScaledSheet, type SheetRoom } from "./scaledSheet.ts";
import { heading, heightOf, type Part, paragraph } from "./stack.ts";
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

/** A scale, and whether it had to be smaller than the class's quarter to go on one sheet. */
type Scale = (typeof SHEET_SCALES)[number] & { readonly isHeld?: boolean };

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

/** What stands over the pieces of a small sheet. */
const sheetHead = (name: string, scale: Scale, print: Print, width: Mm): Part => {
  const { voice } = print;
  const size = told("paper.scale", { scale: scaleWord(scale), times: count(scale.times) });
  return together(
    0.8,
    heading(name, LETTERS.step),
    paragraph(`${tell(voice, size)} ${sayPlain(voice, "paper.net")}`, LETTERS.small, width),
    ...(scale.isHeld ? [paragraph(sayPlain(voice, "paper.larger"), LETTERS.small, width)] : []),
    bar(scale.times, voice, width),
  );
};

const titlesIn =
  (voice: Voice) =>
  (name: PieceName): string => {
    const word = tell(voice, said(`piece.${name}`));
    return `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;
  };

/** Room for the pieces under their head, upright and lying. */
const roomUnder = (name: string, scale: Scale, print: Print): SheetRoom => {
  const under = (lying: boolean) => {
    const room = roomOn(print.options.paper, lying);
    const high = heightOf(sheetHead(name, scale, print, widthIn(room)));
    return { ...room, top: room.top + high + 3 };
  };
  return { upright: under(false), lying: under(true) };
};

const headed = (sheet: ScaledSheet, name: string, scale: Scale, print: Print): Page => {
  const room = roomOn(print.options.paper, sheet.lying);
  const head = sheetHead(name, scale, print, widthIn(room))(room.left, room.top);
  return { art: joinArt(head.art, sheet.art), lying: sheet.lying };
};

/** The block at one scale, on as many sheets as it takes. */
const sheetsAt = (
  { body, garment }: HandoutSubject,
  scale: Scale,
  print: Print,
): readonly Page[] => {
  const name = bodyName(body);
  const page = { room: roomUnder(name, scale, print), titles: titlesIn(print.voice) };
  return blockOnSheets(garment, scale.times, page).map((sheet) =>
    headed(sheet, name, scale, print),
  );
};

/** The block on one sheet, at the largest scale at which it goes on one. */
const oneSheet = ({ body, garment }: HandoutSubject, print: Print): readonly Page[] => {
  const name = bodyName(body);
  const titles = titlesIn(print.voice);
  for (const each of SHEET_SCALES) {
    const scale: Scale = { ...each, isHeld: each.times > QUARTER.times };
    const room = roomUnder(name, scale, print);
    const sheet = blockOnOneSheet(garment, scale.times, { room, titles });
    if (sheet) return [headed(sheet, name, scale, print)];
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

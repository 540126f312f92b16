import type { Garment } from "../bands/garment.ts";
import type { Mm } from "../geometry/units.ts";
import { assumedSentences, clothSentences } from "../guide/clothWords.ts";
import { makingUp } from "../guide/makingUp.ts";
import type { Picture } from "../guide/picture.ts";
import type { GuideStep } from "../guide/step.ts";
import { tableTest } from "../guide/tableTest.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { said } from "../guide/words/told.ts";
import { clothNeeded } from "../lay/clothNeeded.ts";
import { arcPart } from "./arcPage.ts";
import {
  beside,
  boxed,
  INDENT,
  LETTERS,
  markTable,
  pictureRow,
  stepText,
  stitchLines,
} from "./guideParts.ts";
import { bodyName } from "./pieceFacts.ts";
import {
  flowed,
  indented,
  type PrintOptions,
  pagesPdf,
  printOf,
  roomOn,
  rule,
  together,
  widthIn,
} from "./printPage.ts";
import { heading, hung, type Part, paragraph } from "./stack.ts";
import type { SheetSubject } from "./subject.ts";

/** One body's garment, and whether a child is to wear it. */
export type GuideSubject = {
  readonly body: SheetSubject["body"];
  readonly garment: Garment;
  readonly isChild?: boolean;
};

type Setting = { readonly voice: Voice; readonly width: Mm };

const GAP: Mm = 4;
const ONE_HIGH: Mm = 50;
const TWO_HIGH: Mm = 56;

/** Long and low pictures take a row of their own, others stand in pairs. */
const rowsOf = (pictures: readonly Picture[]): readonly (readonly Picture[])[] => {
  const isLong = ({ view }: Picture): boolean =>
    view.right - view.left > 3 * (view.bottom - view.top);
  const [long, others] = [pictures.filter(isLong), pictures.filter((p) => !isLong(p))];
  const pairs = others.flatMap((_, i) => (i % 2 === 0 ? [others.slice(i, i + 2)] : []));
  return [...pairs, ...long.map((picture) => [picture])];
};

const pictureParts = ({ pictures }: GuideStep, { voice, width }: Setting): readonly Part[] =>
  rowsOf(pictures).map((row) =>
    indented(INDENT, pictureRow(row, width - INDENT, row.length > 1 ? TWO_HIGH : ONE_HIGH, voice)),
  );

const careParts = (step: GuideStep, { voice, width }: Setting): readonly Part[] => {
  const inner = width - INDENT;
  const parts = [
    ...stitchLines(step, inner, voice),
    ...(step.cautions.length > 0
      ? [boxed(said("paper.cautions"), step.cautions, inner, voice)]
      : []),
  ];
  return parts.length > 0 ? [indented(INDENT, together(1.6, ...parts))] : [];
};

/** How much of the width a step's one picture takes, beside its sentences. */
const BESIDE: Mm = 74;
const BESIDE_HIGH: Mm = 52;

/** What to do, and what it looks like: beside it where there is one picture, or below. */
const stepHead = (step: GuideStep, n: number, setting: Setting): readonly Part[] => {
  const { voice, width } = setting;
  const { pictures } = step;
  if (pictures.length === 1) {
    const at = width - BESIDE;
    const text = stepText(step, n, { voice, width: at - 5 });
    return [beside(text, pictureRow(pictures, BESIDE, BESIDE_HIGH, voice), at)];
  }
  return [stepText(step, n, setting), ...pictureParts(step, setting)];
};

/** One step: what to do with its pictures, where the marks fall, stitch and care. */
const stepParts = (step: GuideStep, n: number, setting: Setting): readonly Part[] => {
  const { voice, width } = setting;
  const [head, first, ...more] = stepHead(step, n, setting);
  const care = careParts(step, setting);
  const begin = [rule(width), ...(head ? [head] : []), ...(first ? [first] : [])];
  // A step without a table stays whole; one with a table is parted before its further pictures.
  if (!step.marks) return [together(GAP, ...begin, ...more, ...care)];
  const table = indented(INDENT, markTable(step.marks, width - INDENT, voice));
  return [together(GAP, ...begin), ...more, together(GAP, table, ...care)];
};

const listPart = (sentences: readonly string[], size: Mm, width: Mm): Part =>
  together(0.6, ...sentences.map((sentence) => hung("–", sentence, size, width)));

const clothParts = ({ garment }: GuideSubject, { voice, width }: Setting): readonly Part[] => {
  const cloth = clothNeeded(garment);
  const say = (sentences: ReturnType<typeof clothSentences>) =>
    sentences.map((sentence) => tell(voice, sentence));
  return [
    together(
      1.5,
      rule(width),
      heading(tell(voice, said("cloth.title")), LETTERS.step),
      listPart(say(clothSentences(cloth)), LETTERS.table, width),
      listPart(say(assumedSentences(cloth)), LETTERS.small, width),
    ),
  ];
};

const testParts = ({ garment }: GuideSubject, { voice, width }: Setting): readonly Part[] => {
  const test = tableTest(garment);
  return [
    together(
      2,
      heading(tell(voice, test.title), LETTERS.step),
      paragraph(tell(voice, test.need), LETTERS.text, width),
      ...test.steps.map(({ title, sentences }) =>
        together(
          0.8,
          heading(tell(voice, title), LETTERS.text),
          listPart(
            sentences.map((sentence) => tell(voice, sentence)),
            LETTERS.text,
            width,
          ),
        ),
      ),
      boxed(said("paper.cautions"), test.cautions, width, voice),
    ),
    arcPart(test, garment.bands.neckband.finishedDepth, voice),
  ];
};

/** The sewing guide as a PDF: large letters, a box to tick for each step, the rib's table test. */
export const guidePdf = async (
  subject: GuideSubject,
  options: PrintOptions,
): Promise<Uint8Array> => {
  const name = bodyName(subject.body);
  const print = printOf(name, options);
  const room = roomOn(options.paper);
  const setting: Setting = { voice: print.voice, width: widthIn(room) };
  const { voice, width } = setting;
  const steps = makingUp(subject.garment, { isChild: subject.isChild ?? false });
  const head = together(
    0.5,
    heading(tell(voice, said("paper.making")), LETTERS.title),
    paragraph(`${name}. ${tell(voice, said("paper.order"))}`, LETTERS.text, width),
  );
  const work = [head, ...steps.flatMap((step, i) => stepParts(step, i + 1, setting))];
  const pages = [
    ...flowed([...work, ...clothParts(subject, setting)], room, GAP),
    ...flowed(testParts(subject, setting), room, GAP),
  ].map((art) => ({ art, lying: false }));
  return pagesPdf(`Ribwright making up, ${subject.body.id}`, pages, print);
};

/** The rib's table test by itself: its steps, and the arc that a folded band is laid on, at 1:1. */
export const tableTestPdf = async (
  subject: GuideSubject,
  options: PrintOptions,
): Promise<Uint8Array> => {
  const print = printOf(bodyName(subject.body), options);
  const room = roomOn(options.paper);
  const parts = testParts(subject, { voice: print.voice, width: widthIn(room) });
  const pages = flowed(parts, room, GAP).map((art) => ({ art, lying: false }));
  return pagesPdf(`Ribwright table test, ${subject.body.id}`, pages, print);
};

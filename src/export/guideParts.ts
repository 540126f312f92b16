import type { Mm } from "../geometry/units.ts";
import type { MarkTable } from "../guide/bandMarks.ts";
import type { Picture } from "../guide/picture.ts";
import type { GuideStep } from "../guide/step.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { said, type Told } from "../guide/words/told.ts";
import { boxRun, joinArt, type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import { pictureArt } from "./pictureArt.ts";
import { indented, together } from "./printPage.ts";
import { heading, hung, type Part, paragraph, stacked } from "./stack.ts";

/** Letters for a sheet that lies beside the machine: read at arm's length. Practice. */
export const LETTERS = { title: 9, step: 6.4, text: 4.7, table: 4.1, small: 3.7 } as const;

/** The box to tick, and how far text stands from the left of it. */
const TICK: Mm = 8;
export const INDENT: Mm = 13;

const tickBox: Part = (left, top) => ({
  art: {
    shapes: [
      ruled([boxRun({ left, top: top + 0.8, right: left + TICK, bottom: top + 0.8 + TICK })], 0.5),
    ],
    words: [],
  },
  bottom: top + TICK,
});

/** Two parts side by side, the second `by` mm to the right. */
export const beside =
  (first: Part, second: Part, by: Mm): Part =>
  (left, top) => {
    const [a, b] = [first(left, top), second(left + by, top)];
    return { art: joinArt(a.art, b.art), bottom: Math.max(a.bottom, b.bottom) };
  };

/** A step's number, title and sentences, beside a box to tick. */
export const stepText = (
  { title, sentences }: GuideStep,
  n: number,
  { voice, width }: { readonly voice: Voice; readonly width: Mm },
): Part => {
  const lines = sentences.map((sentence) =>
    hung("–", tell(voice, sentence), LETTERS.text, width - INDENT),
  );
  const head = heading(`${n}  ${tell(voice, title)}`, LETTERS.step);
  return beside(tickBox, together(1.2, head, ...lines), INDENT);
};

const CAPTION: Mm = 1;
const APART: Mm = 8;

/** Pictures side by side, captions below them. */
export const pictureRow =
  (pictures: readonly Picture[], width: Mm, high: Mm, voice: Voice): Part =>
  (left, top) => {
    const most = { width: (width - APART * (pictures.length - 1)) / pictures.length, height: high };
    const drawn = pictures.map((picture, i) =>
      pictureArt(picture, { x: left + i * (most.width + APART), y: top }, most, voice),
    );
    const foot = Math.max(top, ...drawn.map(({ box }) => box.bottom));
    const captions = pictures.map((picture, i) =>
      paragraph(
        tell(voice, picture.title),
        LETTERS.small,
        most.width,
      )(drawn[i]?.box.left ?? left, foot + CAPTION),
    );
    return {
      art: joinArt(...drawn.map(({ art }) => art), ...captions.map(({ art }) => art)),
      bottom: Math.max(foot, ...captions.map(({ bottom }) => bottom)),
    };
  };

type Column = { readonly head: Told; readonly at: number };

/** Columns at shares of the table's width. */
const COLUMNS: readonly Column[] = [
  { head: said("table.mark"), at: 0 },
  { head: said("table.onBand"), at: 0.32 },
  { head: said("table.onOpening"), at: 0.47 },
  { head: said("table.bandNext"), at: 0.62 },
  { head: said("table.openingNext"), at: 0.77 },
  { head: said("table.stretch"), at: 0.9 },
];

const rowPart =
  (cells: readonly string[], width: Mm, { size, strong }: { size: Mm; strong: boolean }): Part =>
  (left, top) => {
    const words = cells.map((cell, i) =>
      wordOf(cell, { x: left + width * (COLUMNS[i]?.at ?? 0), y: top + size }, size, { strong }),
    );
    const foot = top + size * 1.42;
    const line = ruled([straightRun({ x: left, y: foot }, { x: left + width, y: foot })], 0.15);
    return { art: { shapes: [line], words }, bottom: foot + 0.4 };
  };

/** The heads of the columns, broken to two lines where they are long. */
const headPart =
  (width: Mm, voice: Voice): Part =>
  (left, top) => {
    const parts = COLUMNS.map(({ head, at }, i) => {
      const next = COLUMNS[i + 1]?.at ?? 1.02;
      const text = paragraph(tell(voice, head), LETTERS.small, (next - at) * width - 2);
      return text(left + at * width, top);
    });
    const bottom = Math.max(...parts.map((part) => part.bottom)) + 0.6;
    const line = ruled([straightRun({ x: left, y: bottom }, { x: left + width, y: bottom })], 0.4);
    return {
      art: joinArt(...parts.map(({ art }) => art), { shapes: [line], words: [] }),
      bottom,
    };
  };

/** Where the marks fall, and how the band is stretched from each to the next. */
export const markTable = ({ rows }: MarkTable, width: Mm, voice: Voice): Part => {
  const lines = rows.map(({ n, to, onBand, onOpening, band, opening, stretch }) =>
    rowPart(
      [
        `${n}  ${tell(voice, to)}`,
        ...[onBand, onOpening, band, opening].map((value) => voice.length(value, 1)),
        voice.percent(stretch),
      ],
      width,
      { size: LETTERS.table, strong: false },
    ),
  );
  return stacked(headPart(width, voice), ...lines);
};

/** Sentences in a box: cautions stand out from the work. */
export const boxed =
  (title: Told, sentences: readonly Told[], width: Mm, voice: Voice): Part =>
  (left, top) => {
    const inner = together(
      0.8,
      heading(tell(voice, title), LETTERS.small),
      ...sentences.map((sentence) => paragraph(tell(voice, sentence), LETTERS.small, width - 8)),
    );
    const drawn = indented(4, inner)(left, top + 2);
    const box = { left, top, right: left + width, bottom: drawn.bottom + 2 };
    const frame: PageArt = { shapes: [ruled([boxRun(box)], 0.4)], words: [] };
    return { art: joinArt(frame, drawn.art), bottom: box.bottom };
  };

/** The stitches of a step, a line each. */
export const stitchLines = ({ stitches }: GuideStep, width: Mm, voice: Voice): readonly Part[] =>
  stitches.map((stitch) => paragraph(tell(voice, stitch.told), LETTERS.small, width));

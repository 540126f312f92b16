import { type Box, boundsOf } from "../geometry/outline.ts";
import { point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import type { LessonPiece } from "../guide/lesson/lines.ts";
import type { Question } from "../guide/lesson/question.ts";
import type { LessonStep } from "../guide/lesson/step.ts";
import { tell, tellBlank, type Voice } from "../guide/words/tell.ts";
import { said } from "../guide/words/told.ts";
import { flattened } from "./flatten.ts";
import { type PageArt, type Run, ruled, straightRun } from "./pageArt.ts";
import { indented, together } from "./printPage.ts";
import { heading, hung, type Part, paragraph, stacked } from "./stack.ts";

export const LETTERS = { title: 8, step: 5.2, text: 4, small: 3.4 } as const;

type Setting = { readonly voice: Voice; readonly width: Mm };

/** A line to write on. */
const writingLine =
  (width: Mm, height: Mm): Part =>
  (left, top) => ({
    art: {
      shapes: [
        ruled(
          [straightRun({ x: left, y: top + height }, { x: left + width, y: top + height })],
          0.2,
        ),
      ],
      words: [],
    },
    bottom: top + height,
  });

const INDENT: Mm = 7;
const LINE: Mm = 9;

/** A word and a line to write on beside it. */
const blank =
  (word: string, at: Mm, width: Mm): Part =>
  (left, top) => {
    const text = heading(word, LETTERS.small)(left, top + LINE - LETTERS.small * 1.32);
    const line = writingLine(width - at, LINE)(left + at, top);
    return {
      art: {
        shapes: [...text.art.shapes, ...line.art.shapes],
        words: [...text.art.words, ...line.art.words],
      },
      bottom: line.bottom + 1,
    };
  };

/** The pupil's name, to be written. */
export const nameLine = ({ voice, width }: Setting): Part =>
  blank(tell(voice, said("paper.name")), 18, width / 2);

const asked = ({ ask }: Question, { voice, width }: Setting): Part =>
  stacked(
    hung("?", tellBlank(voice, ask), LETTERS.text, width),
    indented(INDENT, blank(tell(voice, said("paper.answer")), 22, width - INDENT)),
  );

/** A step for a pupil: what to do, why, and the questions with lines for their answers. */
export const stepToDo = (step: LessonStep, n: number, setting: Setting): Part => {
  const { voice, width } = setting;
  const text = [step.sentence, ...(step.atScale ? [step.atScale] : [])].map((sentence) =>
    paragraph(tellBlank(voice, sentence), LETTERS.text, width),
  );
  return together(
    0.8,
    heading(`${n}  ${tell(voice, step.title)}`, LETTERS.step),
    ...text,
    paragraph(tellBlank(voice, step.why), LETTERS.small, width),
    ...step.questions.map((question) => asked(question, setting)),
  );
};

const pathsOf = (pieces: readonly LessonPiece[]) =>
  pieces.flatMap(({ lines }) => lines.map(({ path }) => path));

const boxRound = (pieces: readonly LessonPiece[]): Box => {
  const boxes = pathsOf(pieces).map(boundsOf);
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

/** A twelfth: three pieces side by side beside their answers. */
const SMALL = 12;
const APART: Mm = 5;

type Pair = { readonly old: readonly LessonPiece[]; readonly now: readonly LessonPiece[] };

/** Pieces that share a frame are drawn over each other: old line under new. */
const pairsOf = ({ before, after }: LessonStep): readonly Pair[] =>
  after
    .filter(({ piece }) => piece !== "vInsert")
    .map((now) => ({
      old: before.filter(({ piece }) => piece === now.piece),
      now: [now, ...(now.piece === "front" ? after.filter((p) => p.piece === "vInsert") : [])],
    }));

/** Before and after, side by side for each piece that the step changes. */
const changeDrawing =
  (step: LessonStep): Part =>
  (left, top) => {
    const pairs = pairsOf(step);
    let x = left;
    let bottom = top;
    const shapes: PageArt["shapes"][number][] = [];
    for (const { old, now } of pairs) {
      const box = boxRound([...old, ...now]);
      const run = (path: ReturnType<typeof pathsOf>[number]): Run => ({
        points: flattened(path, 0.1).map((p) =>
          point(x + (p.x - box.left) / SMALL, top + (p.y - box.top) / SMALL),
        ),
        closed: false,
      });
      if (old.length > 0) shapes.push(ruled(pathsOf(old).map(run), 0.18, [1.6, 1]));
      shapes.push(ruled(pathsOf(now).map(run), 0.3));
      x += (box.right - box.left) / SMALL + APART;
      bottom = Math.max(bottom, top + (box.bottom - box.top) / SMALL);
    }
    return { art: { shapes, words: [] }, bottom };
  };

/** The answers of a step, with their sums, over its small drawing. */
export const stepAnswered = (step: LessonStep, n: number, { voice, width }: Setting): Part => {
  const sums = step.questions.map(({ ask, working }) =>
    stacked(
      hung("?", tell(voice, ask), LETTERS.small, width),
      indented(INDENT, paragraph(tell(voice, working), LETTERS.text, width - INDENT)),
    ),
  );
  const drawing = step.id === "bands" || step.id === "block" ? [] : [changeDrawing(step)];
  return together(
    0.8,
    heading(`${n}  ${tell(voice, step.title)}`, LETTERS.step),
    ...sums,
    ...drawing,
  );
};

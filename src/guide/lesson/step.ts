import type { Told } from "../words/told.ts";
import type { LessonNumber, LessonPiece } from "./lines.ts";
import type { Question } from "./question.ts";

const LESSON_IDS = [
  "block",
  "neckline",
  "side-seams",
  "hem",
  "sleeve-end",
  "v-insert",
  "bands",
  "turnings",
] as const;
export type LessonId = (typeof LESSON_IDS)[number];

/** One step of the lesson, as data. */
export type LessonStep = {
  readonly id: LessonId;
  readonly title: Told;
  readonly sentence: Told;
  readonly why: Told;
  /** Only the pieces that the step changes, as worn; before it and after it. */
  readonly before: readonly LessonPiece[];
  readonly after: readonly LessonPiece[];
  /** Lengths of the new lines: shown, or left off for the class to work out. */
  readonly numbers: readonly LessonNumber[];
  readonly questions: readonly Question[];
  /** What the change is on the handout's small drawings; null where it is no single length. */
  readonly atScale: Told | null;
};

import { CAUTIONS } from "./de/cautions.ts";
import { LESSON } from "./de/lesson.ts";
import { MAKING } from "./de/making.ts";
import { MARKERS } from "./de/markers.ts";
import { PAPER } from "./de/paper.ts";
import { TABLE_TEST } from "./de/tableTest.ts";
import type { GuideWords } from "./told.ts";

/** All that the guide says, in German. */
export const DE: GuideWords = {
  ...MAKING,
  ...CAUTIONS,
  ...TABLE_TEST,
  ...LESSON,
  ...PAPER,
  ...MARKERS,
};

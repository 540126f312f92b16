import { CAUTIONS } from "./en/cautions.ts";
import { LESSON } from "./en/lesson.ts";
import { MAKING } from "./en/making.ts";
import { MARKERS } from "./en/markers.ts";
import { PAPER } from "./en/paper.ts";
import { TABLE_TEST } from "./en/tableTest.ts";

/** All that the guide says, in British English. The keys and slots of every other language. */
export const EN = {
  ...MAKING,
  ...CAUTIONS,
  ...TABLE_TEST,
  ...LESSON,
  ...PAPER,
  ...MARKERS,
} as const;

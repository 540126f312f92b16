import type { CheckSentences } from "./checkSentences.ts";
import { chapters } from "./de/chapters.ts";
import { checkSentences } from "./de/checkSentences.ts";
import { checks } from "./de/checks.ts";
import { labels } from "./de/labels.ts";
import { measures } from "./de/measures.ts";
import { paper } from "./de/paper.ts";
import { shell } from "./de/shell.ts";
import { table } from "./de/table.ts";
import type { Words } from "./en.ts";

/** Every word on the screen, in German. Loaded when it is asked for. */
export const de: Words = {
  ...shell,
  ...measures,
  ...chapters,
  ...table,
  ...paper,
  ...labels,
  ...checks,
};

export const deSentences: CheckSentences = checkSentences;

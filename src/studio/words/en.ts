import { chapters } from "./en/chapters.ts";
import { checks } from "./en/checks.ts";
import { labels } from "./en/labels.ts";
import { measures } from "./en/measures.ts";
import { paper } from "./en/paper.ts";
import { shell } from "./en/shell.ts";
import { table } from "./en/table.ts";

/** Every word on the screen, in English. Other languages are complete by type. */
export const en = {
  ...shell,
  ...measures,
  ...chapters,
  ...table,
  ...paper,
  ...labels,
  ...checks,
} as const;

export type WordKey = keyof typeof en;
export type Words = Readonly<Record<WordKey, string>>;

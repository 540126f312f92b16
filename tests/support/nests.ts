import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { sizeOf } from "../../src/drafting/sizes.ts";
import { layOutNest, type Nest } from "../../src/export/nest.ts";
import type { PaperChoice } from "../../src/export/paperSize.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../../src/export/printChoices.ts";
import type { SheetSubject } from "../../src/export/subject.ts";
import { make } from "../../src/project/make.ts";

const subjectOfSize = (name: string): SheetSubject => {
  const size = sizeOf(name);
  if (!size) throw new Error(`${name} is no size.`);
  const made = make(size.body, DEFAULT_CHOICES, null);
  return { ...made, body: { ...made.body, size: size.body.id } };
};

/** Standard sizes in one. */
export const nestOfSizes = (first: string, ...others: readonly string[]): Nest => [
  subjectOfSize(first),
  ...others.map(subjectOfSize),
];

export const SIXTEEN = nestOfSizes(
  ...(["W80", "W85", "W90", "W95", "W100", "W105", "W110", "W115"] as const),
  ...(["W80-tall", "W90-tall", "W100-tall", "W110-tall"] as const),
  ...(["W80-short", "W90-short", "W100-short", "W110-short"] as const),
);

export const nestOn = (
  nest: Nest,
  paper: PaperChoice = "a4",
  print: PrintChoices = DEFAULT_PRINT,
) => layOutNest(nest, paper, print);

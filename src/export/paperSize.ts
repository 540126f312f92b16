import type { Mm } from "../geometry/units.ts";
import { PAPER_NAMES, PAPERS, type Paper, type PaperName } from "./data/paper.ts";

/** A size of the maker's own, width before height, in mm: 210x330. */
type OwnPaper = `${number}x${number}`;

/** A paper by its name, or a size of the maker's own. */
export type PaperChoice = PaperName | OwnPaper;

export const isPaperName = (word: string): word is PaperName =>
  PAPER_NAMES.some((name) => name === word);

const OWN = /^(\d{1,5}(?:\.\d{1,3})?)x(\d{1,5}(?:\.\d{1,3})?)$/u;

/** The two sides of a size such as 210x330; null where it is none. */
const ownSides = (word: string): { readonly width: Mm; readonly height: Mm } | null => {
  const [, width, height] = OWN.exec(word) ?? [];
  return width === undefined || height === undefined
    ? null
    : { width: Number(width), height: Number(height) };
};

/** Whether a word names a paper or is written like a size; whether the size will do is asked later. */
export const isPaperChoice = (word: string): word is PaperChoice =>
  isPaperName(word) || ownSides(word) !== null;

/** "210 × 330 mm" */
const titleOf = (width: Mm, height: Mm): string => `${width}\u00a0×\u00a0${height}\u00a0mm`;

/** The sheet of a choice, upright. */
export const paperOf = (choice: PaperChoice): Paper => {
  if (isPaperName(choice)) return PAPERS[choice];
  const { width, height } = ownSides(choice) ?? PAPERS.a4;
  return { title: titleOf(width, height), width, height, source: "the maker's own" };
};

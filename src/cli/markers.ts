import { FEWEST_MARKS, MOST_MARKS } from "../export/markerPages.ts";
import type { HomePaper } from "../export/printPage.ts";
import { LANGUAGES, type Language } from "../guide/words/tell.ts";
import { HOME_PAPERS, isOneOf } from "./homeCommands.ts";

export type MarkersCommand = {
  readonly command: "markers";
  readonly marks: number;
  readonly paper: HomePaper;
  readonly language: Language;
  /** The PDF itself, not a folder. */
  readonly out: string;
};

export const MARKERS_OPTIONS = {
  marks: "string",
  paper: "string",
  language: "string",
  out: "string",
} as const;

/** What `markers` asks for, or one sentence about what is wrong with it. */
export const markersWanted = (
  options: ReadonlyMap<string, string>,
): MarkersCommand | { readonly sentence: string } => {
  const [paper, language] = [options.get("paper") ?? "a4", options.get("language") ?? "en"];
  const [number, out] = [options.get("marks") ?? String(FEWEST_MARKS), options.get("out")];
  const marks = Number(number);
  if (out === undefined) return { sentence: "--out MARKS.pdf is missing." };
  if (!out.toLowerCase().endsWith(".pdf"))
    return { sentence: `--out is ${out}; it must be a file that ends in .pdf.` };
  if (!isOneOf(paper, HOME_PAPERS))
    return { sentence: `--paper is ${paper}; it must be one of ${HOME_PAPERS.join(", ")}.` };
  if (!isOneOf(language, LANGUAGES))
    return { sentence: `--language is ${language}; it must be one of ${LANGUAGES.join(", ")}.` };
  if (!(Number.isInteger(marks) && marks >= FEWEST_MARKS && marks <= MOST_MARKS))
    return {
      sentence: `--marks is ${number}; it must be a whole number, ${FEWEST_MARKS} to ${MOST_MARKS}.`,
    };
  return { command: "markers", marks, paper, language, out };
};

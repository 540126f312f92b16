import type { Choices } from "../../drafting/choices.ts";
import type { Body } from "../../drafting/measures.ts";
import type { Block } from "../../drafting/piece.ts";
import type { PaperName } from "../../export/data/paper.ts";
import type { HomePaper } from "../../export/printPage.ts";
import type { Language } from "../units/printLength.ts";

export type ExportKind = "pdf" | "svg" | "dxf" | "report" | "guide" | "handout" | "answers";
/** For reading, not for cutting by: made over a stop as well, on a home printer's paper. */
export const isHome = (kind: ExportKind): boolean =>
  kind === "guide" || kind === "handout" || kind === "answers";

/** The sheets of a home printer that stand nearest to the paper chosen. */
export const homePaper = (paper: PaperName): HomePaper => (paper === "letter" ? "letter" : "a4");

export type ExportPhase = "start" | "draw" | "write";

/** What a file is made from: the same as the command line takes. */
export type ExportJob = {
  readonly kind: ExportKind;
  readonly body: Body;
  readonly choices: Choices;
  readonly block: Block | null;
  readonly paper: PaperName;
  readonly date: string | null;
  readonly language: Language;
  /** The guide then warns of cords and small parts. */
  readonly isChild: boolean;
};

export type ExportAnswer =
  | { readonly kind: "phase"; readonly phase: ExportPhase; readonly share: number }
  | { readonly kind: "done"; readonly bytes: BlobPart }
  | { readonly kind: "failed"; readonly why: string };

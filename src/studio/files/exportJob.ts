import type { Choices } from "../../drafting/choices.ts";
import type { Body } from "../../drafting/measures.ts";
import type { Block } from "../../drafting/piece.ts";
import type { PaperChoice } from "../../export/paperSize.ts";
import type { PrintChoices } from "../../export/printChoices.ts";
import type { HomePaper } from "../../export/printPage.ts";
import type { Language } from "../units/printLength.ts";

type HomeKind = "guide" | "handout" | "answers" | "test";
/** The same pattern on one large page: on paper, or thrown on the cloth. */
type LargeKind = "copyShop" | "projector";
export type ExportKind = "pdf" | "svg" | "dxf" | "report" | LargeKind | HomeKind;
const HOME: readonly ExportKind[] = ["guide", "handout", "answers", "test"] satisfies HomeKind[];
/** For reading, not for cutting by: made over a stop as well, on a home printer's paper. */
export const isHome = (kind: ExportKind): kind is HomeKind => HOME.includes(kind);

/** The sheets of a home printer that stand nearest to the paper chosen. */
export const homePaper = (paper: PaperChoice): HomePaper => (paper === "letter" ? "letter" : "a4");

export type ExportPhase = "start" | "draw" | "write" | "pupils" | "bodies";

/** What a file is made from: the same as the command line takes. */
export type ExportJob = {
  readonly kind: ExportKind;
  readonly body: Body;
  readonly choices: Choices;
  readonly block: Block | null;
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  /** What a copy shop prints on. */
  readonly large: PaperChoice;
  /** What guide and handout are printed on. */
  readonly home: HomePaper;
  readonly date: string | null;
  readonly language: Language;
  /** The guide then warns of cords and small parts. */
  readonly isChild: boolean;
};

/** Every pupil's small block, a sheet each. */
export type ClassJob = {
  readonly kind: "class";
  readonly title: string;
  readonly pupils: readonly Body[];
  readonly choices: Choices;
  readonly home: HomePaper;
  readonly date: string | null;
  readonly language: Language;
};

/** A body in a nested file; a standard size is told by its name. */
export type NestedBody = { readonly body: Body; readonly size?: string };

/** Several bodies or sizes over each other, each a layer. */
export type NestedJob = {
  readonly kind: "nested";
  readonly bodies: readonly NestedBody[];
  readonly choices: Choices;
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  readonly date: string | null;
};

/** The marks for photographing a block: the same whoever is drafted for. */
export type MarkersJob = {
  readonly kind: "markers";
  readonly home: HomePaper;
  readonly language: Language;
};

export type ExportAnswer =
  | { readonly kind: "phase"; readonly phase: ExportPhase; readonly share: number }
  | { readonly kind: "done"; readonly bytes: BlobPart }
  | { readonly kind: "failed"; readonly why: string };

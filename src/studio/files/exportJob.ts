import type { Choices } from "../../drafting/choices.ts";
import type { Body } from "../../drafting/measures.ts";
import type { Block } from "../../drafting/piece.ts";
import type { PaperName } from "../../export/data/paper.ts";

export type ExportKind = "pdf" | "svg" | "dxf" | "report";
export type ExportPhase = "start" | "draw" | "write";

/** What a file is made from: the same as the command line takes. */
export type ExportJob = {
  readonly kind: ExportKind;
  readonly body: Body;
  readonly choices: Choices;
  readonly block: Block | null;
  readonly paper: PaperName;
  readonly date: string | null;
};

export type ExportAnswer =
  | { readonly kind: "phase"; readonly phase: ExportPhase; readonly share: number }
  | { readonly kind: "done"; readonly bytes: BlobPart }
  | { readonly kind: "failed"; readonly why: string };

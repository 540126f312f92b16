import type { Piece } from "../../drafting/piece.ts";
import { layOut } from "../../export/layout.ts";
import type { PaperChoice } from "../../export/paperSize.ts";
import type { PrintChoices } from "../../export/printChoices.ts";
import type { Sheets } from "../../export/sheets.ts";

let last: {
  readonly pieces: readonly Piece[];
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  readonly sheets: Sheets;
} | null = null;

/** The sheets of these pieces, laid out once for each input. */
export const sheetsOf = (
  pieces: readonly Piece[],
  { paper, print }: { readonly paper: PaperChoice; readonly print: PrintChoices },
): Sheets => {
  if (last && last.pieces === pieces && last.paper === paper && last.print === print) {
    return last.sheets;
  }
  last = { pieces, paper, print, sheets: layOut(pieces, paper, print) };
  return last.sheets;
};

import type { Piece } from "../../drafting/piece.ts";
import type { PaperName } from "../../export/data/paper.ts";
import { layOut } from "../../export/layout.ts";
import type { Sheets } from "../../export/sheets.ts";

let last: {
  readonly pieces: readonly Piece[];
  readonly paper: PaperName;
  readonly sheets: Sheets;
} | null = null;

/** The sheets of these pieces, laid out once for each input. */
export const sheetsOf = (pieces: readonly Piece[], paper: PaperName): Sheets => {
  if (last && last.pieces === pieces && last.paper === paper) return last.sheets;
  last = { pieces, paper, sheets: layOut(pieces, paper) };
  return last.sheets;
};

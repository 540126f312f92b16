import type { Piece, PieceName } from "../../drafting/piece.ts";
import { EDGE } from "../../export/nesting.ts";
import type { Placement } from "../../export/placement.ts";
import type { Sheets } from "../../export/sheets.ts";
import { withPrint } from "../fields/printFields.ts";
import { turnedAQuarter } from "../table/laying.ts";
import { say } from "../words/say.ts";
import { change, dropGesture } from "./changes.ts";
import { put, work } from "./store.ts";

let hands = 0;

/** A new hand on a piece: all that it does until it lets go is one step of undo. */
export const newHand = (): string => `lay-${++hands}`;

/**
 * A piece laid by hand. All the others are laid where they stand, and the sheets as they lie: or the
 * program would pack them anew round the hand.
 */
export const layPiece = (sheets: Sheets, to: Placement, hand: string): void => {
  const now = work();
  const placed = sheets.placements.map((own) => (own.piece === to.piece ? to : own));
  const turn = sheets.lying ? "landscape" : "portrait";
  change(
    withPrint(now, { placed, turn }),
    () => say("step.laid", { piece: say(`piece.${to.piece}`) }),
    hand,
  );
};

/** A quarter turn, from the page. */
export const turnPiece = (pieces: readonly Piece[], sheets: Sheets, name: PieceName): void => {
  const piece = pieces.find((one) => one.name === name);
  const at = sheets.placements.find((own) => own.piece === name);
  if (piece && at) layPiece(sheets, turnedAQuarter(piece, at, ANYWHERE), newHand());
};
/** A piece that is turned may lie further right or down than it did. */
const ANYWHERE = { left: EDGE, top: EDGE, right: Infinity, bottom: Infinity };

/** While a piece is dragged what is slow stays as it was. */
export const takePiece = (): void => put({ dragging: true });
export const letPieceGo = (): void => put({ dragging: false });

/** Escape while dragging. */
export const putPieceBack = (hand: string): void => {
  dropGesture(hand);
  letPieceGo();
};

/** All pieces where the program lays them. */
export const packAgain = (): void =>
  change(withPrint(work(), { placed: [] }), () => say("step.packed"));

export const wantSheets = (only: readonly string[]): void => {
  const now = work();
  change({ ...now, print: { ...now.print, only } }, () => say("step.wanted"));
};

import { create } from "zustand";
import type { Fault } from "../../drafting/fault.ts";
import type { Mm } from "../../geometry/units.ts";
import { proposeNames } from "../../trace/edges/proposeNames.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import { begun, changed, type History, letGo, redone, undone } from "../state/history.ts";
import { openBringing } from "./bringing.ts";
import { namingOf } from "./naming.ts";
import {
  type Brought,
  type Chosen,
  NEW_OWN,
  type OwnBlock,
  type OwnPiece,
  type Way,
} from "./ownBlock.ts";
import { ownSay } from "./ownSay.ts";

/** The steps of bringing a block in, in order. */
export const STEPS = ["way", "pieces", "edges", "turnings", "doctor"] as const;
export type Step = (typeof STEPS)[number];

type OwnState = {
  /** The block on its way, with what was done to it: its undo is apart from the work's. */
  readonly history: History<OwnBlock, string>;
  readonly step: Step;
  /** The piece whose edges are named, or that is traced. */
  readonly piece: OwnPiece;
  /** The edge in hand (`raglan`), or a shape of the drawing (`shape.3`). */
  readonly lit: string | null;
  /** What was just refused, as it was told; the work stays as it was. */
  readonly told: Fault | null;
  /** A remedy that is tried on the drawing and not done yet. */
  readonly trial: Chosen | null;
  /** The file that is being read. */
  readonly busy: string | null;
};

export const useOwn = create<OwnState>()(() => ({
  history: begun(NEW_OWN),
  step: "way",
  piece: "front",
  lit: null,
  told: null,
  trial: null,
  busy: null,
}));

export const putOwn = (change: Partial<OwnState>): void => useOwn.setState(change);
export const own = (): OwnBlock => useOwn.getState().history.present;

/** One named step; with the same gesture as the last it becomes part of it. */
export const changeOwn = (to: OwnBlock, name: string, gesture?: string): void => {
  const { history } = useOwn.getState();
  const step = { to, name: () => name, ...(gesture === undefined ? {} : { gesture }) };
  putOwn({ history: changed(history, step), told: null, trial: null });
};

export const undoOwn = (): void =>
  putOwn({ history: undone(useOwn.getState().history), told: null, trial: null });
export const redoOwn = (): void =>
  putOwn({ history: redone(useOwn.getState().history), told: null, trial: null });
/** Takes the gesture in hand back: Escape while dragging. */
export const dropOwnGesture = (gesture: string): void =>
  putOwn({ history: letGo(useOwn.getState().history, gesture) });

/** Opens the door by one of its ways. What was begun before stays where it is. */
export const beginOwnBlock = (way: Way): void => {
  if (own().way !== way) changeOwn({ ...own(), way }, ownSay("own.step.way"));
  putOwn({ step: "pieces" });
  openBringing();
};

/**
 * The piece with an outline brought to it: the corners of its edges are proposed by its shape.
 * Remedies go: they were chosen for other lines.
 */
export const withOutline = (
  now: OwnBlock,
  piece: OwnPiece,
  outline: Omit<Brought, "naming">,
): OwnBlock => {
  const likeliest = proposeNames(outline.runs).find((named) => named.piece === piece);
  const naming = likeliest ? namingOf(outline.runs, likeliest) : null;
  return { ...now, pieces: { ...now.pieces, [piece]: { ...outline, naming } }, remedies: [] };
};

/**
 * An outline traced or read, in mm, from corner to corner round the piece, with the error foretold
 * for it (null: none). One step of undo.
 */
export const putOutline = (
  piece: OwnPiece,
  runs: CornerRing,
  foretold: Mm | null,
  from: string,
): void =>
  changeOwn(
    withOutline(own(), piece, { runs, foretold, from }),
    ownSay("own.step.outline", { piece: ownSay(`own.piece.${piece}`) }),
  );

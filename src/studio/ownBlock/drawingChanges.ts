import { endOf, startOf } from "../../geometry/path.ts";
import { apart } from "../../geometry/point.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import { pieceIn } from "./drawing.ts";
import { type Drawing, OWN_PIECES, type OwnBlock, type OwnPiece } from "./ownBlock.ts";
import { changeOwn, own, withOutline } from "./state.ts";

/** Runs nearer than this are the same runs. */
const SAME = 1e-6;

const sameRuns = (a: CornerRing, b: CornerRing): boolean =>
  a.length === b.length &&
  a.every((run, i) => {
    const other = b[i];
    return (
      other !== undefined &&
      run.length === other.length &&
      apart(startOf(run), startOf(other)) < SAME &&
      apart(endOf(run), endOf(other)) < SAME
    );
  });

/** A piece taken anew out of the drawing; where its lines are the same, it keeps its names. */
const pieceTaken = (now: OwnBlock, drawing: Drawing, piece: OwnPiece): OwnBlock => {
  const before = now.pieces[piece];
  const told = pieceIn(drawing, piece);
  if (told && "found" in told) {
    const { runs, byEdges } = told.found;
    if (before && sameRuns(before.runs, runs)) return now;
    const taken = withOutline(now, piece, { runs, from: drawing.name, foretold: null });
    const brought = taken.pieces[piece];
    if (!byEdges || !brought) return taken;
    const naming = { isWhole: false, isTurnedOver: false, corners: runs.map((_, i) => i) };
    return { ...taken, pieces: { ...taken.pieces, [piece]: { ...brought, naming } } };
  }
  // What another file or picture brought stays.
  if (before?.from !== drawing.name) return now;
  return { ...now, pieces: { ...now.pieces, [piece]: null }, remedies: [] };
};

/** The block with this drawing open, and with the pieces that it gives. */
export const withDrawing = (now: OwnBlock, drawing: Drawing): OwnBlock =>
  OWN_PIECES.reduce<OwnBlock>((block, piece) => pieceTaken(block, drawing, piece), {
    ...now,
    drawing,
  });

/** One named step of the drawing. */
export const changeDrawing = (to: Drawing, name: string, gesture?: string): void =>
  changeOwn(withDrawing(own(), to), name, gesture);

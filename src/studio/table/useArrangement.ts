import { useRef } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { isBand } from "../../export/pieceLines.ts";
import type { Box } from "../../geometry/outline.ts";
import { boundsOf } from "../../geometry/outline.ts";
import type { Path } from "../../geometry/segment.ts";
import { useStudio } from "../state/store.ts";
import { type Arrangement, arranged, type Margins, type Slot } from "./arrange.ts";
import { cutBox } from "./marks.ts";
import type { Size } from "./view.ts";

const joinedBox = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map((b) => b.left)),
  top: Math.min(...boxes.map((b) => b.top)),
  right: Math.max(...boxes.map((b) => b.right)),
  bottom: Math.max(...boxes.map((b) => b.bottom)),
});

/** Room for what is written round a piece, in px. */
const slotOf = (piece: Piece, old: readonly Path[], dimensions: boolean): Slot => {
  const small = isBand(piece) || piece.name === "vInsert";
  const tallFigure = dimensions && (isBand(piece) || piece.name === "front");
  return {
    name: piece.name,
    box: joinedBox([cutBox(piece), ...old.map(boundsOf)]),
    left: tallFigure ? 36 : 10,
    least: small ? (isBand(piece) ? 170 : 130) : 0,
    above: small ? 24 : 0,
    below: dimensions && piece.name !== "vInsert" ? 36 : 6,
  };
};

/** Front and back share a frame, so they lie at one height. */
const levelled = (row: readonly Slot[]): readonly Slot[] => {
  const bodies = row.filter(({ name }) => name === "front" || name === "back");
  const top = Math.min(...bodies.map(({ box }) => box.top));
  const bottom = Math.max(...bodies.map(({ box }) => box.bottom));
  return row.map((slot) =>
    bodies.includes(slot) ? { ...slot, box: { ...slot.box, top, bottom } } : slot,
  );
};

type Given = {
  readonly rows: readonly (readonly Piece[])[];
  readonly oldOf: (piece: Piece) => readonly Path[];
  readonly size: Size;
  readonly margins: Margins;
  readonly dimensions: boolean;
};

/** Where the pieces lie. While a pin is in hand nothing else moves. */
export const useArrangement = ({ rows, oldOf, size, margins, dimensions }: Given): Arrangement => {
  const dragging = useStudio((s) => s.dragging);
  const kept = useRef<Arrangement | null>(null);
  if (dragging && kept.current) return kept.current;
  const slots = rows.map((row) =>
    levelled(row.map((piece) => slotOf(piece, oldOf(piece), dimensions))),
  );
  kept.current = arranged(slots, size, margins);
  return kept.current;
};

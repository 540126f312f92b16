import { memo } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Print } from "../state/print.ts";
import { sameValue } from "../state/sameValue.ts";
import { put, useStudio } from "../state/store.ts";
import type { Say } from "../words/say.ts";
import type { Frame } from "./frame.ts";
import type { Place } from "./lines.ts";
import { cutBox, sewBox } from "./marks.ts";
import { PieceLines } from "./PieceLines.tsx";
import { cutWords, PieceMarks } from "./PieceMarks.tsx";

type Lights = {
  readonly lit: readonly Place[];
  readonly partners: readonly string[];
  readonly checked: readonly Place[];
  readonly hover: (at: Place | null) => void;
};

type Props = {
  readonly piece: Piece;
  readonly frame: Frame;
  readonly old: readonly Path[];
  readonly turnings: boolean;
  readonly lights: Lights;
  readonly dimensions: boolean;
  readonly say: Say;
  readonly print: Print;
};

const labelOf = ({ piece, turnings, say, print }: Props, held: boolean): string => {
  const box = turnings ? cutBox(piece) : sewBox(piece);
  return say("table.pieceName", {
    name: say(`piece.${piece.name}`),
    cut: say(cutWords(piece)),
    height: print.full(box.bottom - box.top),
    width: print.full(box.right - box.left),
    held: held ? say("table.held") : "",
  });
};

/** In mm and px, far finer than a drawing is written: a sum's last digit draws nothing anew. */
const HAIR = 1e-6;

const sameProps = (before: Props, after: Props): boolean =>
  before.lights === after.lights &&
  before.print === after.print &&
  before.say === after.say &&
  before.turnings === after.turnings &&
  before.dimensions === after.dimensions &&
  sameValue(before.frame, after.frame, HAIR) &&
  sameValue(before.old, after.old, HAIR) &&
  sameValue(before.piece, after.piece, HAIR);

/** A piece on the table: it may be held, and says what it is. Drawn anew only where it changed. */
export const PieceView = memo(function PieceView(props: Props) {
  const { piece, lights, turnings, dimensions, frame, old, say, print } = props;
  const held = useStudio((s) => s.heldPiece === piece.name);
  const hold = () => put({ heldPiece: held ? null : piece.name });
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not go into a drawing
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of a drawing is no control
    <g
      className={`pieceGroup${held ? " isHeld" : ""}`}
      role="group"
      tabIndex={0}
      aria-label={labelOf(props, held)}
      data-piece={piece.name}
      onClick={hold}
      onKeyDown={(event) => {
        if (event.key !== "Enter" || event.target !== event.currentTarget) return;
        event.preventDefault();
        hold();
      }}
    >
      <PieceLines piece={piece} frame={frame} old={old} turnings={turnings} {...lights} />
      <PieceMarks
        piece={piece}
        frame={frame}
        turnings={turnings}
        dimensions={dimensions}
        low={Math.max(Number.NEGATIVE_INFINITY, ...old.map((path) => boundsOf(path).bottom))}
        say={say}
        print={print}
      />
    </g>
  );
}, sameProps);

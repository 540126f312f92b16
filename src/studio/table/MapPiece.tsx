import type { PointerEvent } from "react";
import type { Sheets } from "../../export/sheets.ts";
import type { Box } from "../../geometry/outline.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { placedBox } from "./laying.ts";
import { PieceArt } from "./PieceArt.tsx";
import { type Laid, type MapView, mapFrame } from "./sheetMap.ts";
import { useLaying } from "./useLaying.ts";

type Props = {
  readonly laid: Laid;
  readonly sheets: Sheets;
  readonly view: MapView;
  readonly room: Box;
  readonly click: (event: PointerEvent<SVGGElement>) => void;
};

/** Smaller than this, names would hide the map. */
const NAMED = 0.2;

/** A piece on the page map, to be laid elsewhere by hand or by keys. */
export function MapPiece({ laid, sheets, view, room, click }: Props) {
  const say = useSay();
  const p = usePrint();
  const { piece, at } = laid;
  const held = useStudio((s) => s.heldPiece === piece.name);
  const handlers = useLaying({ piece, at, sheets, view, room, click });
  const name = say(`piece.${piece.name}`);
  const { left, top } = placedBox(piece, at);
  return (
    // biome-ignore lint/a11y/useSemanticElements: HTML's own button does not go into a drawing
    <g
      className={`mapPiece${held ? " isHeld" : ""}`}
      role="button"
      aria-pressed={held}
      tabIndex={0}
      aria-label={say("paper.place", { piece: name, x: p.full(left), y: p.full(top) })}
      data-map-piece={piece.name}
      {...handlers}
    >
      <g className="mini" transform={mapFrame(at, view)}>
        <PieceArt piece={piece} />
      </g>
      {view.scale < NAMED ? null : (
        <text
          className="pieceName haloP"
          textAnchor="middle"
          pointerEvents="none"
          transform={`translate(${view.x + laid.x * view.scale} ${view.y + laid.y * view.scale + 5})${laid.upright ? " rotate(-90)" : ""}`}
        >
          {name}
        </text>
      )}
    </g>
  );
}

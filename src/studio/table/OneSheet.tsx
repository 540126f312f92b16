import type { SheetPage, Sheets } from "../../export/sheets.ts";
import type { Box } from "../../geometry/outline.ts";
import { useSay } from "../words/say.ts";
import { PieceArt } from "./PieceArt.tsx";
import { type Laid, type MapView, mapFrame, nameOf } from "./sheetMap.ts";
import { Unread } from "./Unread.tsx";

type Props = {
  readonly page: SheetPage;
  readonly sheets: Sheets;
  readonly laid: readonly Laid[];
  readonly view: MapView;
  /** Its test square in the layout's frame, where that is known already. */
  readonly square: Box | null;
};

/** Smaller than this the square has no room for its size, in px. */
const WORDED = 36;

function TestSquare({ square, origin }: { readonly square: Box; readonly origin: MapView }) {
  const say = useSay();
  const { scale } = origin;
  const [left, top] = [origin.x + square.left * scale, origin.y + square.top * scale];
  const side = (square.right - square.left) * scale;
  return (
    <>
      <rect className="cut testSquare" x={left} y={top} width={side} height={side} />
      {side > WORDED ? (
        <text className="sheetNo" textAnchor="middle" x={left + side / 2} y={top + side / 2 + 4}>
          {say("paper.test")}
        </text>
      ) : null}
    </>
  );
}

/** One sheet, larger: what of the pieces falls on it. */
export function OneSheet({ page, sheets, laid, view, square }: Props) {
  const { grid } = sheets;
  const { scale } = view;
  const window = {
    x: view.x + grid.left * scale,
    y: view.y + grid.top * scale,
    width: grid.windowWidth * scale,
    height: grid.windowHeight * scale,
  };
  const origin = { x: view.x - page.x * scale, y: view.y - page.y * scale, scale };
  return (
    <Unread>
      <rect
        className="sheet sheetUsed oneSheet"
        x={view.x}
        y={view.y}
        width={grid.sheetWidth * scale}
        height={grid.sheetHeight * scale}
      />
      <clipPath id="onSheet">
        <rect {...window} />
      </clipPath>
      <g clipPath="url(#onSheet)">
        {laid.map(({ piece, at }) => (
          <g key={piece.name} transform={mapFrame(at, origin)}>
            <PieceArt piece={piece} />
          </g>
        ))}
      </g>
      <rect className="seam" {...window} />
      <text className="sheetNo" x={view.x} y={view.y + grid.sheetHeight * scale + 18}>
        {`${nameOf(page)}, ${sheets.pages.indexOf(page) + 1} / ${sheets.pages.length}`}
      </text>
      {square ? <TestSquare square={square} origin={origin} /> : null}
    </Unread>
  );
}

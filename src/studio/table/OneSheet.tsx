import { TEST_SQUARE } from "../../export/data/paper.ts";
import type { SheetPage, Sheets } from "../../export/sheets.ts";
import { useSay } from "../words/say.ts";
import { PieceArt } from "./PieceArt.tsx";
import { type Laid, type MapView, mapFrame, nameOf } from "./sheetMap.ts";
import { Unread } from "./Unread.tsx";

type Props = {
  readonly page: SheetPage;
  readonly sheets: Sheets;
  readonly laid: readonly Laid[];
  readonly view: MapView;
};

/** Smaller than this the square has no room for its size, in px. */
const WORDED = 36;
const GAP = 8;

/** One sheet, larger: what of the pieces falls on it. */
export function OneSheet({ page, sheets, laid, view }: Props) {
  const say = useSay();
  const { grid } = sheets;
  const { scale } = view;
  const window = {
    x: view.x + grid.left * scale,
    y: view.y + grid.top * scale,
    width: grid.windowWidth * scale,
    height: grid.windowHeight * scale,
  };
  const square = TEST_SQUARE * scale;
  const [right, foot] = [window.x + window.width - GAP, window.y + window.height - GAP];
  const origin = { x: view.x - page.x * scale, y: view.y - page.y * scale, scale };
  return (
    <Unread>
      <rect
        className="sheet sheetUsed"
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
      <rect
        className="cut"
        x={right - square}
        y={foot - square}
        width={square}
        height={square}
        style={{ fill: "var(--piece)" }}
      />
      {square > WORDED ? (
        <text
          className="sheetNo"
          textAnchor="middle"
          x={right - square / 2}
          y={foot - square / 2 + 4}
        >
          {say("paper.test")}
        </text>
      ) : null}
    </Unread>
  );
}

import type { PointerEvent } from "react";
import type { SheetPage, Sheets } from "../../export/sheets.ts";
import { isWhole } from "../../export/wanted.ts";
import type { Box } from "../../geometry/outline.ts";
import { useSay } from "../words/say.ts";
import { MapPiece } from "./MapPiece.tsx";
import { type Laid, type MapView, nameOf, type SheetMap } from "./sheetMap.ts";

type Props = {
  readonly sheets: Sheets;
  readonly map: SheetMap;
  readonly laid: readonly Laid[];
  readonly view: MapView;
  readonly room: Box;
  readonly picked: SheetPage | null;
  /** A click on a sheet: looked at, or, looked at already, left out or taken in. */
  readonly press: (page: SheetPage) => void;
};

type CellProps = Omit<Props, "laid" | "room">;

/** Narrower than this a place has no room for a word, in px. */
const WORDED = 70;

function Cells({ sheets, map, view, picked, press }: CellProps) {
  const say = useSay();
  const isOut = (page: SheetPage) => !isWhole(sheets) && !sheets.print.only.includes(nameOf(page));
  const [wide, tall] = [map.stepX * view.scale, map.stepY * view.scale];
  return map.cells.map((cell) => {
    const { page } = cell;
    const [left, top] = [view.x + cell.x * view.scale, view.y + cell.y * view.scale];
    const out = page !== null && isOut(page);
    const kind = page === null || out ? "sheetBlank" : "sheetUsed";
    const isPicked = page !== null && nameOf(page) === (picked ? nameOf(picked) : "");
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: the list above the sheet and the sentence on the page do the same by keyboard
      <g key={nameOf(cell)} data-cell={nameOf(cell)} onClick={page ? () => press(page) : undefined}>
        <rect
          className={`sheet ${kind}${isPicked ? " sheetPicked" : ""}`}
          x={left}
          y={top}
          width={wide}
          height={tall}
        />
        {(page === null || out) && wide > WORDED ? (
          <text className="sheetNo" textAnchor="middle" x={left + wide / 2} y={top + tall / 2 + 4}>
            {say(out ? "paper.out" : "paper.none")}
          </text>
        ) : null}
      </g>
    );
  });
}

/** A place narrower than this has no room for its name, or for its number beside it, in px. */
const ROOM = { name: 19, number: 50 } as const;

/** The places' names, over the pieces; a sheet also has its number. */
function CellNames({ sheets, map, view }: Pick<Props, "sheets" | "map" | "view">) {
  const wide = map.stepX * view.scale;
  if (wide < ROOM.name) return null;
  const isNumbered = wide >= ROOM.number;
  const beside = isNumbered ? 6 : 3;
  return map.cells.map((cell) => {
    const at = cell.page ? sheets.pages.indexOf(cell.page) : -1;
    return (
      <text
        key={nameOf(cell)}
        className="sheetNo haloP"
        pointerEvents="none"
        x={view.x + cell.x * view.scale + beside}
        y={view.y + cell.y * view.scale + 15}
      >
        {at < 0 || !isNumbered ? nameOf(cell) : `${nameOf(cell)}, ${at + 1}`}
      </text>
    );
  });
}

/** How the sheets go together, with the pieces over them, each to be laid elsewhere. */
export function PageMap({ laid, room, ...props }: Props) {
  const { sheets, map, view, press } = props;
  /** A click that moved no piece is meant for the sheet under it. */
  const throughPiece = ({ clientX, clientY, currentTarget }: PointerEvent<SVGGElement>) => {
    const frame = currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (!frame) return;
    const x = (clientX - frame.left - view.x) / view.scale;
    const y = (clientY - frame.top - view.y) / view.scale;
    const [column, row] = [Math.floor(x / map.stepX), Math.floor(y / map.stepY)];
    const page = sheets.pages.find((one) => one.column === column && one.row === row);
    if (page) press(page);
  };
  return (
    <g>
      <Cells {...props} />
      {laid.map((one) => (
        <MapPiece
          key={one.piece.name}
          laid={one}
          sheets={sheets}
          view={view}
          room={room}
          click={throughPiece}
        />
      ))}
      <CellNames sheets={sheets} map={map} view={view} />
    </g>
  );
}

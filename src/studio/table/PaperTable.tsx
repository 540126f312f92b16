import { useState } from "react";
import { EDGE } from "../../export/nesting.ts";
import type { SheetPage, Sheets } from "../../export/sheets.ts";
import { wantedPages } from "../../export/wanted.ts";
import type { Made } from "../../project/make.ts";
import { sheetsOf } from "../state/laidOut.ts";
import { wantSheets } from "../state/layingPieces.ts";
import { useStudio } from "../state/store.ts";
import { useStill } from "../state/useStill.ts";
import { useSay } from "../words/say.ts";
import { OneSheet } from "./OneSheet.tsx";
import { PageMap } from "./PageMap.tsx";
import { laidPieces, type MapView, nameOf, type SheetMap, sheetMap } from "./sheetMap.ts";
import { useSquares } from "./useSquares.ts";
import type { Size } from "./view.ts";
import { turnedOver } from "./wantedSheets.ts";

type Props = { readonly made: Made; readonly size: Size };

type PickerProps = {
  readonly sheets: Sheets;
  readonly page: SheetPage;
  readonly pick: (page: SheetPage) => void;
  readonly turn: (page: SheetPage) => void;
  readonly left: number;
};

/** Which sheet is looked at, and whether it is printed: what clicks on the map do, by keyboard. */
function SheetPicker({ sheets, page, pick, turn, left }: PickerProps) {
  const say = useSay();
  const isOut = !wantedPages(sheets).includes(page);
  return (
    <div className="sheetPicker" style={{ left }}>
      <span className="w">
        <select
          aria-label={say("paper.sheetNote")}
          value={nameOf(page)}
          onChange={(event) => {
            const found = sheets.pages.find((p) => nameOf(p) === event.target.value);
            if (found) pick(found);
          }}
        >
          {sheets.pages.map((p) => (
            <option key={nameOf(p)} value={nameOf(p)}>
              {say("paper.sheet", { name: nameOf(p) })}
            </option>
          ))}
        </select>
      </span>
      <button type="button" className="plainLink" onClick={() => turn(page)}>
        {say(isOut ? "paper.takeIn" : "paper.leaveOut")}
      </button>
    </div>
  );
}

const HEAD = 76;
const FOOT = 28;
const SIDE = { wide: 40, narrow: 16 } as const;
/** Wider and higher than this there is room for one sheet beside the map, in px. */
const TWO = { width: 620, height: 400 } as const;
/** What the map takes of it. */
const MAP_SHARE = 0.62;

const mapView = (map: SheetMap, size: Size, isWide: boolean): MapView => {
  const x = isWide ? SIDE.wide : SIDE.narrow;
  const room = isWide ? size.width * MAP_SHARE - x : size.width - 2 * x;
  return {
    x,
    y: HEAD,
    scale: Math.min(room / map.width, (size.height - HEAD - FOOT) / map.height),
  };
};

/** The sheet that is looked at: the one picked, or the first. */
const usePicked = (sheets: Sheets) => {
  const [name, setName] = useState("");
  const page = sheets.pages.find((p) => nameOf(p) === name) ?? sheets.pages[0] ?? null;
  return { page, pick: (p: SheetPage) => setName(nameOf(p)) };
};

/** Left the map, right one sheet as it leaves the printer. */
export function PaperTable({ made, size }: Props) {
  const say = useSay();
  const { paper, print } = useStudio((s) => s.history.present);
  const { pieces } = made.garment;
  const sheets = sheetsOf(pieces, { paper, print });
  const { page, pick } = usePicked(sheets);
  const map = sheetMap(sheets);
  const laid = laidPieces(pieces, sheets);
  const isWide = size.width > TWO.width && size.height > TWO.height;
  // Under a hand that drags, the map may grow, but nothing on it moves or changes its size.
  const { view, reach } = useStill({
    view: mapView(map, size, isWide),
    reach: isWide ? size.width * MAP_SHARE : size.width,
  });
  const room = {
    left: EDGE,
    top: EDGE,
    right: (reach - view.x) / view.scale,
    bottom: (size.height - HEAD) / view.scale,
  };
  const turn = (p: SheetPage) => wantSheets(turnedOver(print.only, nameOf(p), sheets.pages));
  const press = (p: SheetPage) => (page && nameOf(p) === nameOf(page) ? turn(p) : pick(p));
  const left = Math.max(view.x + map.width * view.scale + 44, 0);
  const sheetScale = Math.min(
    (size.width - left - 28) / sheets.grid.sheetWidth,
    (size.height - HEAD - 60) / sheets.grid.sheetHeight,
    1.2,
  );
  const shown = isWide && sheetScale > 0.1 ? page : null;
  const squares = useSquares(made, sheets);
  const counts = {
    sheets: sheets.pages.length,
    blank: map.cells.length - sheets.pages.length,
    all: map.cells.length,
  };
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing with parts in it that take the focus */}
      <svg className="draw" role="group" aria-label={say("paper.map")} data-sheets={sheets.count}>
        <rect className="ground" width="100%" height="100%" />
        <text className="pieceName" x={view.x} y={40}>
          {say("paper.map")}
        </text>
        <text className="label" x={view.x} y={60}>
          {say("paper.mapNote", counts)}
        </text>
        <PageMap
          sheets={sheets}
          map={map}
          laid={laid}
          view={view}
          room={room}
          picked={page}
          press={press}
        />
        {shown ? (
          <>
            <OneSheet
              page={shown}
              sheets={sheets}
              laid={laid}
              view={{ x: left, y: HEAD, scale: sheetScale }}
              square={squares[sheets.pages.indexOf(shown)] ?? null}
            />
            <text className="label" x={left} y={60}>
              {say("paper.sheetNote")}
            </text>
          </>
        ) : null}
      </svg>
      {shown ? (
        <SheetPicker sheets={sheets} page={shown} pick={pick} turn={turn} left={left} />
      ) : null}
    </>
  );
}

import { useState } from "react";
import { MARGIN } from "../../export/data/paper.ts";
import type { SheetPage, Sheets } from "../../export/sheets.ts";
import type { Made } from "../../project/make.ts";
import { sheetsOf } from "../state/laidOut.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { type Laid, laidPieces, nameOf, type SheetMap, sheetMap } from "./sheetMap.ts";
import { Unread } from "./Unread.tsx";
import type { Size } from "./view.ts";

type Props = { readonly made: Made; readonly size: Size };

type MapProps = {
  readonly map: SheetMap;
  readonly laid: readonly Laid[];
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly picked: SheetPage | null;
  readonly pick: (page: SheetPage) => void;
};

function Cells({ map, scale, picked, pick, x, y }: MapProps) {
  const say = useSay();
  return map.cells.map((cell) => {
    const [left, top] = [x + cell.x * scale, y + cell.y * scale];
    const [wide, tall] = [map.stepX * scale, map.stepY * scale];
    const kind =
      cell.page === null ? "sheetBlank" : cell.page === picked ? "sheetPicked" : "sheetUsed";
    const choose = cell.page ? () => cell.page && pick(cell.page) : undefined;
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: the list above the sheet does the same by keyboard
      <g key={nameOf(cell)} onClick={choose}>
        <rect className={`sheet ${kind}`} x={left} y={top} width={wide} height={tall} />
        {cell.page === null && wide > 70 ? (
          <text className="sheetNo" textAnchor="middle" x={left + wide / 2} y={top + tall / 2 + 4}>
            {say("paper.none")}
          </text>
        ) : null}
      </g>
    );
  });
}

/** How the sheets go together, with the pieces over them. */
function AssemblyMap(props: MapProps) {
  const { map, laid, x, y, scale } = props;
  const say = useSay();
  return (
    <g>
      <Cells {...props} />
      <g className="mini" pointerEvents="none" transform={`translate(${x} ${y}) scale(${scale})`}>
        {laid.map(({ name, cut, sewn }) => (
          <g key={name}>
            <path className="seam" d={sewn} />
            <path className="cut" d={`${cut}Z`} />
          </g>
        ))}
      </g>
      {map.cells.map((cell) => (
        <text
          key={nameOf(cell)}
          className="sheetNo haloP"
          pointerEvents="none"
          x={x + cell.x * scale + 6}
          y={y + cell.y * scale + 15}
        >
          {nameOf(cell)}
        </text>
      ))}
      {(scale < NAMED ? [] : laid).map((piece) => (
        <text
          key={piece.name}
          className="pieceName haloP"
          textAnchor="middle"
          pointerEvents="none"
          transform={`translate(${x + piece.x * scale} ${y + piece.y * scale + 5})${piece.upright ? " rotate(-90)" : ""}`}
        >
          {say(`piece.${piece.name}`)}
        </text>
      ))}
    </g>
  );
}

type SheetProps = {
  readonly page: SheetPage;
  readonly sheets: Sheets;
  readonly laid: readonly Laid[];
  readonly x: number;
  readonly y: number;
  readonly scale: number;
};

/** One sheet, larger: what of the pieces falls on it. */
function OneSheet({ page, sheets, laid, x, y, scale }: SheetProps) {
  const say = useSay();
  const [wide, tall] = [sheets.width * scale, sheets.height * scale];
  const bare = MARGIN * scale;
  const square = 50 * scale;
  return (
    <Unread>
      <rect className="sheet sheetUsed" x={x} y={y} width={wide} height={tall} />
      <clipPath id="onSheet">
        <rect x={x + bare} y={y + bare} width={wide - 2 * bare} height={tall - 2 * bare} />
      </clipPath>
      <g clipPath="url(#onSheet)">
        <g transform={`translate(${x - page.x * scale} ${y - page.y * scale}) scale(${scale})`}>
          {laid.map(({ name, cut, sewn }) => (
            <g key={name}>
              <path className="seam" d={sewn} />
              <path className="cut" d={`${cut}Z`} />
            </g>
          ))}
        </g>
      </g>
      <rect
        className="seam"
        x={x + bare}
        y={y + bare}
        width={wide - 2 * bare}
        height={tall - 2 * bare}
      />
      <text className="sheetNo haloP" x={x + bare + 6} y={y + bare + 16}>
        {`${nameOf(page)}, ${page.page} / ${sheets.count}`}
      </text>
      <rect
        className="cut"
        x={x + wide - bare - square - 8}
        y={y + tall - bare - square - 8}
        width={square}
        height={square}
        style={{ fill: "var(--piece)" }}
      />
      {square > 36 ? (
        <text
          className="sheetNo"
          textAnchor="middle"
          x={x + wide - bare - square / 2 - 8}
          y={y + tall - bare - square / 2 - 4}
        >
          {say("paper.test")}
        </text>
      ) : null}
    </Unread>
  );
}

type PickerProps = {
  readonly sheets: Sheets;
  readonly page: SheetPage;
  readonly pick: (page: SheetPage) => void;
  readonly left: number;
  readonly top: number;
};

function SheetPicker({ sheets, page, pick, left, top }: PickerProps) {
  const say = useSay();
  return (
    <div style={{ position: "absolute", left, top }}>
      <span className="w" style={{ font: "650 1rem/1.25 var(--font-head)" }}>
        <select
          aria-label={say("paper.sheetNote")}
          value={page.page}
          onChange={(event) => {
            const found = sheets.pages.find((p) => p.page === Number(event.target.value));
            if (found) pick(found);
          }}
        >
          {sheets.pages.map((p) => (
            <option key={p.page} value={p.page}>
              {say("paper.sheet", { name: nameOf(p) })}
            </option>
          ))}
        </select>
      </span>
    </div>
  );
}

const HEAD = 76;
/** Smaller than this, names would hide the map. */
const NAMED = 0.2;
const SIDE = 40;

/** Left the map, right one sheet as it leaves the printer. */
export function PaperTable({ made, size }: Props) {
  const say = useSay();
  const { paper, print } = useStudio((s) => s.history.present);
  const [chosen, setChosen] = useState(0);
  const sheets = sheetsOf(made.garment.pieces, { paper, print });
  const map = sheetMap(sheets);
  const laid = laidPieces(made.garment.pieces, sheets);
  const wideEnough = size.width > 620;
  const room = wideEnough ? size.width * 0.62 - SIDE : size.width - 2 * 16;
  const x = wideEnough ? SIDE : 16;
  const scale = Math.min(room / map.width, (size.height - HEAD - 28) / map.height);
  const page = sheets.pages.find((p) => p.page === chosen) ?? sheets.pages[0];
  const left = x + map.width * scale + 44;
  const sheetScale = Math.min(
    (size.width - left - 28) / sheets.width,
    (size.height - HEAD - 60) / sheets.height,
    1.2,
  );
  const blank = map.cells.length - sheets.pages.length;
  const pick = (p: SheetPage) => setChosen(p.page);
  return (
    <>
      <svg className="draw" role="img" aria-label={say("paper.map")} data-sheets={sheets.count}>
        <rect className="ground" width="100%" height="100%" />
        <text className="pieceName" x={x} y={40}>
          {say("paper.map")}
        </text>
        <text className="label" x={x} y={60}>
          {say("paper.mapNote", { sheets: sheets.pages.length, blank, all: map.cells.length })}
        </text>
        <AssemblyMap
          map={map}
          laid={laid}
          x={x}
          y={HEAD}
          scale={scale}
          picked={page ?? null}
          pick={pick}
        />
        {page && wideEnough && sheetScale > 0.1 ? (
          <>
            <OneSheet
              page={page}
              sheets={sheets}
              laid={laid}
              x={left}
              y={HEAD}
              scale={sheetScale}
            />
            <text className="label" x={left} y={60}>
              {say("paper.sheetNote")}
            </text>
          </>
        ) : null}
      </svg>
      {page && wideEnough ? (
        <SheetPicker sheets={sheets} page={page} pick={pick} left={left} top={22} />
      ) : null}
    </>
  );
}

import type { Piece } from "../drafting/piece.ts";
import type { Mm } from "../geometry/units.ts";
import { PIECE_TITLES } from "./data/pieceWords.ts";
import type { LayoutDrawing } from "./drawing.ts";
import { FINE, joinArt, type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import { asSize, bandOf } from "./pieceFacts.ts";
import type { Sheets } from "./sheets.ts";
import { lineHeight, type Part } from "./stack.ts";
import type { SheetSubject } from "./subject.ts";
import { sheetName } from "./tiles.ts";
import { widthOf } from "./word.ts";

const SIZE: Mm = 3;
const HEAD: Mm = 2.6;
const HEADINGS = ["Piece", "Cut", "From", "Grain", "Cut size", "Sheets"] as const;
/** Where each column begins, as a share of the width. */
const STARTS = [0, 0.115, 0.29, 0.395, 0.485, 0.675] as const;

/** How the grain lies in the piece as it is drawn. */
const grainOf = ({ grain: { from, to } }: Piece): string =>
  Math.abs(to.y - from.y) > Math.abs(to.x - from.x) ? "upright" : "across";

/** "1 on the fold", "2, a pair". */
const howMany = ({ cut, onFold, name }: Piece): string => {
  if (onFold !== null) return `${cut} on the fold`;
  return name === "sleeve" ? `${cut}, mirrored pair` : String(cut);
};

/** The sheets on which a piece has lines. */
const sheetsOf = (piece: Piece, { pages }: Sheets, drawing: LayoutDrawing): readonly string[] => {
  const shown = drawing.pieces.find(({ piece: name }) => name === piece.name);
  return pages
    .filter(({ row, column }) => shown?.isOn(row, column))
    .map(({ row, column }) => sheetName(row, column));
};

/** "A1 A2 B1 B2 ...": as many names as there is room for. */
const namesIn = (names: readonly string[], width: Mm): string => {
  const all = names.join(" ");
  if (widthOf(all, SIZE) <= width) return all;
  const [first, last] = [names[0] ?? "", names[names.length - 1] ?? ""];
  return `${first} to ${last}, ${names.length} sheets`;
};

type Listed = {
  readonly subject: SheetSubject;
  readonly sheets: Sheets;
  readonly drawing: LayoutDrawing;
};

const rowOf = (
  piece: Piece,
  { subject, sheets, drawing }: Listed,
  width: Mm,
): readonly string[] => {
  const { title, cloth } = PIECE_TITLES[piece.name];
  const band = bandOf(piece, subject.garment);
  const size =
    band && subject.body.among === undefined ? asSize(band.cutLength, band.cutHeight) : "as drawn";
  const names = sheetsOf(piece, sheets, drawing);
  const room = width * (1 - (STARTS[STARTS.length - 1] ?? 0));
  return [title, howMany(piece), cloth, grainOf(piece), size, namesIn(names, room)];
};

/** What is cut from which cloth, how often, and on which sheets it stands. */
export const cutList =
  (listed: Listed, width: Mm): Part =>
  (left, top) => {
    const xs = STARTS.map((share) => left + share * width);
    const line = (cells: readonly string[], y: Mm, size: Mm, strong: boolean): PageArt => ({
      shapes: [],
      words: cells.map((text, i) =>
        wordOf(text, { x: xs[i] ?? left, y }, size, {
          strong: strong || (i === 0 && size === SIZE),
        }),
      ),
    });
    const rows = listed.subject.garment.pieces.map((piece) => rowOf(piece, listed, width));
    const step = lineHeight(SIZE) + 0.7;
    const head = top + lineHeight(HEAD);
    const rule = (y: Mm): PageArt => ({
      shapes: [ruled([straightRun({ x: left, y }, { x: left + width, y })], FINE)],
      words: [],
    });
    return {
      art: joinArt(
        line(HEADINGS, head - 0.6, HEAD, false),
        rule(head + 0.6),
        ...rows.map((cells, i) => line(cells, head + 0.4 + step * (i + 0.8), SIZE, false)),
        rule(head + 1 + step * rows.length),
      ),
      bottom: head + 1 + step * rows.length,
    };
  };

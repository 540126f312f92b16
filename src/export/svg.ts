import type { Box } from "../geometry/outline.ts";
import { toPathData } from "../geometry/pathData.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_STYLES } from "./data/lineStyles.ts";
import { drawLayout, type PieceDrawing } from "./drawing.ts";
import { bodyName } from "./pieceFacts.ts";
import type { Stroke } from "./pieceLines.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { boxOf, type Word } from "./word.ts";

/** Left free round the drawing. */
const BORDER: Mm = 5;
/** Numbers are written to a ten-thousandth of a millimetre. */
const UNITS = 10_000;
/** A strong letter's outline is drawn as well, this share of its size wide. */
const STRONG = 0.034;

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Control characters have no place in XML at all (XML 1.0, 2.2); the rest is written out. */
const escaped = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, " ")
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign);

const num = (value: number): string => String(Math.round(value * UNITS) / UNITS || 0);

const strokeTag = ({ kind, path, closed }: Stroke): string => {
  const { width, dash } = LINE_STYLES[kind];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(" ")}"` : "";
  const data = `${toPathData(path)}${closed ? " Z" : ""}`;
  return `<path class="${kind}" d="${data}" fill="none" stroke="#000" stroke-width="${width}"${dashes}/>`;
};

const wordTag = ({ text, x, y, size, turn, from, strong }: Word): string => {
  const place = `x="${num(x)}" y="${num(y)}" font-size="${num(size)}"`;
  const turned = turn === 0 ? "" : ` transform="rotate(${turn} ${num(x)} ${num(y)})"`;
  const anchor = from === "middle" ? ` text-anchor="middle"` : "";
  const weight = strong ? ` stroke="#000" stroke-width="${num(size * STRONG)}"` : "";
  return `<text ${place}${turned}${anchor}${weight}>${escaped(text)}</text>`;
};

const pieceGroup = ({ piece, strokes, words }: PieceDrawing): string =>
  [`<g id="${piece}">`, ...strokes.map(strokeTag), ...words.map(wordTag), "</g>"].join("\n");

/** Round every piece and every word. */
const boundsOf = (pieces: readonly PieceDrawing[]): Box => {
  const boxes = pieces.flatMap(({ box, words }) => [box, ...words.map(boxOf)]);
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

/**
 * The layout as one drawing, in millimetres, y down, in the frame of the report's placements: a
 * group for each piece, a class for each kind of line. Looks need no style sheet.
 */
export const toSvg = (subject: SheetSubject, sheets: Sheets): string => {
  const { pieces } = drawLayout(subject, sheets);
  const box = boundsOf(pieces);
  const [left, top] = [Math.floor(box.left) - BORDER, Math.floor(box.top) - BORDER];
  const [width, height] = [
    Math.ceil(box.right) + BORDER - left,
    Math.ceil(box.bottom) + BORDER - top,
  ];
  return [
    `<?xml version="1.0" encoding="UTF-8"?>`,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}" font-family="Noto Sans, sans-serif" fill="#000">`,
    `<title>${escaped(`Raglan sweatshirt, ${bodyName(subject.body)}`)}</title>`,
    ...pieces.map(pieceGroup),
    "</svg>",
    "",
  ].join("\n");
};

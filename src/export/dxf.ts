import { apart, type Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { asciiOf } from "./ascii.ts";
import type { LineKind } from "./data/lineStyles.ts";
import { drawLayout, type PieceDrawing } from "./drawing.ts";
import { flattened } from "./flatten.ts";
import { placedPath, placementOf } from "./placing.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import type { Word } from "./word.ts";

/** Curves are written as straights that stray from them by no more than this. */
const WITHIN: Mm = 0.01;
/** Points nearer than this are written alike. */
const SAME: Mm = 1e-4;
/** DXF takes letters by the height of their capitals, a share of their size. */
const CAPITAL = 0.714;

type Layer = LineKind | "words";

/** The kinds of line as layers, with their colour numbers: 7 black or white, 1 red, 3 green, 5 blue. */
const LAYERS: Readonly<Record<Layer, readonly [name: string, colour: number]>> = {
  cut: ["CUT", 7],
  sew: ["SEW", 1],
  fold: ["FOLD", 5],
  crease: ["CREASE", 5],
  notch: ["NOTCH", 3],
  grain: ["GRAIN", 3],
  bracket: ["MARK", 3],
  words: ["TEXT", 7],
};

/** R12 wants capitals, digits and a few signs, 31 at most: FRONT_CUT, HEMBAND_SEW. */
const layerOf = (piece: string, kind: Layer): string => `${piece.toUpperCase()}_${LAYERS[kind][0]}`;

/** Four digits of every ten-thousandth, so that a coordinate is put together and not worked out. */
const TEN_THOUSANDTHS: readonly string[] = Array.from({ length: 10_000 }, (_, i) =>
  String(i).padStart(4, "0"),
);

/** So near to a half only the engine's own exact rule knows which way to round. */
const IN_DOUBT = 1e-6;

/** A number with four decimals. */
const fixed = (value: number): string => {
  const scaled = Math.abs(value) * 1e4;
  if (Math.abs((scaled % 1) - 0.5) < IN_DOUBT) return value.toFixed(4);
  const units = Math.round(scaled);
  const whole = Math.floor(units / 1e4);
  const sign = value < 0 && units > 0 ? "-" : "";
  return `${sign}${whole}.${TEN_THOUSANDTHS[units - whole * 1e4] ?? ""}`;
};

/** Group codes and their values in turn, each on a line of its own. */
type Pairs = string;
const pairs = (...codesAndValues: readonly (string | number)[]): Pairs =>
  `${codesAndValues.join("\r\n")}\r\n`;

/** A point by these two codes. Layout points have y down; DXF has it up. */
const at = ({ x, y }: Point, codes: readonly [number, number] = [10, 20]): Pairs =>
  `${codes[0]}\r\n${fixed(x)}\r\n${codes[1]}\r\n${fixed(-y)}\r\n`;

const section = (name: string, inner: Pairs): Pairs =>
  `${pairs(0, "SECTION", 2, name)}${inner}${pairs(0, "ENDSEC")}`;

/** Points one after another that fall together in four decimals are one. */
const distinct = (points: readonly Point[]): readonly Point[] =>
  points.filter((point, i) => {
    const before = points[i - 1];
    return before === undefined || apart(point, before) > SAME;
  });

const polyline = (layer: string, path: Path, closed: boolean): Pairs => {
  const points = distinct(flattened(path, WITHIN));
  const corners = closed ? points.slice(0, -1) : points;
  const vertex = pairs(0, "VERTEX", 8, layer);
  const head = `${pairs(0, "POLYLINE", 8, layer, 66, 1)}${at({ x: 0, y: 0 })}`;
  const drawn = corners.map((point) => `${vertex}${at(point)}`).join("");
  return `${head}${pairs(30, "0.0", 70, closed ? 1 : 0)}${drawn}${pairs(0, "SEQEND", 8, layer)}`;
};

/** Text stands on its line; centred text is placed by a second point (72: centred). */
const textPairs = (piece: string, { text, x, y, size, turn, from }: Word): Pairs => {
  const start = `${pairs(0, "TEXT", 8, layerOf(piece, "words"))}${at({ x, y })}`;
  const shown = pairs(40, (size * CAPITAL).toFixed(3), 1, asciiOf(text), 50, -turn || 0);
  const centred = from === "middle" ? `${pairs(72, 1)}${at({ x, y }, [11, 21])}` : "";
  return `${start}${shown}${centred}`;
};

/** The cut line closed, the fold with it, since a cutter needs a whole outline. */
const piecePairs = ({ piece, strokes, words }: PieceDrawing, cutLine: Path): Pairs =>
  [
    polyline(layerOf(piece, "cut"), cutLine, true),
    ...strokes
      .filter(({ kind }) => kind !== "cut")
      .map(({ kind, path, closed }) => polyline(layerOf(piece, kind), path, closed)),
    ...words.map((word) => textPairs(piece, word)),
  ].join("");

const KINDS: readonly Layer[] = [
  "cut",
  "sew",
  "fold",
  "crease",
  "notch",
  "grain",
  "bracket",
  "words",
];

const LINE_TYPES = pairs(
  ...[0, "TABLE", 2, "LTYPE", 70, 1],
  ...[0, "LTYPE", 2, "CONTINUOUS", 70, 0, 3, "Solid line", 72, 65, 73, 0, 40, "0.0"],
  ...[0, "ENDTAB"],
);

const layer = (piece: string, kind: Layer): Pairs =>
  pairs(0, "LAYER", 2, layerOf(piece, kind), 70, 0, 62, LAYERS[kind][1], 6, "CONTINUOUS");

const tables = (pieces: readonly PieceDrawing[]): Pairs => {
  const layers = pieces.flatMap(({ piece }) => KINDS.map((kind) => layer(piece, kind)));
  const head = pairs(0, "TABLE", 2, "LAYER", 70, layers.length);
  return `${LINE_TYPES}${head}${layers.join("")}${pairs(0, "ENDTAB")}`;
};

/** R12 (AC1009) knows no unit; later readers take $INSUNITS 4 for millimetres. */
const HEADER = pairs(9, "$ACADVER", 1, "AC1009", 9, "$INSUNITS", 70, 4);

/**
 * The layout as DXF R12 in plain ASCII: millimetres, **y up** (layout point (x, y) stands at
 * (x, -y)), a layer for each piece and kind of line, cut lines as closed polylines.
 */
export const toDxf = (subject: SheetSubject, sheets: Sheets): string => {
  const { pieces } = drawLayout(subject, sheets);
  const drawn = subject.garment.pieces.map((piece, i) => {
    const drawing = pieces[i];
    const cutLine = placedPath(placementOf(sheets, piece.name), piece.cutLine);
    return drawing ? piecePairs(drawing, cutLine) : "";
  });
  return [
    pairs(999, asciiOf(`Ribwright pattern ${subject.body.id}, in millimetres, y up`)),
    section("HEADER", HEADER),
    section("TABLES", tables(pieces)),
    section("ENTITIES", drawn.join("")),
    pairs(0, "EOF"),
  ].join("");
};

import type { Garment } from "../bands/garment.ts";
import type { Piece, PieceName } from "../drafting/piece.ts";
import { type Box, boundsOf } from "../geometry/outline.ts";
import { straight } from "../geometry/path.ts";
import {
  along,
  minus,
  out,
  type Point,
  plus,
  point,
  times as scaled,
  stepped,
  unit,
} from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { packRows } from "../lay/rows.ts";
import { LINE_STYLES } from "./data/lineStyles.ts";
import { flattened } from "./flatten.ts";
import { joinArt, NO_ART, type PageArt, type Run, ruled, type Shape, wordOf } from "./pageArt.ts";

/** How true a small drawing is: a class measures on it with a rule. */
const WITHIN: Mm = 0.003;
/** Between pieces on one sheet: room for scissors. */
const GAP: Mm = 7;
/** The line to cut along is broad enough for scissors, the fold is dashed. */
const OUTLINE: Mm = 0.35;

/** A piece of the block as it stands on a small sheet. */
type Item = {
  readonly piece: Piece;
  /** Turned by a quarter, so that more goes on a sheet. */
  readonly turned: boolean;
  readonly box: Box;
  readonly across: Mm;
  readonly along: Mm;
  readonly onFold: false;
};

/** The sheets on which a block stands at some scale, and which way each lies. */
export type ScaledSheet = { readonly art: PageArt; readonly lying: boolean };

/** The part of a sheet that the pieces may take. */
export type SheetRoom = { readonly upright: Box; readonly lying: Box };

const linesOf = (piece: Piece): readonly Path[] => piece.edges.map(({ path }) => path);

const boxOf = (piece: Piece): Box => {
  const boxes = linesOf(piece).map(boundsOf);
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

const itemOf = (piece: Piece, times: number, turned: boolean): Item => {
  const box = boxOf(piece);
  const [wide, high] = [(box.right - box.left) / times, (box.bottom - box.top) / times];
  const size = turned ? { across: high, along: wide } : { across: wide, along: high };
  return { piece, turned, box, ...size, onFold: false };
};

/** A point of a piece on its sheet. */
const onSheet = (
  { box, turned }: Item,
  { at, times }: { readonly at: Point; readonly times: number },
  p: Point,
): Point =>
  turned
    ? point(at.x + (box.bottom - p.y) / times, at.y + (p.x - box.left) / times)
    : point(at.x + (p.x - box.left) / times, at.y + (p.y - box.top) / times);

type Spot = { readonly at: Point; readonly times: number };

const runOf = (item: Item, spot: Spot, path: Path): Run => ({
  points: flattened(path, WITHIN * spot.times).map((p) => onSheet(item, spot, p)),
  closed: false,
});

const isFold = ({ onFold }: Piece, name: Piece["edges"][number]["name"]): boolean =>
  name === onFold;

/** Every edge is a run of its own, as long on the sheet as on the piece over the scale. */
const shapesOf = (item: Item, spot: Spot): readonly Shape[] => {
  const { piece } = item;
  const { grain } = piece;
  const seams = piece.edges.filter(({ name }) => !isFold(piece, name));
  const folds = piece.edges.filter(({ name }) => isFold(piece, name));
  return [
    ruled(
      seams.map(({ path }) => runOf(item, spot, path)),
      OUTLINE,
    ),
    ruled(
      folds.map(({ path }) => runOf(item, spot, path)),
      LINE_STYLES.fold.width,
      [7, 2, 1, 2],
    ),
    ruled(
      [runOf(item, spot, straight(grain.from, grain.to)), ...grainHeads(item, spot)],
      LINE_STYLES.grain.width,
    ),
  ].filter(({ runs }) => runs.length > 0);
};

const TITLE: Mm = 4.2;
const HEAD: Mm = 2.4;

/** The name of a piece under its grain, or over it where the piece is turned. */
const titleOf = (item: Item, spot: Spot, title: string): PageArt => {
  const { from, to } = item.piece.grain;
  const middle = onSheet(item, spot, along(from, to, 0.5));
  const foot = onSheet(item, spot, to);
  const at = item.turned ? point(middle.x, middle.y - TITLE) : point(foot.x, foot.y + 1.5 * TITLE);
  return { shapes: [], words: [wordOf(title, at, TITLE, { from: "middle", strong: true })] };
};

/** Heads at both ends of the grain: the piece may lie either way round. */
const grainHeads = (item: Item, spot: Spot): readonly Run[] => {
  const { from, to } = item.piece.grain;
  const [a, b] = [onSheet(item, spot, from), onSheet(item, spot, to)];
  const way = unit(minus(b, a));
  return [
    { tip: b, back: scaled(way, -1) },
    { tip: a, back: way },
  ].map(({ tip, back }) => {
    const foot = stepped(tip, back, HEAD);
    const side = scaled(out(back), HEAD / 3);
    return { points: [plus(foot, side), tip, minus(foot, side)], closed: false };
  });
};

/** Which pieces are turned: none, the sleeve, or all. */
const TURNS: readonly (readonly PieceName[])[] = [[], ["sleeve"], ["front", "back", "sleeve"]];

type Packed = {
  readonly rows: readonly { readonly items: readonly Item[]; readonly along: Mm }[];
  readonly lying: boolean;
};

/** The first way in which all of these go on one sheet, or null. */
const packedOn = (pieces: readonly Piece[], times: number, room: SheetRoom): Packed | null => {
  for (const lying of [false, true]) {
    const { left, right, top, bottom } = lying ? room.lying : room.upright;
    for (const turned of TURNS) {
      const items = pieces.map((piece) => itemOf(piece, times, turned.includes(piece.name)));
      const rows = packRows(items, { width: right - left, gap: GAP });
      const high = rows?.reduce((sum, row) => sum + row.along + GAP, -GAP) ?? Infinity;
      if (rows && high <= bottom - top) return { rows, lying };
    }
  }
  return null;
};

export type PieceTitle = (name: PieceName) => string;

const drawn = (
  { rows, lying }: Packed,
  times: number,
  { room, titles }: { readonly room: SheetRoom; readonly titles: PieceTitle },
): ScaledSheet => {
  const { left, top } = lying ? room.lying : room.upright;
  let art = NO_ART;
  let y = top;
  for (const row of rows) {
    let x = left;
    for (const item of row.items) {
      const spot = { at: point(x, y), times };
      const shapes = { shapes: shapesOf(item, spot), words: [] };
      art = joinArt(art, shapes, titleOf(item, spot, titles(item.piece.name)));
      x += item.across + GAP;
    }
    y += row.along + GAP;
  }
  return { art, lying };
};

const blockPieces = ({ block }: Pick<Garment, "block">): readonly Piece[] => [
  block.front,
  block.back,
  block.sleeve,
];

/** The block on one sheet at one to `times`; null where it does not go on one. */
export const blockOnOneSheet = (
  garment: Pick<Garment, "block">,
  times: number,
  page: { readonly room: SheetRoom; readonly titles: PieceTitle },
): ScaledSheet | null => {
  const packed = packedOn(blockPieces(garment), times, page.room);
  return packed ? drawn(packed, times, page) : null;
};

/** The block at one to `times` on as few sheets as rows of pieces take; pieces too large are left. */
export const blockOnSheets = (
  garment: Pick<Garment, "block">,
  times: number,
  page: { readonly room: SheetRoom; readonly titles: PieceTitle },
): readonly ScaledSheet[] => {
  const one = blockOnOneSheet(garment, times, page);
  if (one) return [one];
  const { front, back, sleeve } = garment.block;
  const bodies = [front, back];
  const sheets = packedOn(bodies, times, page.room) ? [bodies] : [[front], [back]];
  return [...sheets, [sleeve]].flatMap((group) => {
    const packed = packedOn(group, times, page.room);
    return packed ? [drawn(packed, times, page)] : [];
  });
};

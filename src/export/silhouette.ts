import type { Piece, PieceName } from "../drafting/piece.ts";
import { straight } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Degrees, Mm } from "../geometry/units.ts";
import { flattened } from "./flatten.ts";
import { bandCrease } from "./pieceLines.ts";
import { cosSin } from "./placing.ts";

/** Fine enough that pieces laid apart by GAP are never nearer than the gap that is promised. */
const WITHIN: Mm = 0.5;
/** No chord is longer, so that a slanted one does not seem to touch sheets beside it. */
const LONGEST_CHORD: Mm = 60;
/** The height of the strips by which two pieces are held apart. */
export const STRIP: Mm = 20;

/** How far a shape reaches in each strip across it: from `low` to `high`. */
export type Strips = { readonly low: readonly Mm[]; readonly high: readonly Mm[] };

/** A piece, turned, as the layout sees it. Coordinates count from its box's upper left corner. */
export type Silhouette = {
  readonly piece: PieceName;
  readonly turn: Degrees;
  readonly width: Mm;
  readonly height: Mm;
  /** From the box's corner to the turned piece's own origin. */
  readonly origin: Point;
  /** Points close together on every line for which paper is needed: x and y in turn. */
  readonly points: readonly Mm[];
  /** Strips one below the other: how far the piece reaches from left to right. */
  readonly rows: Strips;
  /** Strips side by side: how far it reaches from top to bottom. */
  readonly columns: Strips;
};

/**
 * To a millionth of a millimetre. Engines differ in the last bit of a sine: without this a browser
 * and the command line would break ties differently and lay the same pieces out in two ways.
 */
const rounded = (value: Mm): Mm => Math.round(value * 1e6) / 1e6;

/**
 * The points of the piece that is being looked at: x and y of each in turn. One place for all pieces,
 * filled and read within one call of this file, so that nothing is made but what is kept.
 */
const found: Mm[] = [];

/** Puts a line after the first `count` numbers as points close together, turned; how many there are. */
const walk = (count: number, path: Path, turn: Degrees): number => {
  const [cos, sin] = cosSin(turn);
  let fromX = NaN;
  let fromY = NaN;
  let to = count;
  for (const p of flattened(path, WITHIN)) {
    const x = rounded(p.x * cos - p.y * sin);
    const y = rounded(p.x * sin + p.y * cos);
    const dx = x - fromX;
    const dy = y - fromY;
    const parts = Math.ceil(Math.sqrt(dx * dx + dy * dy) / LONGEST_CHORD);
    for (let i = 1; i < parts; i++) {
      found[to++] = fromX + (dx * i) / parts;
      found[to++] = fromY + (dy * i) / parts;
    }
    found[to++] = x;
    found[to++] = y;
    fromX = x;
    fromY = y;
  }
  return to;
};

/** The lines inside of a piece; its sew line lies too near to the cut line to matter. */
const walkInner = (count: number, piece: Piece, turn: Degrees): number => {
  let to = walk(count, straight(piece.grain.from, piece.grain.to), turn);
  for (const { path } of bandCrease(piece)) to = walk(to, path, turn);
  return to;
};

/** Strips that are being filled; what is kept is copied from them. */
const low: Mm[] = [];
const high: Mm[] = [];

/**
 * The strips along the outline, which is the first `length` numbers of `found`. Which coordinate is
 * measured in each strip: 0 for x, 1 for y.
 */
const stripsOf = (length: number, size: Mm, across: 0 | 1): Strips => {
  const count = Math.max(1, Math.ceil(size / STRIP));
  for (let k = 0; k < count; k++) {
    low[k] = Infinity;
    high[k] = -Infinity;
  }
  for (let i = 2; i < length; i += 2) {
    const a = found[i - 2 + across] ?? 0;
    const b = found[i + across] ?? 0;
    const c = found[i - 1 - across] ?? 0;
    const d = found[i + 1 - across] ?? 0;
    const least = Math.min(a, b);
    const most = Math.max(a, b);
    const last = Math.min(count - 1, Math.floor(Math.max(c, d) / STRIP));
    for (let k = Math.min(count - 1, Math.floor(Math.min(c, d) / STRIP)); k <= last; k++) {
      if (least < (low[k] ?? 0)) low[k] = least;
      if (most > (high[k] ?? 0)) high[k] = most;
    }
  }
  return { low: low.slice(0, count), high: high.slice(0, count) };
};

/** The least and greatest of every second of the first `length` numbers of `found`. */
const range = (length: number, first: 0 | 1): readonly [low: Mm, high: Mm] => {
  let [least, most] = [Infinity, -Infinity];
  for (let i = first; i < length; i += 2) {
    const value = found[i] ?? 0;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return [least, most];
};

export const silhouetteOf = (piece: Piece, turn: Degrees): Silhouette => {
  const length = walk(0, piece.cutLine, turn);
  const [[left, right], [top, bottom]] = [range(length, 0), range(length, 1)];
  const count = walkInner(length, piece, turn);
  for (let i = 0; i < count; i += 2) {
    found[i] = (found[i] ?? 0) - left;
    found[i + 1] = (found[i + 1] ?? 0) - top;
  }
  const [width, height] = [right - left, bottom - top];
  return {
    piece: piece.name,
    turn,
    width,
    height,
    origin: { x: -left, y: -top },
    points: found.slice(0, count),
    rows: stripsOf(length, height, 0),
    columns: stripsOf(length, width, 1),
  };
};

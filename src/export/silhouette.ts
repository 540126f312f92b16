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
  /**
   * Points close together on every line for which paper is needed: x and y in turn. Every fourth comes
   * first, then those between: so a place that costs too much is soon found out.
   */
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

/** Adds a line to `found` as points close together, turned: x and y of each point in turn. */
const walk = (found: number[], path: Path, turn: Degrees): void => {
  const [cos, sin] = cosSin(turn);
  let fromX = NaN;
  let fromY = NaN;
  for (const p of flattened(path, WITHIN)) {
    const x = rounded(p.x * cos - p.y * sin);
    const y = rounded(p.x * sin + p.y * cos);
    const dx = x - fromX;
    const dy = y - fromY;
    const parts = Math.ceil(Math.sqrt(dx * dx + dy * dy) / LONGEST_CHORD);
    for (let i = 1; i < parts; i++) found.push(fromX + (dx * i) / parts, fromY + (dy * i) / parts);
    found.push(x, y);
    fromX = x;
    fromY = y;
  }
};

/** The lines inside of a piece; its sew line lies too near to the cut line to matter. */
const walkInner = (found: number[], piece: Piece, turn: Degrees): void => {
  walk(found, straight(piece.grain.from, piece.grain.to), turn);
  for (const { path } of bandCrease(piece)) walk(found, path, turn);
};

/** The outline's chords, the first `length` numbers of `chords`, and which way strips lie on them. */
type Outline = {
  readonly chords: readonly Mm[];
  readonly length: number;
  readonly size: Mm;
  /** Which coordinate is measured in each strip: 0 for x, 1 for y. */
  readonly across: 0 | 1;
};

const stripsOf = ({ chords, length, size, across }: Outline): Strips => {
  const count = Math.max(1, Math.ceil(size / STRIP));
  const low: Mm[] = [];
  const high: Mm[] = [];
  for (let k = 0; k < count; k++) {
    low.push(Infinity);
    high.push(-Infinity);
  }
  for (let i = 2; i < length; i += 2) {
    const a = chords[i - 2 + across] ?? 0;
    const b = chords[i + across] ?? 0;
    const c = chords[i - 1 - across] ?? 0;
    const d = chords[i + 1 - across] ?? 0;
    const least = Math.min(a, b);
    const most = Math.max(a, b);
    const last = Math.min(count - 1, Math.floor(Math.max(c, d) / STRIP));
    for (let k = Math.min(count - 1, Math.floor(Math.min(c, d) / STRIP)); k <= last; k++) {
      if (least < (low[k] ?? 0)) low[k] = least;
      if (most > (high[k] ?? 0)) high[k] = most;
    }
  }
  return { low, high };
};

/** The least and greatest of every second number, from the first or from the second on. */
const range = (found: readonly number[], first: 0 | 1): readonly [low: Mm, high: Mm] => {
  let [low, high] = [Infinity, -Infinity];
  for (let i = first; i < found.length; i += 2) {
    const value = found[i] ?? 0;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
};

/** The order in which a look at few points sees most of a shape. */
const APART = [0, 2, 1, 3] as const;

const farApart = (found: readonly Mm[]): readonly Mm[] => {
  const points: Mm[] = [];
  for (const first of APART) {
    for (let i = 2 * first; i < found.length; i += 8) points.push(found[i] ?? 0, found[i + 1] ?? 0);
  }
  return points;
};

export const silhouetteOf = (piece: Piece, turn: Degrees): Silhouette => {
  const found: number[] = [];
  walk(found, piece.cutLine, turn);
  const { length } = found;
  const [[left, right], [top, bottom]] = [range(found, 0), range(found, 1)];
  walkInner(found, piece, turn);
  for (let i = 0; i < found.length; i += 2) {
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
    points: farApart(found),
    rows: stripsOf({ chords: found, length, size: height, across: 0 }),
    columns: stripsOf({ chords: found, length, size: width, across: 1 }),
  };
};

import { along, minus, type Point, plus, times } from "../../geometry/point.ts";
import { cubic, line, type Segment } from "../../geometry/segment.ts";
import { arcCubics } from "../arcs.ts";

/** One run of a path as drawn: its segments, and whether it was closed with Z. */
type Run = { readonly segments: readonly Segment[]; readonly isClosed: boolean };
export type RunsRead = { readonly runs: readonly Run[] } | { readonly unread: string };

const NUMBER = /[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/y;
const FLAG = /[\s,]*([01])/y;
const MARK = /[\s,]*([A-Za-z])/y;

/** How many numbers each mark takes (SVG 1.1, 8.3). */
const SIZES: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

type Words = readonly { readonly mark: string; readonly numbers: readonly number[] }[];

const numbersFor = (
  text: string,
  at: number,
  mark: string,
): { numbers: number[]; end: number } | null => {
  const numbers: number[] = [];
  const isArc = mark.toUpperCase() === "A";
  let end = at;
  const size = SIZES[mark.toUpperCase()] ?? 0;
  for (let i = 0; i < size; i++) {
    const rule = isArc && (i === 3 || i === 4) ? FLAG : NUMBER;
    rule.lastIndex = end;
    const match = rule.exec(text);
    if (!match) return null;
    numbers.push(Number(match[1]));
    end = rule.lastIndex;
  }
  return { numbers, end };
};

/** Marks with their numbers, repeated marks written out; the text from where it cannot be read. */
const wordsOf = (text: string): Words | { readonly unread: string } => {
  const words: { mark: string; numbers: readonly number[] }[] = [];
  let at = 0;
  let mark = "";
  while (text.slice(at).trim() !== "") {
    MARK.lastIndex = at;
    const match = MARK.exec(text);
    if (match) {
      mark = match[1] ?? "";
      at = MARK.lastIndex;
      if (SIZES[mark.toUpperCase()] === undefined) return { unread: mark };
    } else if (mark === "" || mark.toUpperCase() === "Z")
      return { unread: text.slice(at, at + 12) };
    else if (mark === "M") mark = "L";
    else if (mark === "m") mark = "l";
    const read = numbersFor(text, at, mark);
    if (!read || read.numbers.some((n) => !Number.isFinite(n)))
      return { unread: text.slice(at, at + 12) };
    words.push({ mark, numbers: read.numbers });
    at = read.end;
  }
  return words;
};

/** An arc from its ends to its middle (SVG 1.1, F.6.5 and F.6.6). */
const arcFrom = (
  from: Point,
  to: Point,
  n: readonly number[],
  error: number,
): readonly Segment[] => {
  let [rx = 0, ry = 0] = [Math.abs(n[0] ?? 0), Math.abs(n[1] ?? 0)];
  const [turn, large, sweep] = [((n[2] ?? 0) * Math.PI) / 180, n[3] === 1, n[4] === 1];
  if (from.x === to.x && from.y === to.y) return [];
  if (rx === 0 || ry === 0) return [line(from, to)];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const half = times(minus(from, to), 0.5);
  const x = c * half.x + s * half.y;
  const y = -s * half.x + c * half.y;
  const over = (x / rx) ** 2 + (y / ry) ** 2;
  if (over > 1) [rx, ry] = [rx * Math.sqrt(over), ry * Math.sqrt(over)];
  const left = Math.max(0, (rx * ry) ** 2 / ((rx * y) ** 2 + (ry * x) ** 2) - 1);
  const by = (large === sweep ? -1 : 1) * Math.sqrt(left);
  const [mx, my] = [(by * rx * y) / ry, (-by * ry * x) / rx];
  const mid = along(from, to, 0.5);
  const start = Math.atan2((y - my) / ry, (x - mx) / rx);
  const end = Math.atan2((-y - my) / ry, (-x - mx) / rx);
  let way = end - start;
  if (sweep && way < 0) way += 2 * Math.PI;
  if (!sweep && way > 0) way -= 2 * Math.PI;
  const middle = { x: mid.x + c * mx - s * my, y: mid.y + s * mx + c * my };
  const cubics = arcCubics({ middle, rx, ry, turn, from: start, sweep: way }, error);
  // Ends are exactly where the path says.
  return cubics.map((arc, i) => ({
    ...arc,
    start: i === 0 ? from : arc.start,
    end: i === cubics.length - 1 ? to : arc.end,
  }));
};

/** A quadratic curve as a cubic: exact. */
const quadratic = (from: Point, handle: Point, to: Point): Segment =>
  cubic(from, along(from, handle, 2 / 3), along(to, handle, 2 / 3), to);

type Pen = {
  readonly at: Point;
  readonly start: Point;
  /** The last handle, for the smooth marks S and T; null after any other mark. */
  readonly handle: Point | null;
  readonly was: string;
};

/** What one mark draws, and where it leaves the pen. */
const drawn = (
  pen: Pen,
  { mark, numbers }: Words[number],
  error: number,
): { readonly segments: readonly Segment[]; readonly pen: Pen } => {
  const { at } = pen;
  const big = mark.toUpperCase();
  const base = mark === big ? { x: 0, y: 0 } : at;
  const p = (i: number): Point => ({
    x: base.x + (numbers[i] ?? 0),
    y: base.y + (numbers[i + 1] ?? 0),
  });
  const reflected = (after: string): Point =>
    pen.handle && after.includes(pen.was) ? minus(times(at, 2), pen.handle) : at;
  const to = (end: Point, segments: readonly Segment[], handle: Point | null = null) => ({
    segments,
    pen: { ...pen, at: end, handle, was: big },
  });
  const straight = (end: Point) => to(end, [line(at, end)]);
  switch (big) {
    case "L":
      return straight(p(0));
    case "H":
      return straight({ x: base.x + (numbers[0] ?? 0), y: at.y });
    case "V":
      return straight({ x: at.x, y: base.y + (numbers[0] ?? 0) });
    case "C":
      return to(p(4), [cubic(at, p(0), p(2), p(4))], p(2));
    case "S":
      return to(p(2), [cubic(at, reflected("CS"), p(0), p(2))], p(0));
    case "Q":
      return to(p(2), [quadratic(at, p(0), p(2))], p(0));
    case "T": {
      const handle = reflected("QT");
      return to(p(0), [quadratic(at, handle, p(0))], handle);
    }
    case "A":
      return to(p(5), arcFrom(at, p(5), numbers, error));
    default:
      return to(at, []);
  }
};

/** A closing straight where the run does not end at its start. */
const closing = (pen: Pen): readonly Segment[] =>
  plus(pen.at, times(pen.start, -1)).x === 0 && pen.at.y === pen.start.y
    ? []
    : [line(pen.at, pen.start)];

/**
 * Path data with all of SVG's marks as runs of straights and cubics; arcs within `error` of the
 * data's own units. What cannot be read is told, not drawn up to there.
 */
export const readSvgPath = (text: string, error: number): RunsRead => {
  const words = wordsOf(text);
  if ("unread" in words) return words;
  const [first] = words;
  if (first && first.mark.toUpperCase() !== "M") return { unread: first.mark };
  const runs: Run[] = [];
  let segments: Segment[] = [];
  let pen: Pen = { at: { x: 0, y: 0 }, start: { x: 0, y: 0 }, handle: null, was: "" };
  const finish = (isClosed: boolean): void => {
    if (segments.length > 0) runs.push({ segments, isClosed });
    segments = [];
  };
  for (const word of words) {
    const big = word.mark.toUpperCase();
    if (big === "M") {
      finish(false);
      const base = word.mark === "M" ? { x: 0, y: 0 } : pen.at;
      const at = { x: base.x + (word.numbers[0] ?? 0), y: base.y + (word.numbers[1] ?? 0) };
      pen = { at, start: at, handle: null, was: "M" };
    } else if (big === "Z") {
      segments.push(...closing(pen));
      finish(true);
      pen = { ...pen, at: pen.start, handle: null, was: "Z" };
    } else {
      const next = drawn(pen, word, error);
      segments.push(...next.segments);
      pen = next.pen;
    }
  }
  finish(false);
  return { runs };
};

import { pathOf } from "./path.ts";
import type { Point } from "./point.ts";
import { cubic, line, type Path, type Segment } from "./segment.ts";

/** Three digits of every thousandth, so that a coordinate is put together and not worked out. */
const THOUSANDTHS: readonly string[] = Array.from({ length: 1000 }, (_, i) =>
  String(i).padStart(3, "0"),
);

/** A number with six decimals, as a path carries it. Rounds half away from nought. */
export const coordinate = (value: number): string => {
  const size = Math.abs(value);
  let whole = Math.floor(size);
  let part = Math.round((size - whole) * 1e6);
  if (part === 1e6) [whole, part] = [whole + 1, 0];
  const sign = value < 0 && (whole > 0 || part > 0) ? "-" : "";
  const high = Math.floor(part / 1000);
  return `${sign}${whole}.${THOUSANDTHS[high] ?? ""}${THOUSANDTHS[part - high * 1000] ?? ""}`;
};

const pair = (p: Point): string => `${coordinate(p.x)} ${coordinate(p.y)}`;

/** A path as SVG path data with absolute M, L and C only (contract, "Frames"). */
export const toPathData = (path: Path): string => {
  let text = `M${pair(path[0].start)}`;
  for (const s of path) {
    text +=
      s.kind === "line"
        ? ` L${pair(s.end)}`
        : ` C${pair(s.startHandle)} ${pair(s.endHandle)} ${pair(s.end)}`;
  }
  return text;
};

const WORD = /([A-Za-z])|([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([\s,]+)|(.)/gy;

type Words = {
  readonly marks: readonly { readonly mark: string; readonly numbers: readonly number[] }[];
};

/** Path data as its marks and their numbers, or the word that cannot be read. */
const wordsOf = (text: string): Words | { readonly unread: string } => {
  const marks: { mark: string; numbers: number[] }[] = [];
  for (const [word, mark, number, , other] of text.matchAll(WORD)) {
    if (other !== undefined) return { unread: word };
    if (mark !== undefined) marks.push({ mark, numbers: [] });
    else if (number !== undefined) {
      const last = marks[marks.length - 1];
      if (!last) return { unread: word };
      last.numbers.push(Number(number));
    }
  }
  return { marks };
};

const SIZES: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6 };

/** What a path read from text may be: the path, or why not (a few words for a sentence). */
export type PathRead = { readonly path: Path } | { readonly fault: string };

/** The segments that one mark draws from `from`. Numbers after the first L or C repeat the mark. */
const drawn = (mark: string, numbers: readonly number[], from: Point): readonly Segment[] => {
  const points: Point[] = [];
  for (let i = 0; i + 1 < numbers.length; i += 2) {
    points.push({ x: numbers[i] ?? 0, y: numbers[i + 1] ?? 0 });
  }
  const segments: Segment[] = [];
  let start = from;
  for (let i = 0; i < points.length; i += mark === "C" ? 3 : 1) {
    const [a, b, c] = [points[i], points[i + 1], points[i + 2]];
    if (!a) break;
    const end = mark === "C" ? (c ?? a) : a;
    segments.push(mark === "C" && b ? cubic(start, a, b, end) : line(start, end));
    start = end;
  }
  return segments;
};

/** Reads path data with absolute M, L and C only: one run, begun by one M. */
export const readPathData = (text: string): PathRead => {
  const words = wordsOf(text);
  if ("unread" in words) return { fault: `“${words.unread}” is no mark or number` };
  const segments: Segment[] = [];
  let at: Point | null = null;
  for (const { mark, numbers } of words.marks) {
    const size = SIZES[mark];
    if (size === undefined) return { fault: `the mark “${mark}” is not M, L or C` };
    if (numbers.length === 0 || numbers.length % size !== 0) {
      return { fault: `after “${mark}” stand ${numbers.length} numbers` };
    }
    if (numbers.some((n) => !Number.isFinite(n))) return { fault: "a number has no end" };
    if (mark === "M") {
      if (at) return { fault: "it has a second M" };
      at = { x: numbers[0] ?? 0, y: numbers[1] ?? 0 };
      segments.push(...drawn("L", numbers.slice(2), at));
    } else {
      if (!at) return { fault: "it does not begin with M" };
      segments.push(...drawn(mark, numbers, at));
    }
    const last = segments[segments.length - 1];
    if (last) at = last.end;
  }
  return segments.length > 0 ? { path: pathOf(segments) } : { fault: "it draws nothing" };
};

import { toPathData } from "../geometry/pathData.ts";
import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";

/**
 * JSON written straight into bytes. A report is thirty thousand characters, most of them digits:
 * made as an object first and turned into text afterwards it takes three times as long.
 */
export type JsonBytes = {
  /** Marks and keys as they stand: plain letters that JSON need not escape. */
  readonly raw: (text: string) => void;
  /** A string, with its quotation marks. */
  readonly text: (value: string) => void;
  /** A number to six decimals, end noughts left out, as JSON writes it. Never a minus nought. */
  readonly number: (value: number) => void;
  /** A path as SVG path data with absolute M, L and C, six decimals each, with quotation marks. */
  readonly path: (path: Path) => void;
  /** Everything written so far. */
  readonly bytes: () => Uint8Array<ArrayBuffer>;
};

const [QUOTE, BACKSLASH, MINUS, POINT, SPACE] = [34, 92, 45, 46, 32];
const [NOUGHT, LETTER_C, LETTER_L, LETTER_M] = [48, 67, 76, 77];
/** From here on UTF-8 takes two bytes for a sign, and three. */
const [TWO_BYTES, THREE_BYTES] = [0x80, 0x800];

/** The three digits of every number below a thousand, four places apart. */
const TRIPLES = new Uint8Array(4000);
for (let i = 0; i < 1000; i++) {
  TRIPLES[i * 4] = NOUGHT + Math.floor(i / 100);
  TRIPLES[i * 4 + 1] = NOUGHT + (Math.floor(i / 10) % 10);
  TRIPLES[i * 4 + 2] = NOUGHT + (i % 10);
}

/** Whole numbers from here on are left to the engine: no measure comes near it. */
const GREAT = 1e6;
/** Bytes that a number below GREAT takes at most: sign, six digits, point, six decimals. */
const LONGEST = 14;

/** Three digits, noughts before them. */
const putTriple = (into: Uint8Array, at: number, value: number): number => {
  const from = value << 2;
  into[at] = TRIPLES[from] ?? 0;
  into[at + 1] = TRIPLES[from + 1] ?? 0;
  into[at + 2] = TRIPLES[from + 2] ?? 0;
  return at + 3;
};

/** A whole number below a thousand, no noughts before it. */
const putSmall = (into: Uint8Array, at: number, value: number): number => {
  const from = value << 2;
  let to = at;
  if (value >= 100) into[to++] = TRIPLES[from] ?? 0;
  if (value >= 10) into[to++] = TRIPLES[from + 1] ?? 0;
  into[to++] = TRIPLES[from + 2] ?? 0;
  return to;
};

/**
 * Six decimals, rounded half away from nought, as `coordinate` has them in text. Whole numbers are cut
 * with `| 0`: the engine then counts in whole numbers throughout, which is twice as quick.
 */
const putFixed = (into: Uint8Array, at: number, value: number): number => {
  const size = Math.abs(value);
  let whole = size | 0;
  let part = ((size - whole) * 1e6 + 0.5) | 0;
  if (part === 1_000_000) {
    whole = (whole + 1) | 0;
    part = 0;
  }
  let to = at;
  if (value < 0 && (whole > 0 || part > 0)) into[to++] = MINUS;
  if (whole < 1000) to = putSmall(into, to, whole);
  else {
    const thousands = (whole / 1000) | 0;
    to = putTriple(into, putSmall(into, to, thousands), whole - thousands * 1000);
  }
  into[to++] = POINT;
  const high = (part / 1000) | 0;
  return putTriple(into, putTriple(into, to, high), part - high * 1000);
};

/** The same without end noughts, and without a point that nothing follows. */
const putNumber = (into: Uint8Array, at: number, value: number): number => {
  let to = putFixed(into, at, value);
  while (into[to - 1] === NOUGHT) to--;
  return into[to - 1] === POINT ? to - 1 : to;
};

const putPoint = (into: Uint8Array, at: number, point: Point): number => {
  const to = putFixed(into, at, point.x);
  into[to] = SPACE;
  return putFixed(into, to + 1, point.y);
};

/** Six numbers, and a mark or a space before each, are the most that a segment takes. */
const A_SEGMENT = 6 * (LONGEST + 2);

const putPath = (into: Uint8Array, at: number, path: Path): number => {
  into[at] = QUOTE;
  into[at + 1] = LETTER_M;
  let to = putPoint(into, at + 2, path[0].start);
  for (const s of path) {
    into[to++] = SPACE;
    if (s.kind === "line") into[to++] = LETTER_L;
    else {
      into[to++] = LETTER_C;
      to = putPoint(into, to, s.startHandle);
      into[to++] = SPACE;
      to = putPoint(into, to, s.endHandle);
      into[to++] = SPACE;
    }
    to = putPoint(into, to, s.end);
  }
  into[to] = QUOTE;
  return to + 1;
};

const isFar = ({ x, y }: Point): boolean => !(Math.abs(x) < GREAT && Math.abs(y) < GREAT);

/** Whether a number of a path is too great to be put together here. */
const reachesFar = (path: Path): boolean => {
  if (isFar(path[0].start)) return true;
  for (const s of path) {
    if (isFar(s.end)) return true;
    if (s.kind === "cubic" && (isFar(s.startHandle) || isFar(s.endHandle))) return true;
  }
  return false;
};

/**
 * Writes a string as it stands and tells where it ends; -1 where a sign in it must be escaped, or is
 * none that takes one or two bytes.
 */
const putPlain = (into: Uint8Array, at: number, text: string): number => {
  let to = at;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code < SPACE || code === QUOTE || code === BACKSLASH || code >= THREE_BYTES) return -1;
    if (code >= TWO_BYTES) {
      into[to++] = 0xc0 | (code >> 6);
      into[to++] = 0x80 | (code & 0x3f);
    } else into[to++] = code;
  }
  return to;
};

/** The room that most reports need; more is made where it runs out. */
const ROOM = 65_536;
/** The most bytes that one unit of a string takes. */
const BYTES_A_UNIT = 3;

const ENCODER = new TextEncoder();

/** An empty piece of JSON, to be written from left to right. */
export const jsonBytes = (): JsonBytes => {
  let into = new Uint8Array(ROOM);
  let at = 0;

  const reserve = (count: number): void => {
    if (at + count <= into.length) return;
    const larger = new Uint8Array(Math.max(into.length * 2, at + count));
    larger.set(into);
    into = larger;
  };

  const raw = (text: string): void => {
    const { length } = text;
    reserve(length);
    const [to, from] = [into, at];
    for (let i = 0; i < length; i++) to[from + i] = text.charCodeAt(i);
    at = from + length;
  };

  const text = (value: string): void => {
    reserve(value.length * 2 + 2);
    const end = putPlain(into, at + 1, value);
    if (end >= 0) {
      into[at] = QUOTE;
      into[end] = QUOTE;
      at = end + 1;
      return;
    }
    const escaped = JSON.stringify(value);
    reserve(escaped.length * BYTES_A_UNIT);
    at += ENCODER.encodeInto(escaped, into.subarray(at)).written;
  };

  const number = (value: number): void => {
    if (Math.abs(value) < GREAT) {
      reserve(LONGEST);
      at = putNumber(into, at, value);
    } else raw(JSON.stringify(value));
  };

  const path = (segments: Path): void => {
    if (reachesFar(segments)) {
      text(toPathData(segments));
      return;
    }
    reserve((segments.length + 1) * A_SEGMENT);
    at = putPath(into, at, segments);
  };

  return { raw, text, number, path, bytes: () => into.slice(0, at) };
};

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
  /** Everything that was written. Ends the writing: its room goes to the next one. */
  readonly bytes: () => Uint8Array<ArrayBuffer>;
};

const [QUOTE, BACKSLASH, MINUS, POINT, SPACE] = [34, 92, 45, 46, 32];
const [NOUGHT, LETTER_C, LETTER_L, LETTER_M] = [48, 67, 76, 77];
/** From here on UTF-8 takes two bytes for a sign, and three. */
const [TWO_BYTES, THREE_BYTES] = [0x80, 0x800];

/** Up to four signs as one number that is written in one go, the first sign first. */
const signs = (text: string): number => {
  let all = 0;
  for (let i = text.length - 1; i >= 0; i--) all = all * 256 + text.charCodeAt(i);
  return all;
};

/** Every number below a thousand: as it stands, with noughts before it, and these after a point. */
const [PLAIN, TRIPLE, AFTER_POINT] = [
  new Uint32Array(1000),
  new Uint32Array(1000),
  new Uint32Array(1000),
];
/** How many digits each has. */
const DIGITS = new Uint8Array(1000);
for (let i = 0; i < 1000; i++) {
  const plain = String(i);
  const triple = plain.padStart(3, "0");
  PLAIN[i] = signs(plain);
  TRIPLE[i] = signs(`${triple} `);
  AFTER_POINT[i] = signs(`.${triple}`);
  DIGITS[i] = plain.length;
}

/**
 * Numbers from here on are left to the engine: no measure comes near it. One below a million, since
 * what rounds up to a million has seven digits, for which there is no room here.
 */
const GREAT = 999_999;
/** Bytes that are written for a number below GREAT at most: sign, six digits, point, six decimals, space. */
const LONGEST = 15;

/** A whole number below a million, no noughts before it. */
const putWhole = (into: DataView, at: number, value: number): number => {
  if (value < 1000) {
    into.setUint32(at, PLAIN[value] ?? 0, true);
    return at + (DIGITS[value] ?? 0);
  }
  const thousands = (value / 1000) | 0;
  into.setUint32(at, PLAIN[thousands] ?? 0, true);
  const to = at + (DIGITS[thousands] ?? 0);
  into.setUint32(to, TRIPLE[(value - thousands * 1000) | 0] ?? 0, true);
  return to + 3;
};

/**
 * Six decimals, rounded half away from nought, as `coordinate` has them in text, and a space after
 * them that whatever follows may take the place of. Whole numbers are cut with `| 0`: the engine then
 * counts in whole numbers throughout, which is twice as quick.
 */
const putFixed = (into: DataView, at: number, value: number): number => {
  const size = Math.abs(value);
  let whole = size | 0;
  let part = ((size - whole) * 1e6 + 0.5) | 0;
  if (part === 1_000_000) {
    whole = (whole + 1) | 0;
    part = 0;
  }
  let to = at;
  if (value < 0 && (whole | part) !== 0) into.setUint8(to++, MINUS);
  to = putWhole(into, to, whole);
  const high = (part / 1000) | 0;
  into.setUint32(to, AFTER_POINT[high] ?? 0, true);
  into.setUint32(to + 4, TRIPLE[(part - high * 1000) | 0] ?? 0, true);
  return to + 7;
};

/** The same without end noughts, and without a point that nothing follows. */
const putNumber = (into: DataView, at: number, value: number): number => {
  let to = putFixed(into, at, value);
  while (into.getUint8(to - 1) === NOUGHT) to--;
  return into.getUint8(to - 1) === POINT ? to - 1 : to;
};

/** Both coordinates, each with a space after it; -1 where one is too great to be put together here. */
const putPoint = (into: DataView, at: number, { x, y }: Point): number => {
  if (!(Math.abs(x) < GREAT && Math.abs(y) < GREAT)) return -1;
  return putFixed(into, putFixed(into, at, x) + 1, y) + 1;
};

/** Six numbers, and a mark, are the most that a segment takes. */
const A_SEGMENT = 6 * LONGEST + 1;

/** Writes a path and tells where it ends; -1 where a number of it is too great. */
const putPath = (into: DataView, at: number, path: Path): number => {
  into.setUint8(at, QUOTE);
  into.setUint8(at + 1, LETTER_M);
  let to = putPoint(into, at + 2, path[0].start);
  for (const s of path) {
    if (to < 0) return to;
    if (s.kind === "line") {
      into.setUint8(to, LETTER_L);
      to = putPoint(into, to + 1, s.end);
      continue;
    }
    into.setUint8(to, LETTER_C);
    to = putPoint(into, to + 1, s.startHandle);
    if (to >= 0) to = putPoint(into, to, s.endHandle);
    if (to >= 0) to = putPoint(into, to, s.end);
  }
  if (to < 0) return to;
  into.setUint8(to - 1, QUOTE);
  return to;
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

/** Room that the last report left, for the next one; null while one is being written in it. */
let spare: Uint8Array<ArrayBuffer> | null = null;

/** An empty piece of JSON, to be written from left to right. */
export const jsonBytes = (): JsonBytes => {
  let into = spare ?? new Uint8Array(ROOM);
  let view = new DataView(into.buffer);
  let at = 0;
  spare = null;

  const reserve = (count: number): void => {
    if (at + count <= into.length) return;
    const larger = new Uint8Array(Math.max(into.length * 2, at + count));
    larger.set(into);
    into = larger;
    view = new DataView(into.buffer);
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
      at = putNumber(view, at, value);
    } else raw(JSON.stringify(value));
  };

  const path = (segments: Path): void => {
    reserve((segments.length + 1) * A_SEGMENT);
    const end = putPath(view, at, segments);
    if (end < 0) text(toPathData(segments));
    else at = end;
  };

  const bytes = (): Uint8Array<ArrayBuffer> => {
    const written = into.slice(0, at);
    spare = into;
    return written;
  };

  return { raw, text, number, path, bytes };
};

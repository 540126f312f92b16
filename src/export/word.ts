import type { Box } from "../geometry/outline.ts";
import type { Degrees, Mm } from "../geometry/units.ts";
import { ASCENT, DESCENT, LETTER_WIDTHS, OTHER_WIDTH } from "./data/letterWidths.ts";

/** A line of text. It starts at (x, y), or has its middle there, and stands on that line. */
export type Word = {
  readonly text: string;
  readonly x: Mm;
  readonly y: Mm;
  /** The size of the letters, as a printer counts it: the height of a line set solid. */
  readonly size: Mm;
  /** Clockwise on the page: 0 reads across, 90 down, -90 up. */
  readonly turn: Degrees;
  readonly from: "start" | "middle";
  readonly strong: boolean;
};

const widthOfCode = (code: number): number => {
  for (const { first, widths } of LETTER_WIDTHS) {
    const width = widths[code - first];
    if (width !== undefined) return width;
  }
  return OTHER_WIDTH;
};

/** Widths of the letters up to the last that has no accent. */
const LAST_PLAIN = 126;
const PLAIN: readonly number[] = Array.from({ length: LAST_PLAIN + 1 }, (_, code) =>
  widthOfCode(code),
);

/** Letters with accents and signs, as they come up: accents take no room of their own. */
const OTHERS = new Map<string, number>();

const otherWidth = (letter: string): number => {
  const known = OTHERS.get(letter);
  if (known !== undefined) return known;
  let width = 0;
  for (const part of letter.normalize("NFD").replace(/\p{M}/gu, "")) {
    width += widthOfCode(part.codePointAt(0) ?? 0);
  }
  OTHERS.set(letter, width);
  return width;
};

const widthFrom = (text: string, from: number): number => {
  let thousandths = 0;
  for (const letter of text.slice(from)) thousandths += otherWidth(letter);
  return thousandths;
};

/** How wide a text is set, in thousandths of the letters' size, a whole number. */
export const thousandthsOf = (text: string): number => {
  let thousandths = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code > LAST_PLAIN) return thousandths + widthFrom(text, i);
    thousandths += PLAIN[code] ?? 0;
  }
  return thousandths;
};

/** How wide a text is set: right for plain letters, near it for others. */
export const widthOf = (text: string, size: Mm): Mm => (thousandthsOf(text) * size) / 1000;

/** The upright rectangle that a word takes up; `turn` is 0, 90 or -90. */
export const boxOf = ({ text, x, y, size, turn, from }: Word): Box => {
  const long = widthOf(text, size);
  const start = from === "middle" ? -long / 2 : 0;
  const [above, below] = [ASCENT * size, DESCENT * size];
  if (turn === 90) {
    return { left: x - below, right: x + above, top: y + start, bottom: y + start + long };
  }
  if (turn === -90) {
    return { left: x - above, right: x + below, top: y - start - long, bottom: y - start };
  }
  return { left: x + start, right: x + start + long, top: y - above, bottom: y + below };
};

export const grown = (box: Box, by: Mm): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

export const isWithin = (box: Box, room: Box): boolean =>
  box.left >= room.left &&
  box.right <= room.right &&
  box.top >= room.top &&
  box.bottom <= room.bottom;

/** Of some boxes those level with another, wherever along its row that is moved. */
export const levelWith = (
  { top, bottom }: Pick<Box, "top" | "bottom">,
  boxes: readonly Box[],
): readonly Box[] => boxes.filter((box) => box.top < bottom && top < box.bottom);

export const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { ASCENT, DESCENT } from "./data/letterWidths.ts";
import { thousandthsOf, type Word, widthOf } from "./word.ts";

/** A line of a block of text. */
export type TextLine = { readonly text: string; readonly size: Mm; readonly strong: boolean };

/** Lines one below the other, and the room that they take. */
export type TextBlock = {
  readonly lines: readonly TextLine[];
  readonly width: Mm;
  readonly height: Mm;
};

/** From line to line, as a share of the size of the letters. */
export const LEADING = 1.32;

/** From the line that letters stand on to the foot of their share of the block. */
const UNDER = (LEADING - ASCENT - DESCENT) / 2 + DESCENT;

/** A word cut into parts that are no wider than `width`. */
const parted = (word: string, size: Mm, width: Mm): readonly string[] => {
  if (widthOf(word, size) <= width) return [word];
  const parts: string[] = [];
  let part = "";
  for (const letter of word) {
    if (part !== "" && widthOf(part + letter, size) > width) {
      parts.push(part);
      part = "";
    }
    part += letter;
  }
  return [...parts, part];
};

const SPACE = thousandthsOf(" ");

/** Breaks a text so that no line is wider than `width`: between words, within one only if need be. */
export const wrapped = (text: string, size: Mm, width: Mm): readonly string[] => {
  const lines: string[] = [];
  let line = "";
  let long = 0;
  for (const word of text.split(" ").flatMap((whole) => parted(whole, size, width))) {
    const more = thousandthsOf(word);
    const longer = long + SPACE + more;
    if (line === "") {
      line = word;
      long = more;
    } else if ((longer * size) / 1000 > width) {
      lines.push(line);
      line = word;
      long = more;
    } else {
      line += ` ${word}`;
      long = longer;
    }
  }
  return line === "" ? lines : [...lines, line];
};

export const plainLines = (text: string, size: Mm, width: Mm): readonly TextLine[] =>
  wrapped(text, size, width).map((line) => ({ text: line, size, strong: false }));

export const blockOf = (lines: readonly TextLine[]): TextBlock => ({
  lines,
  width: Math.max(0, ...lines.map(({ text, size }) => widthOf(text, size))),
  height: lines.reduce((sum, { size }) => sum + size * LEADING, 0),
});

/** The words of a block that starts at its upper left corner, turned round that corner. */
export const wordsAt = ({ lines }: TextBlock, corner: Point, turn: 0 | 90 = 0): readonly Word[] => {
  let down = 0;
  return lines.map(({ text, size, strong }) => {
    down += size * LEADING;
    const drop = down - size * UNDER;
    const at =
      turn === 0 ? { x: corner.x, y: corner.y + drop } : { x: corner.x - drop, y: corner.y };
    return { text, ...at, size, turn, from: "start", strong };
  });
};

import type { Mm } from "../geometry/units.ts";
import { joinArt, NO_ART, type PageArt } from "./pageArt.ts";
import { blockOf, LEADING, plainLines, type TextLine, wordsAt, wrapped } from "./textBlock.ts";
import { widthOf } from "./word.ts";

/** A part of a page that hangs from a point; it says how far down it reaches. */
export type Part = (left: Mm, top: Mm) => { readonly art: PageArt; readonly bottom: Mm };

export const space =
  (height: Mm): Part =>
  (_, top) => ({ art: NO_ART, bottom: top + height });

const linesPart = (lines: readonly TextLine[]): Part => {
  const block = blockOf(lines);
  return (left, top) => ({
    art: { shapes: [], words: wordsAt(block, { x: left, y: top }) },
    bottom: top + block.height,
  });
};

/** A run of text, broken to a width. */
export const paragraph = (text: string, size: Mm, width: Mm): Part =>
  linesPart(plainLines(text, size, width));

export const heading = (text: string, size: Mm): Part => linesPart([{ text, size, strong: true }]);

/** A heading that is set smaller, and on more lines, where it is wider than the page. */
export const fittedHeading = (text: string, sizes: readonly Mm[], width: Mm): Part => {
  const size = sizes.find((s) => widthOf(text, s) <= width) ?? Math.min(...sizes);
  return linesPart(wrapped(text, size, width).map((line) => ({ text: line, size, strong: true })));
};

/** A text with a number or a dash hung before it. */
export const hung =
  (mark: string, text: string, size: Mm, width: Mm): Part =>
  (left, top) => {
    const indent = size * 1.5;
    const body = paragraph(text, size, width - indent)(left + indent, top);
    const first = heading(mark, size)(left, top);
    return { art: joinArt(first.art, body.art), bottom: body.bottom };
  };

/** Parts one below the other. */
export const stacked =
  (...parts: readonly Part[]): Part =>
  (left, top) => {
    let bottom = top;
    const arts = parts.map((part) => {
      const { art, bottom: next } = part(left, bottom);
      bottom = next;
      return art;
    });
    return { art: joinArt(...arts), bottom };
  };

/** How high a part is. */
export const heightOf = (part: Part): Mm => part(0, 0).bottom;

export const lineHeight = (size: Mm): Mm => size * LEADING;

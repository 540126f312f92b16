import { boundsOf } from "../../geometry/outline.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import type { PageMark, PagePlace, PageWord, PdfPageLines, ReadLine } from "./drawing.ts";

/** Half of the diamond, as the sheets print it, and what a copier may stretch it by. */
const DIAMOND: Mm = 4.3;
const STRETCHED: Mm = 0.3;

/** The middle of a diamond, or null where the line is none. */
const diamondAt = ({ path, isClosed }: ReadLine): Point | null => {
  if (!isClosed || path.length !== 4 || path.some(({ kind }) => kind !== "line")) return null;
  const { left, top, right, bottom } = boundsOf(path);
  const isSized = [right - left, bottom - top].every(
    (size) => Math.abs(size - 2 * DIAMOND) < STRETCHED,
  );
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  // Its corners stand above, below and beside the middle; those of a square do not.
  const isTurned = path.every(({ start }) => Math.abs(apart(start, middle) - DIAMOND) < STRETCHED);
  return isSized && isTurned ? middle : null;
};

/** The diamonds of a page that hold a letter or two, by that letter. */
export const marksOf = (
  lines: readonly ReadLine[],
  words: readonly PageWord[],
): readonly PageMark[] =>
  lines.flatMap((line) => {
    const at = diamondAt(line);
    const word = at && words.find((w) => /^[a-z]{1,2}$/u.test(w.text) && apart(w.at, at) < DIAMOND);
    return at && word ? [{ letter: word.text, at }] : [];
  });

/**
 * Pages put together by the corner marks that they share, from the first page that has any; null
 * where no two pages share one. Pages that share none are left out.
 */
export const placesByMarks = (pages: readonly PdfPageLines[]): readonly PagePlace[] | null => {
  const rest = pages.filter(({ marks }) => marks.length > 0);
  const known = new Map<string, Point>();
  const places: PagePlace[] = [];
  const put = ({ page, marks }: PdfPageLines, x: Mm, y: Mm): void => {
    places.push({ page, x, y });
    for (const { letter, at } of marks) known.set(letter, { x: at.x + x, y: at.y + y });
  };
  const [first] = rest;
  if (!first) return null;
  put(first, 0, 0);
  rest.shift();
  for (;;) {
    const at = rest.findIndex(({ marks }) => marks.some(({ letter }) => known.has(letter)));
    const next = rest[at];
    if (!next) break;
    rest.splice(at, 1);
    const shared = next.marks.flatMap((mark) => {
      const there = known.get(mark.letter);
      return there ? [{ x: there.x - mark.at.x, y: there.y - mark.at.y }] : [];
    });
    const mean = (of: (p: Point) => number) =>
      shared.reduce((sum, p) => sum + of(p), 0) / shared.length;
    put(
      next,
      mean(({ x }) => x),
      mean(({ y }) => y),
    );
  }
  return places.length > 1 ? places : null;
};

import type { Box } from "../geometry/outline.ts";
import { MM_PER_INCH, type Mm } from "../geometry/units.ts";
import { boxRun, type PageArt, ruled, wordOf } from "./pageArt.ts";

/** 100 mm, and 4 in for rules without millimetres: 101.6 mm, so it stands 0.8 mm round the other. */
const METRIC: Mm = 100;
const INCHES = 4;
const SMALL: Mm = 50;
export const SQUARES_WIDE: Mm = INCHES * MM_PER_INCH;
const LINE: Mm = 0.2;

const squareAt = (x: Mm, y: Mm, side: Mm): Box => ({
  left: x - side / 2,
  top: y - side / 2,
  right: x + side / 2,
  bottom: y + side / 2,
});

/** The three squares one in the other, with their names. Hangs from its upper left corner. */
export const testSquares = (left: Mm, top: Mm): PageArt => {
  const [x, y] = [left + SQUARES_WIDE / 2, top + SQUARES_WIDE / 2];
  const sides = [SQUARES_WIDE, METRIC, SMALL];
  const middle = { from: "middle" as const };
  const word = (text: string, down: Mm, size: Mm, strong = false) =>
    wordOf(text, { x, y: y + down }, size, { ...middle, strong });
  return {
    shapes: [
      ruled(
        sides.map((side) => boxRun(squareAt(x, y, side))),
        LINE,
      ),
    ],
    words: [
      word("outer line: 4 in", -41, 3),
      word("inner line: 100 mm", -36.5, 3),
      word("Measure me first", -3, 4.2, true),
      word("50 mm", 3, 3),
      word("each square across and up", 36.5, 3),
      word("from middle of line to middle of line", 41, 3),
    ],
  };
};

import { boundsOf } from "../geometry/outline.ts";
import { point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import type { TableTest } from "../guide/tableTest.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { mm, told } from "../guide/words/told.ts";
import { flattened } from "./flatten.ts";
import { LETTERS } from "./guideParts.ts";
import { joinArt, type PageArt, type Run, ruled, wordOf } from "./pageArt.ts";
import { ruler } from "./rulers.ts";
import type { Part } from "./stack.ts";

/** How true the printed arc is. */
const WITHIN: Mm = 0.005;
/** Over the arc, for its numbers; and between it and the scale below. */
const OVER: Mm = 18;
const UNDER: Mm = 16;
/** A scale beside it, to be held against a rule before anything is pinned. */
const SCALE: Mm = 100;

const runOf = (path: Parameters<typeof flattened>[0]): Run => ({
  points: flattened(path, WITHIN),
  closed: false,
});

const arcArt = ({ arc, arcTitle }: TableTest, depth: Mm, voice: Voice): PageArt => {
  const size = LETTERS.small;
  const ticks = arc.ticks.map(({ path }) => runOf(path));
  const low = Math.max(boundsOf(arc.fold).bottom, boundsOf(arc.edge).bottom);
  const fold = told("test.arc.fold", { depth: mm(depth) });
  const foldTop = boundsOf(arc.fold);
  return {
    shapes: [
      ruled([runOf(arc.edge)], 0.35),
      ruled([runOf(arc.fold)], 0.25, [3, 1.5]),
      ruled(ticks, 0.35),
    ],
    words: [
      ...arc.ticks.map(({ at, word }) =>
        wordOf(String(at), point(word.x, word.y + size / 3), size, { from: "middle" }),
      ),
      wordOf(
        tell(voice, fold),
        point((foldTop.left + foldTop.right) / 2, foldTop.top + 2 * size),
        size,
        {
          from: "middle",
        },
      ),
      wordOf(tell(voice, arcTitle), point(boundsOf(arc.edge).left, low + 2 * size), size),
    ],
  };
};

const movedArt = ({ shapes, words }: PageArt, dx: Mm, dy: Mm): PageArt => ({
  shapes: shapes.map((shape) => ({
    ...shape,
    runs: shape.runs.map((run) => ({
      ...run,
      points: run.points.map(({ x, y }) => point(x + dx, y + dy)),
    })),
  })),
  words: words.map((word) => ({ ...word, x: word.x + dx, y: word.y + dy })),
});

/** The arc of the table test at its full size, and a scale to try the print by. */
export const arcPart =
  (test: TableTest, depth: Mm, voice: Voice): Part =>
  (left, top) => {
    const box = boundsOf(test.arc.edge);
    const low = Math.max(box.bottom, boundsOf(test.arc.fold).bottom);
    const down = top + OVER - box.top;
    const arc = movedArt(arcArt(test, depth, voice), left + 10 - box.left, down);
    const foot = down + low + UNDER;
    return {
      art: joinArt(arc, movedArt(ruler(SCALE, "across"), left + 10, foot)),
      bottom: foot + 8,
    };
  };

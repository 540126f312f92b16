import { pointAt } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, mapPath, pathOf, reversed, startOf } from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { PagePlace, PdfPageLines, ReadLine } from "./drawing.ts";
import { type PointGrid, pointGrid } from "./pointGrid.ts";

/** Ends of lines nearer than this, on pages laid together, are one point. Ours: a print's error. */
const MEETS: Mm = 0.5;
/** Lines nearer than this all along are one line that both pages draw. */
const SAME: Mm = 0.05;

const middle = (path: Path): Point => pointAt(path[Math.floor(path.length / 2)] ?? path[0], 0.5);

const isSame = (a: Path, b: Path): boolean =>
  a.length === b.length &&
  apart(startOf(a), startOf(b)) < SAME &&
  apart(endOf(a), endOf(b)) < SAME &&
  apart(middle(a), middle(b)) < SAME &&
  Math.abs(lengthOf(a) - lengthOf(b)) < SAME;

/** Lines that are drawn twice, kept once. */
export const drawnOnce = (lines: readonly ReadLine[]): readonly ReadLine[] => {
  const seen = pointGrid<Path>(SAME);
  return lines.filter(({ path }) => {
    const at = middle(path);
    const isNew = !seen.near(at).some((other) => isSame(other, path));
    if (isNew) seen.put(at, path);
    return isNew;
  });
};

/** Pages laid where they belong; lines that several pages draw are kept once. */
export const layPages = (
  pages: readonly PdfPageLines[],
  places: readonly PagePlace[],
): readonly ReadLine[] =>
  drawnOnce(
    places.flatMap(({ page, x, y }) => {
      const lines = pages.find((other) => other.page === page)?.lines ?? [];
      const move = (p: Point): Point => ({ x: p.x + x, y: p.y + y });
      return lines.map((read) => ({ ...read, path: mapPath(read.path, move) }));
    }),
  );

type Loose = { readonly path: Path; readonly length: Mm; isTaken: boolean };

/** The line that begins or ends at a point, turned to begin there: the longest of several. */
const continuing = (ends: PointGrid<Loose>, from: Point, within: Mm): Path | null => {
  let best: Loose | null = null;
  for (const loose of ends.near(from)) {
    if (loose.isTaken || (best && best.length >= loose.length)) continue;
    const nearest = Math.min(apart(startOf(loose.path), from), apart(endOf(loose.path), from));
    if (nearest <= within) best = loose;
  }
  if (!best) return null;
  best.isTaken = true;
  const { path } = best;
  return apart(startOf(path), from) <= apart(endOf(path), from) ? path : reversed(path);
};

/**
 * Lines put end to end where they meet within `within` mm, beginning with the first; turned round
 * where that is needed. Where several meet, the longest goes on; a chain that comes back to its
 * start is closed there. What meets nothing stays by itself.
 */
export const chainLines = (lines: readonly Path[], within: Mm = MEETS): readonly Path[] => {
  const loose = lines.map((path): Loose => ({ path, length: lengthOf(path), isTaken: false }));
  const ends = pointGrid<Loose>(within);
  for (const one of loose) {
    ends.put(startOf(one.path), one);
    ends.put(endOf(one.path), one);
  }
  const isOpen = (chain: Path): boolean => apart(startOf(chain), endOf(chain)) > within;
  return loose.flatMap((first) => {
    if (first.isTaken) return [];
    first.isTaken = true;
    let chain = first.path;
    for (let turn = 0; turn < 2; turn++) {
      while (isOpen(chain)) {
        const next = continuing(ends, endOf(chain), within);
        if (!next) break;
        chain = pathOf([...chain, ...next]);
      }
      // Then the same from its other end.
      chain = reversed(chain);
    }
    return [chain];
  });
};

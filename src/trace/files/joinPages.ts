import { pointAt } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, mapPath, pathOf, reversed, startOf } from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { ReadLine } from "./drawing.ts";
import type { PdfPageLines } from "./pdfIn.ts";

/** Where a page's upper left corner stands in the whole drawing, mm. */
export type PagePlace = { readonly page: number; readonly x: Mm; readonly y: Mm };

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

/** Pages laid where they belong; lines that several pages draw are kept once. */
export const layPages = (
  pages: readonly PdfPageLines[],
  places: readonly PagePlace[],
): readonly ReadLine[] => {
  const kept: ReadLine[] = [];
  for (const { page, x, y } of places) {
    const lines = pages.find((other) => other.page === page)?.lines ?? [];
    for (const read of lines) {
      const path = mapPath(read.path, (p) => ({ x: p.x + x, y: p.y + y }));
      if (!kept.some((other) => isSame(other.path, path))) kept.push({ ...read, path });
    }
  }
  return kept;
};

/** The line in `rest` that begins or ends nearest to a point, turned to begin there. */
const continuing = (
  rest: readonly Path[],
  from: Point,
  within: Mm,
): { readonly at: number; readonly path: Path } | null => {
  let best: { at: number; path: Path } | null = null;
  let least = within;
  for (const [at, path] of rest.entries()) {
    const [start, end] = [apart(startOf(path), from), apart(endOf(path), from)];
    if (Math.min(start, end) > least) continue;
    least = Math.min(start, end);
    best = { at, path: start <= end ? path : reversed(path) };
  }
  return best;
};

/**
 * Lines put end to end where they meet within `within` mm, beginning with the first; turned round
 * where that is needed. What meets nothing stays by itself.
 */
export const chainLines = (lines: readonly Path[], within: Mm = MEETS): readonly Path[] => {
  const rest = [...lines];
  const chains: Path[] = [];
  for (let first = rest.shift(); first; first = rest.shift()) {
    let chain = first;
    for (let turn = 0; turn < 2; turn++) {
      for (;;) {
        const next = continuing(rest, endOf(chain), within);
        if (!next) break;
        rest.splice(next.at, 1);
        chain = pathOf([...chain, ...next.path]);
      }
      // Then the same from its other end.
      chain = reversed(chain);
    }
    chains.push(chain);
  }
  return chains;
};

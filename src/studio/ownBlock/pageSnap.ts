import { endOf, startOf } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import type { PagePlace, PdfPageLines } from "../../trace/files/drawing.ts";
import { pointGrid } from "../../trace/files/pointGrid.ts";

/** Ends that come together nearer than this meet. */
const MEET: Mm = 0.3;
/** So many pairs are tried; a pattern's page has some twenty lines that run off it. */
const MOST_TRIED = 400;

const endsOf = ({ lines }: PdfPageLines, { x, y }: Omit<PagePlace, "page">): readonly Point[] =>
  lines
    .filter(({ isClosed }) => !isClosed)
    .flatMap(({ path }) => [startOf(path), endOf(path)])
    .map((p) => ({ x: p.x + x, y: p.y + y }));

/**
 * How far a page is moved so that most of its lines meet those of the pages beside it, no further
 * than `within`; null where none meet.
 */
export const snapOf = (
  pages: readonly PdfPageLines[],
  places: readonly PagePlace[],
  moving: number,
  within: Mm,
): Point | null => {
  const mine = places.find(({ page }) => page === moving);
  const page = pages.find((other) => other.page === moving);
  if (!mine || !page) return null;
  const others = places
    .filter((place) => place !== mine)
    .flatMap((place) => {
      const other = pages.find((p) => p.page === place.page);
      return other ? endsOf(other, place) : [];
    });
  const wide = pointGrid<Point>(within);
  const fine = pointGrid<Point>(MEET);
  for (const p of others) {
    wide.put(p, p);
    fine.put(p, p);
  }
  const ends = endsOf(page, mine);
  const moves = ends
    .flatMap((p) => wide.near(p).map((q) => ({ x: q.x - p.x, y: q.y - p.y })))
    .filter(({ x, y }) => Math.hypot(x, y) <= within)
    .sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))
    .slice(0, MOST_TRIED);
  const meeting = ({ x, y }: Point): number =>
    ends.filter((p) =>
      fine
        .near({ x: p.x + x, y: p.y + y })
        .some((q) => Math.hypot(q.x - p.x - x, q.y - p.y - y) <= MEET),
    ).length;
  let best: { readonly move: Point; readonly count: number } | null = null;
  for (const move of moves) {
    const count = meeting(move);
    if (!best || count > best.count) best = { move, count };
  }
  return best?.move ?? null;
};

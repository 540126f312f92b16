import { splitSegment } from "./curve.ts";
import type { PlaceOn } from "./intersect.ts";
import { pathOf } from "./path.ts";
import { line, type Path } from "./segment.ts";

/** What comes before a place on a path. */
export const upTo = (path: Path, { index, t }: PlaceOn): Path => {
  const cut = path[index] ?? path[0];
  if (t >= 1) return pathOf(path.slice(0, index + 1));
  const before = path.slice(0, index);
  if (t > 0) return pathOf([...before, splitSegment(cut, t)[0]]);
  return before.length > 0 ? pathOf(before) : [line(cut.start, cut.start)];
};

/** What comes after a place on a path. */
export const onFrom = (path: Path, { index, t }: PlaceOn): Path => {
  const cut = path[index] ?? path[0];
  if (t <= 0) return pathOf(path.slice(index));
  const after = path.slice(index + 1);
  if (t < 1) return pathOf([splitSegment(cut, t)[1], ...after]);
  return after.length > 0 ? pathOf(after) : [line(cut.end, cut.end)];
};

/** What lies between two places on a path (null: its own end); null where they overlap. */
export const partBetween = (path: Path, from: PlaceOn | null, to: PlaceOn | null): Path | null => {
  if (!from) return to ? upTo(path, to) : path;
  if (!to) return onFrom(path, from);
  if (from.index > to.index || (from.index === to.index && from.t >= to.t)) return null;
  const before = upTo(path, to);
  // The cut at `to` makes its segment shorter: a place on it is then further along.
  const t = from.index === to.index && to.t < 1 ? from.t / to.t : from.t;
  return onFrom(before, { index: from.index, t });
};

import { pointAt, splitSegment } from "./curve.ts";
import type { PlaceOn } from "./intersect.ts";
import { parameterAtLength, segmentLength } from "./length.ts";
import { endOf, endTangent, lastOf, pathOf } from "./path.ts";
import { type Point, stepped } from "./point.ts";
import { line, type Path } from "./segment.ts";
import { AT_JOINT } from "./tolerance.ts";
import type { Mm } from "./units.ts";

/** Which segment, and where on it, lies `distance` mm from the start of a path; ends are held. */
export const placeAt = (path: Path, distance: Mm): PlaceOn => {
  let left = distance;
  for (const [index, segment] of path.entries()) {
    const length = segmentLength(segment);
    if (left < length - AT_JOINT) {
      return { index, t: left <= AT_JOINT ? 0 : parameterAtLength(segment, left, length) };
    }
    left -= length;
  }
  return { index: path.length - 1, t: 1 };
};

/** The point `distance` mm along a path, held to its ends. Error below 1e-9 mm. */
export const pointAlong = (path: Path, distance: Mm): Point => {
  const { index, t } = placeAt(path, distance);
  return pointAt(path[index] ?? path[0], t);
};

/** A path of no length at a point: what is left where a cut lies at an end. */
const dotAt = (p: Point): Path => [line(p, p)];

/** Both parts of a path cut `distance` mm from its start (method 1.3). */
export const splitAt = (path: Path, distance: Mm): readonly [Path, Path] => {
  const { index, t } = placeAt(path, distance);
  const cut = path[index] ?? path[0];
  if (t <= 0) {
    const before = path.slice(0, index);
    return [before.length > 0 ? pathOf(before) : dotAt(cut.start), pathOf(path.slice(index))];
  }
  if (t >= 1) {
    const after = path.slice(index + 1);
    return [pathOf(path.slice(0, index + 1)), after.length > 0 ? pathOf(after) : dotAt(cut.end)];
  }
  const [first, second] = splitSegment(cut, t);
  return [pathOf([...path.slice(0, index), first]), pathOf([second, ...path.slice(index + 1)])];
};

/** A path made longer by `distance` mm, straight on along its end tangent (method 1.3). */
export const prolonged = (path: Path, distance: Mm): Path => {
  if (distance <= 0) return path;
  const end = stepped(endOf(path), endTangent(path), distance);
  const last = lastOf(path);
  return last.kind === "line"
    ? pathOf([...path.slice(0, -1), line(last.start, end)])
    : pathOf([...path, line(last.end, end)]);
};

/** The first `distance` mm of a path; where it is shorter it is prolonged (method 1.3). */
export const take = (path: Path, distance: Mm): Path => {
  let whole = 0;
  for (const segment of path) whole += segmentLength(segment);
  return distance > whole ? prolonged(path, distance - whole) : splitAt(path, distance)[0];
};

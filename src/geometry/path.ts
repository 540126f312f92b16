import { endDirection, mapSegment, reversedSegment, startDirection } from "./curve.ts";
import { mirrored, type Point, stepped } from "./point.ts";
import { line, type Path, type Segment } from "./segment.ts";
import type { Mm } from "./units.ts";

/** A path of these segments, in order. It is our own mistake to ask for a path of none. */
export const pathOf = (segments: readonly Segment[]): Path => {
  // Taken as it is, not copied: this stands in the innermost loops.
  if (!isPath(segments)) throw new Error("A path needs a segment.");
  return segments;
};

const isPath = (segments: readonly Segment[]): segments is Path => segments.length > 0;

export const straight = (start: Point, end: Point): Path => [line(start, end)];

export const lastOf = (path: Path): Segment => path[path.length - 1] ?? path[0];
export const startOf = (path: Path): Point => path[0].start;
export const endOf = (path: Path): Point => lastOf(path).end;
export const startTangent = (path: Path): Point => startDirection(path[0]);
export const endTangent = (path: Path): Point => endDirection(lastOf(path));

export const reversed = (path: Path): Path => pathOf([...path].reverse().map(reversedSegment));

export const mapPath = (path: Path, move: (p: Point) => Point): Path =>
  pathOf(path.map((segment) => mapSegment(segment, move)));

/** Mirrored in x = 0; it runs the same way, so a piece drawn with it must be turned round. */
export const mirroredPath = (path: Path): Path => mapPath(path, mirrored);

export const joined = (first: Path, ...more: readonly Path[]): Path =>
  pathOf([first, ...more].flat());

/** A path made longer by `distance` mm before its start, straight along its start tangent. */
export const prolongedBackward = (path: Path, distance: Mm): Path => {
  if (distance <= 0) return path;
  const [first, ...rest] = path;
  const start = stepped(first.start, startTangent(path), -distance);
  return first.kind === "line"
    ? [line(start, first.end), ...rest]
    : [line(start, first.start), first, ...rest];
};

import { pointAt } from "../../src/geometry/curve.ts";
import type { Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";

/** Points close together along a path, by its own equations and not by the sheets' chords. */
export const pointsAlong = (path: Path, steps = 60): readonly Point[] =>
  path.flatMap((segment) =>
    Array.from({ length: steps + 1 }, (_, i) => pointAt(segment, i / steps)),
  );

import { endingAt } from "../../geometry/curve.ts";
import { lastOf, pathOf, startOf } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { FIT_TOLERANCE, fitRun } from "./fitRun.ts";
import { metAt } from "./meetRuns.ts";

/** A closed outline as smooth runs from corner to corner. */
export type Outline = {
  /** In order round it, each starting where the one before ends. One run where it has no corner. */
  readonly runs: readonly Path[];
  /** How far the farthest traced point lies from it, mm. */
  readonly error: Mm;
};

/**
 * An outline from the traced points of its runs, in order round it: each run fitted with few cubics,
 * neighbours brought together where they cross, so that corners stay sharp. Points right at the
 * corners may be left out. Lengths in mm; `error` is the fit's, at most `tolerance` where it can be.
 */
export const fitOutline = (
  runs: readonly (readonly Point[])[],
  tolerance: Mm = FIT_TOLERANCE,
): Outline => {
  const fits = runs.map((points) => fitRun(points, tolerance));
  const paths = fits.map(({ path }) => path);
  for (let i = 0; i < paths.length; i++) {
    const k = (i + 1) % paths.length;
    const [before, after] = [paths[i], paths[k]];
    if (!before || !after || i === k) continue;
    const met = metAt(before, after);
    paths[i] = met[0];
    paths[k] = met[1];
  }
  return { runs: paths, error: Math.max(0, ...fits.map(({ error }) => error)) };
};

/** The whole outline as one closed path. */
export const closedPathOf = ({ runs }: Outline): Path => {
  const segments = runs.flat();
  const path = pathOf(segments);
  return pathOf([...path.slice(0, -1), endingAt(lastOf(path), startOf(path))]);
};

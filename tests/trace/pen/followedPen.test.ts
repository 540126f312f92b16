import { describe, expect, test } from "vitest";
import { endOf, pathOf, startOf, straight } from "../../../src/geometry/path.ts";
import { apart, type Point } from "../../../src/geometry/point.ts";
import { cubic } from "../../../src/geometry/segment.ts";
import { jointOf } from "../../../src/trace/follow/meetRuns.ts";
import { closedUp, withFollowed } from "../../../src/trace/pen/followedPen.ts";
import { NO_LINE, type PenLine, withRun } from "../../../src/trace/pen/pen.ts";

/** A square of 100 mm, each side followed between taps that missed its corners by some millimetres. */
const CORNERS: readonly Point[] = [
  { x: 0, y: 0 },
  { x: 100, y: 0 },
  { x: 100, y: 100 },
  { x: 0, y: 100 },
];
const short = (from: Point, to: Point) => {
  const at = (t: number) => ({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) });
  return straight(at(0.03), at(0.96));
};
const SIDES = CORNERS.map((from, i) => short(from, CORNERS[(i + 1) % 4] ?? from));

const followed = (): PenLine =>
  SIDES.reduce<{ pen: PenLine; before: ReturnType<typeof straight> | null }>(
    ({ pen, before }, run) => {
      const joint = before && jointOf(before, run);
      const after = joint?.after ?? run;
      return { pen: withFollowed(pen, after, joint), before: after as ReturnType<typeof straight> };
    },
    { pen: NO_LINE, before: null },
  ).pen;

describe("a line followed from tap to tap", () => {
  test("has its corners where the lines cross, not where they were tapped", () => {
    const { points, isClosed } = closedUp(followed());
    expect(isClosed).toBe(true);
    expect(points).toHaveLength(4);
    for (const corner of CORNERS)
      expect(Math.min(...points.map(({ at }) => apart(at, corner)))).toBeLessThan(1e-6);
    expect(points.every(({ isCorner }) => isCorner)).toBe(true);
  });

  test("runs on smoothly where two runs meet without a turn", () => {
    const one = pathOf([cubic({ x: 0, y: 0 }, { x: 20, y: 0 }, { x: 40, y: 5 }, { x: 60, y: 10 })]);
    const two = pathOf([
      cubic({ x: 60.4, y: 10.2 }, { x: 80, y: 15.2 }, { x: 100, y: 30 }, { x: 110, y: 50 }),
    ]);
    const joint = jointOf(one, two);
    expect(joint.isCorner).toBe(false);
    expect(endOf(joint.before)).toEqual(startOf(joint.after));
    const { points } = withFollowed(withRun(NO_LINE, one, true), joint.after, joint);
    expect(points.map(({ isCorner }) => isCorner)).toEqual([true, false, true]);
  });

  test("of one run alone is closed as it is", () => {
    const pen = withRun(NO_LINE, SIDES[0] ?? straight({ x: 0, y: 0 }, { x: 1, y: 0 }), true);
    expect(closedUp(pen)).toEqual({ ...pen, isClosed: true });
  });
});

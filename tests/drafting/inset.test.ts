import { describe, expect, test } from "vitest";
import { type CutEdge, insetEdges } from "../../src/drafting/inset.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { meeting } from "../../src/geometry/intersect.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import {
  endOf,
  endTangent,
  prolongedBackward,
  startOf,
  startTangent,
} from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { apart } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { prolonged } from "../../src/geometry/split.ts";
import { aPath } from "../support/curves.ts";
import { edgesOfSleeve, near } from "../support/expectations.ts";
import { distanceTo, polylineOf, samplesOf, stretchesOf } from "../support/independent/lines.ts";
import { OWN_BLOCKS } from "../support/ownBlocks.ts";

/** Each edge moved out, drawn on to where it meets its neighbours' lines: a block as it is cut. */
const grownEdges = (edges: readonly CutEdge[], isOnFold: boolean): readonly CutEdge[] => {
  const moved = edges.map(({ path, allowance }) => offsetPath(path, allowance));
  return edges.map(({ allowance }, i) => {
    const [path, before, after] = [moved[i], moved.at(i - 1), moved[(i + 1) % moved.length]];
    if (!path || !before || !after) throw new Error("An edge is missing.");
    const first = isOnFold && i === 0 ? null : cornerOf(before, path);
    const last = isOnFold && i === moved.length - 1 ? null : cornerOf(path, after);
    const begun = first ? prolongedBackward(path, apart(first, startOf(path))) : path;
    return { path: last ? prolonged(begun, apart(last, endOf(path))) : begun, allowance };
  });
};

const cornerOf = (before: Path, after: Path) =>
  meeting(endOf(before), endTangent(before), startOf(after), startTangent(after));

const bodyEdges = (body: Block["front"]): readonly CutEdge[] => [
  { path: body.neckline, allowance: 6.35 },
  { path: body.raglan, allowance: 9.525 },
  { path: body.side, allowance: 12 },
  { path: body.hem, allowance: 25.4 },
];
const SLEEVE = [6.35, 9.525, 12, 25.4, 12, 9.525] as const;

/** Two edges lie within a hundredth of a millimetre of each other, looked for both ways. */
const expectSame = (found: Path, wanted: Path): void => {
  const [a, b] = [stretchesOf(toPathData(found)), stretchesOf(toPathData(wanted))];
  const [lineA, lineB] = [polylineOf(a, 0.5), polylineOf(b, 0.5)];
  for (const { spot } of samplesOf(a, 3)) expect(distanceTo(lineB, spot)).toBeLessThan(0.01);
  for (const { spot } of samplesOf(b, 3)) expect(distanceTo(lineA, spot)).toBeLessThan(0.01);
  near(apart(startOf(found), startOf(wanted)), 0, 0.02);
  near(apart(endOf(found), endOf(wanted)), 0, 0.02);
};

describe("a block turned to cut lines and back", () => {
  test.each(OWN_BLOCKS.slice(0, 2).concat(OWN_BLOCKS.slice(3)))(
    "agrees with itself within 0.01 mm: %s",
    (_, { front, back, sleeve }) => {
      for (const half of [front, back]) {
        const edges = bodyEdges(half);
        insetEdges(grownEdges(edges, true), true).forEach((path, i) => {
          expectSame(path, edges[i]?.path ?? path);
        });
      }
      const edges = edgesOfSleeve(sleeve).map((path, i) => ({ path, allowance: SLEEVE[i] ?? 0 }));
      insetEdges(grownEdges(edges, false), false).forEach((path, i) => {
        expectSame(path, edges[i]?.path ?? path);
      });
    },
  );
});

describe("cut lines brought back to sew lines", () => {
  const SQUARE = ["M0 0 L100 0", "M100 0 L100 50", "M100 50 L0 50", "M0 50 L0 0"];

  test("of a rectangle are a rectangle as much smaller on each side", () => {
    const edges = SQUARE.map((data, i) => ({
      path: aPath(data),
      allowance: [10, 5, 10, 20][i] ?? 0,
    }));
    const [top, right] = insetEdges(edges, false);
    expect(top).toEqual(aPath("M20 10 L95 10"));
    expect(right).toEqual(aPath("M95 10 L95 40"));
  });

  test("on the fold begin and end on it", () => {
    const edges = SQUARE.slice(0, 3).map((data) => ({ path: aPath(data), allowance: 10 }));
    const [first, , last] = insetEdges(edges, true);
    expect([first && startOf(first), last && endOf(last)]).toEqual([
      { x: 0, y: 10 },
      { x: 0, y: 40 },
    ]);
  });

  test("join end to start, round the piece", () => {
    const [, [, block] = ["", null]] = OWN_BLOCKS;
    if (!block) throw new Error("There is no second block.");
    const edges = bodyEdges(block.front);
    const found = insetEdges(edges, true);
    found.slice(1).forEach((path, i) => {
      const before = found[i];
      near(before ? apart(endOf(before), startOf(path)) : NaN, 0, 1e-6);
    });
  });

  test("have no crumb left where an inward offset ends just past a joint", () => {
    // The joint at (50, 0) is the corner of the inset itself, but for a thousandth.
    const edges = [
      { path: aPath("M0 0 L90.001 0 L100 0"), allowance: 10 },
      { path: aPath("M100 0 L100 50"), allowance: 10 },
      { path: aPath("M100 50 L0 50"), allowance: 10 },
    ];
    const [top] = insetEdges(edges, true);
    const [longer] = insetEdges(
      [{ path: aPath("M0 0 L89.999 0 L100 0"), allowance: 10 }, ...edges.slice(1)],
      true,
    );
    expect(top).toHaveLength(1);
    expect(longer).toHaveLength(1);
    expect(longer && endOf(longer)).toEqual({ x: 90, y: 10 });
  });

  test("with no allowance are the lines as they were", () => {
    const edges = SQUARE.map((data) => ({ path: aPath(data), allowance: 0 }));
    expect(insetEdges(edges, false)).toEqual(SQUARE.map(aPath));
  });
});

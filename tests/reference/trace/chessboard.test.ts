import { describe, expect, test } from "vitest";
import { apart, type Point } from "../../../src/geometry/point.ts";
import { fitHomography, seen } from "../../../src/trace/photo/homography.ts";
import { type Lens, unbent } from "../../../src/trace/photo/lens.ts";
import { clicked } from "../../../src/trace/photo/mark.ts";
import type { Picture, Pixel } from "../../../src/trace/photo/picture.ts";
import { placePicture } from "../../../src/trace/photo/placePicture.ts";
import { onTable } from "../../../src/trace/photo/plane.ts";
import { rigidFrom } from "../../../src/trace/photo/rigid.ts";
import { findStraightEdge } from "../../../src/trace/photo/straightEdge.ts";
import { chessCorner } from "../../support/photo/chessCorners.ts";
import { readGreyPng } from "../../support/photo/readGreyPng.ts";
import { distancesOf } from "../../trace/photo/planes.ts";

/**
 * Pictures that this project did not make: a printed chessboard by a real camera (data/SOURCE.md). Its
 * squares are 25 mm; one pixel shows 0.6 to 0.8 mm of it.
 */
const SQUARE = 25;
const [WIDTH, HEIGHT] = [640, 480];

/** The published camera: left_intrinsics.yml, its first two terms brought to our radius. */
const FOCAL = 535.915734;
const RADIUS = Math.hypot(WIDTH, HEIGHT) / 2;
const PUBLISHED: Lens = {
  // Its middle counts from a pixel's middle, ours from its corner.
  centre: { x: 342.283155 + 0.5, y: 235.570829 + 0.5 },
  radius: RADIUS,
  k1: -0.266372609 * (RADIUS / FOCAL) ** 2,
  k2: -0.038588899 * (RADIUS / FOCAL) ** 4,
};

type Shot = {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  /** About where the four outer inner corners stand, clockwise; each is found again. */
  readonly ends: readonly [Pixel, Pixel, Pixel, Pixel];
  readonly columns: number;
  readonly rows: number;
};

const SHOTS: readonly Shot[] = [
  {
    name: "flat",
    left: 205,
    top: 35,
    ends: [
      { x: 244, y: 94 },
      { x: 514, y: 87 },
      { x: 511, y: 267 },
      { x: 249, y: 255 },
    ],
    columns: 9,
    rows: 6,
  },
  {
    name: "slanted",
    left: 140,
    top: 30,
    ends: [
      { x: 227, y: 82 },
      { x: 423, y: 72 },
      { x: 450, y: 409 },
      { x: 200, y: 409 },
    ],
    columns: 6,
    rows: 9,
  },
];

/** The part that is kept, back in its place in the whole picture. */
const wholeOf = ({ name, left, top }: Shot): Picture => {
  const part = readGreyPng(new URL(`./data/chessboard-${name}.png`, import.meta.url).pathname);
  const grey = new Uint8Array(WIDTH * HEIGHT).fill(128);
  for (let y = 0; y < part.height; y++) {
    grey.set(part.grey.subarray(y * part.width, (y + 1) * part.width), (top + y) * WIDTH + left);
  }
  return { grey, width: WIDTH, height: HEIGHT };
};

const boardOf = (shot: Shot) => {
  const picture = wholeOf(shot);
  const [across, down] = [(shot.columns - 1) * SQUARE, (shot.rows - 1) * SQUARE];
  const ends = shot.ends.map((end) => chessCorner(picture, end));
  const truth: readonly Point[] = [
    { x: 0, y: 0 },
    { x: across, y: 0 },
    { x: across, y: down },
    { x: 0, y: down },
  ];
  const rough = fitHomography(truth.map((from, i) => ({ from, to: ends[i] ?? from })));
  if (!rough) throw new Error("no board");
  const corners = Array.from({ length: shot.rows * shot.columns }, (_, k) => {
    const place = {
      x: (k % shot.columns) * SQUARE,
      y: Math.floor(k / shot.columns) * SQUARE,
    };
    return { place, at: chessCorner(picture, seen(rough, place)) };
  });
  return { picture, ends, truth, corners };
};

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

describe.each(SHOTS)("a chessboard by a real camera, $name", (shot) => {
  const { picture, ends, truth, corners } = boardOf(shot);

  test("54 corners are seen, each where no other is", () => {
    expect(corners).toHaveLength(54);
    for (const [i, { at }] of corners.entries()) {
      const others = corners.filter((_, k) => k !== i).map((other) => apart(other.at, at));
      expect(Math.min(...others)).toBeGreaterThan(20);
    }
  });

  test("from its four outer corners alone, all 54 lie on the grid within 0.5 mm", () => {
    const back = fitHomography(
      truth.map((to, i) => ({ from: unbent(PUBLISHED, ends[i] ?? to), to })),
    );
    if (!back) throw new Error("no homography");
    const strays = corners.map(({ place, at }) => apart(seen(back, unbent(PUBLISHED, at)), place));
    expect(Math.max(...strays)).toBeLessThan(0.5);
    expect(middleOf(strays)).toBeLessThan(0.25);
  });

  test("with the lens told from the board's own straight lines, within 0.7 mm; as it is, twice as far off", () => {
    const edges = ends.flatMap((from, i) => {
      const told = findStraightEdge(picture, from, ends[(i + 1) % 4] ?? from);
      return "found" in told ? [told.found] : [];
    });
    expect(edges).toHaveLength(4);
    const worst = (terms: 0 | 2): number => {
      const told = placePicture({
        width: WIDTH,
        height: HEIGHT,
        marks: ends.map((at, i) => clicked("ABCD"[i] ?? "A", at)),
        distances: distancesOf(truth),
        edges,
        terms,
        piece: [],
      });
      if ("fault" in told) throw new Error(told.fault.reason);
      const { plane } = told.found;
      const there = corners.map(({ at }) => onTable(plane, at));
      const back = rigidFrom(
        there,
        corners.map(({ place }) => place),
      );
      return back.worst;
    };
    const [straightened, asItIs] = [worst(2), worst(0)];
    expect(straightened).toBeLessThan(0.7);
    expect(asItIs).toBeGreaterThan(1.2);
  });
});

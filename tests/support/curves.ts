import fc from "fast-check";
import { pathOf } from "../../src/geometry/path.ts";
import { readPathData } from "../../src/geometry/pathData.ts";
import type { Point } from "../../src/geometry/point.ts";
import { type Cubic, cubic, type Line, line, type Path } from "../../src/geometry/segment.ts";

/** Across and down, in mm. */
export type Pair = readonly [number, number];

const at = ([x, y]: Pair): Point => ({ x, y });
export const aCubic = (a: Pair, b: Pair, c: Pair, d: Pair): Cubic =>
  cubic(at(a), at(b), at(c), at(d));
export const aLine = (a: Pair, b: Pair): Line => line(at(a), at(b));

/** A path written as path data, as a test reads best. */
export const aPath = (data: string): Path => {
  const read = readPathData(data);
  if ("fault" in read) throw new Error(`${data}: ${read.fault}`);
  return read.path;
};

/** Where t² and t³ are drawn from t = -1 to 1: a cusp in the middle, of a closed-form length. */
export const CUSP = aCubic([1, -1], [-1 / 3, 1], [-1 / 3, -1], [1, 1]);

export const scaled = (c: Cubic, by: number): Cubic =>
  cubic(
    { x: c.start.x * by, y: c.start.y * by },
    { x: c.startHandle.x * by, y: c.startHandle.y * by },
    { x: c.endHandle.x * by, y: c.endHandle.y * by },
    { x: c.end.x * by, y: c.end.y * by },
  );

/** Curves on which arc length is known to go wrong, and the sizes between which a garment lies. */
export const HARD_CUBICS: readonly (readonly [string, Cubic])[] = [
  ["a cusp in the middle", scaled(CUSP, 100)],
  ["a loop", aCubic([0, 0], [300, 200], [-200, 200], [100, 0])],
  ["a nearly closed loop", aCubic([0, 0], [100, 80], [-99, 80], [0.1, 0])],
  ["a hair off a cusp", aCubic([100, -100], [-33.33, 100.001], [-33.34, -100], [100, 100])],
  ["a thousandth off a cusp", aCubic([0, 0], [100, 100], [0.001, 100], [100, 0])],
  ["no handle at the start", aCubic([0, 0], [0, 0], [40, 90], [100, 100])],
  ["no handle at the end", aCubic([0, 0], [60, -10], [100, 100], [100, 100])],
  ["no handles at all", aCubic([0, 0], [0, 0], [100, 50], [100, 50])],
  ["both handles at the end", aCubic([0, 0], [100, 50], [100, 50], [100, 50])],
  ["a handle of a ten-millionth", aCubic([0, 0], [1e-7, 0], [40, 90], [100, 100])],
  ["a way forth and back on one line", aCubic([0, 0], [200, 0], [-100, 0], [100, 0])],
  ["a hairpin", aCubic([0, 0], [500, 1], [500, -1], [0, 0.5])],
  ["a sharp bend at its end", aCubic([0, 0], [300, 0], [300, 0], [299, 1])],
  ["a millimetre", aCubic([0, 0], [0.2, 0.6], [0.5, 1], [1, 0])],
  ["three metres", aCubic([0, 0], [1200, 900], [1700, -800], [3000, 40])],
  ["three metres with a bend of a millimetre", aCubic([0, 0], [3000, 0], [3000, 1], [0, 1])],
  ["one point", aCubic([40, 50], [40, 50], [40, 50], [40, 50])],
];

/** On a grid of a millionth of the size: no drawing has coordinates of 1e-300 mm. */
const coordinate = (size: number) =>
  fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => (n / 1_000_000) * size);

export const somePoint = (size = 500): fc.Arbitrary<Point> =>
  fc.record({ x: coordinate(size), y: coordinate(size) });

export const someCubic = (size = 500): fc.Arbitrary<Cubic> =>
  fc
    .tuple(somePoint(size), somePoint(size), somePoint(size), somePoint(size))
    .map(([a, b, c, d]) => cubic(a, b, c, d));

/** From a millimetre to three metres, any shape: loops and hooks among them. */
export const someCubicOfAnySize: fc.Arbitrary<Cubic> = fc
  .tuple(someCubic(1), fc.double({ min: 0, max: Math.log10(3000), noNaN: true }))
  .map(([c, size]) => scaled(c, 10 ** size));

/** A cusp, moved off by a little: the speed falls nearly to nought somewhere in the middle. */
export const someNearCusp: fc.Arbitrary<Cubic> = fc
  .tuple(fc.double({ min: -9, max: 1, noNaN: true }), somePoint(1), somePoint(1))
  .map(([size, p, q]) => {
    const by = 10 ** size;
    const { start, startHandle, endHandle, end } = scaled(CUSP, 100);
    const moved = (a: Point, b: Point): Point => ({ x: a.x + b.x * by, y: a.y + b.y * by });
    return cubic(start, moved(startHandle, p), moved(endHandle, q), end);
  });

/** A curve such as a maker draws: from left to right, its handles a part of the way along. */
export const someGentleCubic: fc.Arbitrary<Cubic> = fc
  .tuple(
    fc.double({ min: 40, max: 600, noNaN: true }),
    fc.array(fc.double({ min: -0.25, max: 0.25, noNaN: true }), { minLength: 3, maxLength: 3 }),
  )
  .map(([long, [a = 0, b = 0, c = 0]]) =>
    aCubic([0, 0], [0.35 * long, a * long], [0.65 * long, b * long], [long, c * long]),
  );

/** One to five segments, straights among them, each from the end of the one before. */
export const somePath = (size = 500): fc.Arbitrary<Path> =>
  fc
    .tuple(
      somePoint(size),
      fc.array(
        fc.oneof(
          fc.tuple(somePoint(size)),
          fc.tuple(somePoint(size), somePoint(size), somePoint(size)),
        ),
        { minLength: 1, maxLength: 5 },
      ),
    )
    .map(([start, steps]) => {
      let from = start;
      return pathOf(
        steps.map((step) => {
          const [first, second, third] = step;
          const next = second && third ? cubic(from, first, second, third) : line(from, first);
          from = next.end;
          return next;
        }),
      );
    });

/** A share from nought to one. */
export const someShare = fc.double({ min: 0, max: 1, noNaN: true });
/** A share well inside. */
export const innerShare = fc.double({ min: 0.02, max: 0.98, noNaN: true });

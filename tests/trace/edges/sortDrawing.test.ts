import { describe, expect, test } from "vitest";
import { toSvg } from "../../../src/export/svg.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { joined, mapPath } from "../../../src/geometry/path.ts";
import { toPathData } from "../../../src/geometry/pathData.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { atCorners } from "../../../src/trace/edges/atCorners.ts";
import {
  runsOfShape,
  type SortedDrawing,
  sortDrawing,
} from "../../../src/trace/edges/sortDrawing.ts";
import { readSvg } from "../../../src/trace/files/svgIn.ts";
import { laidOn } from "../../support/sheetSubjects.ts";
import { drafted, halfRing, sleeveRing, wholeRing } from "./shapes.ts";

const sorted = (text: string): SortedDrawing => {
  const told = readSvg(text);
  if ("fault" in told) throw new Error(told.fault.reason);
  return sortDrawing(told.found.lines);
};

const svg = (inner: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="2000mm" height="2000mm" viewBox="-500 -500 2000 2000">${inner}</svg>`;

const closed = (ring: readonly Path[]): string => {
  const [first, ...more] = ring;
  return first ? `${toPathData(joined(first, ...more))}Z` : "";
};
const path = (d: string, more = ""): string => `<path d="${d}" fill="none" ${more}/>`;
const aside = (ring: readonly Path[], by: number): readonly Path[] =>
  ring.map((run) => mapPath(run, ({ x, y }) => ({ x: x + by, y })));
const total = (ring: readonly Path[]): number => ring.reduce((sum, run) => sum + lengthOf(run), 0);

const block = drafted();

/** Which shape each piece was taken from, by the length round it. */
const lengths = ({ likely, shapes }: SortedDrawing) =>
  Object.fromEntries([...likely].map(([piece, at]) => [piece, shapes[at]?.length ?? 0]));

describe("a closed line at its corners", () => {
  test("of a square has four runs, of a circle one", () => {
    const told = sorted(svg('<rect width="200" height="200"/><circle r="90" cx="600"/>'));
    expect(told.shapes.map((shape) => runsOfShape(shape).length).sort()).toEqual([1, 4]);
  });

  test("of a piece has its edges, wherever it is begun and however its curves are cut", () => {
    const [first, ...more] = halfRing(block.front);
    if (!first) throw new Error("no edge");
    const whole = joined(first, ...more);
    const begun: Path = [whole[2] ?? whole[0], ...whole.slice(3), ...whole.slice(0, 2)];
    const runs = atCorners(begun);
    expect(runs).toHaveLength(5);
    expect(runs.map(lengthOf).sort((a, b) => a - b)).toEqual(
      halfRing(block.front)
        .map(lengthOf)
        .sort((a, b) => a - b),
    );
  });
});

describe("a drawing sorted", () => {
  test("knows three closed, unnamed outlines by their shapes, notches and grain lines apart", () => {
    const told = sorted(
      svg(
        path(closed(halfRing(block.back))) +
          path(closed(aside(halfRing(block.front), 400))) +
          path(closed(aside(sleeveRing(block), 1000))) +
          path("M100 100V300M60 200h6M64 204h6"),
      ),
    );
    expect(lengths(told)).toEqual({
      front: expect.closeTo(total(halfRing(block.front)), 2),
      back: expect.closeTo(total(halfRing(block.back)), 2),
      sleeve: expect.closeTo(total(sleeveRing(block)), 2),
    });
  });

  test("knows whole pieces too", () => {
    const told = sorted(
      svg(path(closed(wholeRing(block.back))) + path(closed(aside(wholeRing(block.front), 800)))),
    );
    expect(lengths(told)["back"]).toBeCloseTo(total(wholeRing(block.back)), 2);
    expect(lengths(told)["front"]).toBeCloseTo(total(wholeRing(block.front)), 2);
  });

  test("takes a named group's sewing line and not its cut line", () => {
    const { subject, sheets } = laidOn("a4");
    const told = sorted(toSvg(subject, sheets));
    const sewn = (name: string): number =>
      subject.garment.pieces
        .filter((piece) => piece.name === name)
        .flatMap(({ edges, onFold }) => edges.filter((edge) => edge.name !== onFold))
        .reduce((sum, { length }) => sum + length, 0);
    expect(lengths(told)).toEqual({
      front: expect.closeTo(sewn("front"), 2),
      back: expect.closeTo(sewn("back"), 2),
      sleeve: expect.closeTo(sewn("sleeve"), 2),
    });
  });

  test("goes on along the longest line at a corner where a notch stands, and trims the notch off", () => {
    const told = sorted(svg(path("M0 0H400V300") + path("M0 0v8") + path("M400 300h8")));
    expect(told.shapes.map(({ length }) => Math.round(length))).toEqual([700]);
  });

  test("with ten thousand ticks is sorted in little time", () => {
    const ticks = Array.from({ length: 10_000 }, (_, i) => `M${i % 400} ${300 + i / 40}v3`).join(
      "",
    );
    const told = sorted(svg(path(ticks) + path(closed(halfRing(block.back)))));
    expect(told.likely.get("back")).toBe(0);
  });
});

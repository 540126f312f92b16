import { describe, expect, test } from "vitest";
import type { Piece } from "../../src/drafting/piece.ts";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { layOut } from "../../src/export/layout.ts";
import { bandCrease, isBand, seamEdges } from "../../src/export/pieceLines.ts";
import { placedPath, placementOf } from "../../src/export/placing.ts";
import type { SheetPage, Sheets } from "../../src/export/sheets.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import type { Point } from "../../src/geometry/point.ts";
import { pointsAlong } from "../support/samples.ts";
import { SUBJECTS, subjectOf } from "../support/sheetSubjects.ts";

const GAP = 10;
const MARGIN = 10;
const OVERLAP = 10;

const outlinesOf = (pieces: readonly Piece[], sheets: Sheets): readonly (readonly Point[])[] =>
  pieces.map((piece) =>
    pointsAlong(placedPath(placementOf(sheets, piece.name), piece.cutLine), 24),
  );

type Box = { readonly x: readonly [number, number]; readonly y: readonly [number, number] };

const boxOf = (points: readonly Point[]): Box => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] };
};

/** Whether two runs of points are surely further apart than the gap. */
const areFar = (a: readonly Point[], b: readonly Point[]): boolean => {
  const [one, other] = [boxOf(a), boxOf(b)];
  return (["x", "y"] as const).some(
    (axis) => one[axis][1] + GAP < other[axis][0] || other[axis][1] + GAP < one[axis][0],
  );
};

/** The least distance between two runs of points, by segments, as plainly as it can be told. */
const distance = (a: readonly Point[], b: readonly Point[]): number => {
  let least = Infinity;
  for (const p of a) {
    for (let i = 1; i < b.length; i++) {
      const [from, to] = [b[i - 1] ?? p, b[i] ?? p];
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      const size = dx * dx + dy * dy;
      const share = size === 0 ? 0 : ((p.x - from.x) * dx + (p.y - from.y) * dy) / size;
      const t = Math.min(1, Math.max(0, share));
      least = Math.min(least, Math.hypot(p.x - from.x - t * dx, p.y - from.y - t * dy));
    }
  }
  return least;
};

const isInside = (points: readonly Point[], p: Point): boolean => {
  let turns = 0;
  points.forEach((to, i) => {
    const from = points[(i || points.length) - 1] ?? to;
    const angle = Math.atan2(
      (from.x - p.x) * (to.y - p.y) - (from.y - p.y) * (to.x - p.x),
      (from.x - p.x) * (to.x - p.x) + (from.y - p.y) * (to.y - p.y),
    );
    turns += angle;
  });
  return Math.abs(turns) > Math.PI;
};

const shows = (
  { width, height }: Sheets,
  page: SheetPage,
  { x, y }: Point,
  half: number,
): boolean => {
  const [u, v] = [x - page.x, y - page.y];
  return (
    u >= MARGIN - half &&
    u <= width - MARGIN + half &&
    v >= MARGIN - half &&
    v <= height - MARGIN + half
  );
};

const linePoints = (pieces: readonly Piece[], sheets: Sheets): readonly Point[] =>
  pieces.flatMap((piece) => {
    const placement = placementOf(sheets, piece.name);
    const { from, to } = piece.grain;
    const paths = [
      piece.cutLine,
      ...seamEdges(piece).map(({ path }) => path),
      ...bandCrease(piece).map(({ path }) => path),
      [{ kind: "line" as const, start: from, end: to }] as const,
    ];
    return paths.flatMap((path) => pointsAlong(placedPath(placement, path), 90));
  });

describe.each(SUBJECTS)("a layout of %s", (_, { garment }) => {
  const { pieces } = garment;

  test.each(PAPER_NAMES)("holds every piece once on %s, 10 mm apart", (paper) => {
    const sheets = layOut(pieces, paper);
    expect(sheets.placements.map(({ piece }) => piece)).toEqual(pieces.map(({ name }) => name));
    const outlines = outlinesOf(pieces, sheets);
    for (const [i, a] of outlines.entries()) {
      for (const b of outlines.slice(i + 1)) {
        if (areFar(a, b)) continue;
        expect(Math.min(distance(a, b), distance(b, a))).toBeGreaterThanOrEqual(GAP);
        const [one, other] = [a[0] ?? { x: 0, y: 0 }, b[0] ?? { x: 0, y: 0 }];
        expect(isInside(b, one) || isInside(a, other)).toBe(false);
      }
    }
  });

  test.each(PAPER_NAMES)("shows every line on %s, and has no sheet without one", (paper) => {
    const sheets = layOut(pieces, paper);
    const points = linePoints(pieces, sheets);
    const { pages } = sheets;
    expect(points.every((p) => pages.some((page) => shows(sheets, page, p, 0)))).toBe(true);
    for (const page of pages) {
      expect(points.some((p) => shows(sheets, page, p, 0.5))).toBe(true);
    }
  });

  test.each(PAPER_NAMES)("leaves no sheet of %s out that a line comes into", (paper) => {
    const sheets = layOut(pieces, paper);
    const points = linePoints(pieces, sheets);
    const [stepX, stepY] = [sheets.width - 30, sheets.height - 30];
    for (let row = 0; row < sheets.rows; row++) {
      for (let column = 0; column < sheets.columns; column++) {
        const [x, y] = [column * stepX - MARGIN, row * stepY - MARGIN];
        const there = sheets.pages.some((page) => page.row === row && page.column === column);
        const page: SheetPage = { page: 0, x, y, row, column };
        if (!there) expect(points.some((p) => shows(sheets, page, p, 0))).toBe(false);
      }
    }
  });
});

describe("a layout", () => {
  const { pieces } = subjectOf().garment;

  test("is the same every time", () => {
    expect(layOut(pieces, "a4")).toEqual(layOut(pieces, "a4"));
  });

  test("counts its pages from 3, after title and map, row by row", () => {
    const { pages, count } = layOut(pieces, "a4");
    expect(pages.map(({ page }) => page)).toEqual(pages.map((_, i) => i + 3));
    expect(count).toBe(pages.length + 2);
    const places = pages.map(({ row, column }) => row * 100 + column);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  test("steps from sheet to sheet by the sheet less two margins and an overlap", () => {
    const { pages, width, height } = layOut(pieces, "a4");
    for (const { row, column, x, y } of pages) {
      expect(x).toBeCloseTo(column * (width - 2 * MARGIN - OVERLAP) - MARGIN, 9);
      expect(y).toBeCloseTo(row * (height - 2 * MARGIN - OVERLAP) - MARGIN, 9);
    }
  });

  test("stands body pieces upright and turns bands by a quarter only", () => {
    for (const paper of PAPER_NAMES) {
      for (const { piece, turn } of layOut(pieces, paper).placements) {
        const found = pieces.find(({ name }) => name === piece);
        expect(found && isBand(found) ? [0, 90] : [0]).toContain(turn);
      }
    }
  });

  test("puts the worked example on one sheet of A0 and one length of roll", () => {
    expect(layOut(pieces, "a0").pages).toHaveLength(1);
    const roll = layOut(pieces, "roll-914");
    expect(roll.pages).toHaveLength(1);
    expect(roll.width).toBe(914);
    expect(roll.height).toBeLessThan(1500);
  });

  test("needs at most 23 sheets of A4 for the worked example, whose pieces cover 14", () => {
    expect(layOut(pieces, "a4").pages.length).toBeLessThanOrEqual(23);
  });

  test("cuts a roll before 5 m, and turns what is wider than it", () => {
    const wide = pieces.map((piece) =>
      piece.name === "hemBand" ? { ...piece, ...longBand(6000) } : piece,
    );
    const { height, pages, placements } = layOut(wide, "roll-914");
    expect(height).toBeLessThan(5000);
    expect(pages.length).toBeGreaterThan(1);
    expect(placements.find(({ piece }) => piece === "hemBand")?.turn).toBe(90);
  });
});

/** The hem band, as long as this. */
const longBand = (long: number): Pick<Piece, "edges" | "cutLine" | "grain"> => {
  const corners: readonly Point[] = [
    { x: 0, y: 0 },
    { x: long, y: 0 },
    { x: long, y: 150 },
    { x: 0, y: 150 },
  ];
  const names = ["top", "endB", "bottom", "endA"] as const;
  const edges = names.map((name, i) => {
    const path = [
      {
        kind: "line" as const,
        start: corners[i] ?? { x: 0, y: 0 },
        end: corners[(i + 1) % 4] ?? { x: 0, y: 0 },
      },
    ] as const;
    return { name, path, length: lengthOf(path) };
  });
  const [first, ...rest] = edges.map(({ path }) => path[0]);
  if (!first) throw new Error("A band has four edges.");
  return {
    edges,
    cutLine: [first, ...rest],
    grain: { from: { x: 100, y: 20 }, to: { x: 100, y: 130 } },
  };
};

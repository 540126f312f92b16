import { beforeAll, describe, expect, test } from "vitest";
import type { PaperName } from "../../src/export/data/paper.ts";
import { TEST_SQUARE } from "../../src/export/data/paper.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { notchPlaces } from "../../src/export/pieceLines.ts";
import type { Placement } from "../../src/export/placement.ts";
import { placedPoint, placementOf } from "../../src/export/placing.ts";
import { RULER_START, rulerLengths } from "../../src/export/rulers.ts";
import type { SheetPage, Sheets } from "../../src/export/sheets.ts";
import { gridOf } from "../../src/export/tiles.ts";
import type { Point } from "../../src/geometry/point.ts";
import { crossings, poppler, type Raster, rasterOf } from "../support/pdf.ts";
import { pointsAlong } from "../support/samples.ts";
import { ACCENTED, FONT, type Laid, laidOn } from "../support/sheetSubjects.ts";

/** The issue's own measure: at 300 dots to the inch, nothing may be out by more, in mm. */
const DPI = 300;
const TRUE = 0.1;
const MARGIN = 10;
/** Half the overlap. */
const JOINT_IN = 5;
/** A pixel that is cut by the edge of the window may be inked. */
const PIXEL = 25.4 / DPI;

type Printed = Laid & { readonly pdf: Uint8Array };

const printed = async (paper: PaperName): Promise<Printed> => {
  const laid = laidOn(paper);
  return {
    ...laid,
    pdf: await toPdf(laid.subject, laid.sheets, { font: FONT, date: "2026-05-01" }),
  };
};

/** The nearest of the measured places to the one wanted. */
const nearest = (found: readonly number[], wanted: number): number =>
  found.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), Infinity);

/** Corner of the sheet's test square, from the sheet's upper left corner. */
const squareOn = ({ subject, sheets }: Laid, page: SheetPage): Point => {
  const square = drawLayout(subject, sheets).squares[sheets.pages.indexOf(page)];
  if (!square) throw new Error("The sheet has no test square.");
  return { x: square.left - page.x, y: square.top - page.y };
};

/** Whole pages of small sheets are drawn once; of large ones only a strip round the line measured. */
const LARGE = 300;

const measurer = ({ pdf, sheets }: Printed) => {
  const whole = new Map<number, Raster>();
  const { width, height } = sheets;
  const rasterAt = (page: number, along: "across" | "down", at: number): Raster => {
    if (width > LARGE) {
      const across = { left: 0, top: at - 0.5, width, height: 1 };
      const down = { left: at - 0.5, top: 0, width: 1, height };
      return rasterOf(pdf, { page, dpi: DPI, box: along === "across" ? across : down });
    }
    const raster = whole.get(page) ?? rasterOf(pdf, { page, dpi: DPI });
    whole.set(page, raster);
    return raster;
  };
  return ({ page }: SheetPage, along: "across" | "down", at: number): readonly number[] =>
    crossings(rasterAt(page, along, at), along, at);
};

/** Between two places that are this far apart on paper, when the file is true. */
const expectApart = (found: readonly number[], from: number, to: number): void => {
  const [a, b] = [nearest(found, from), nearest(found, to)];
  expect(Math.abs(b - a - (to - from))).toBeLessThan(TRUE);
  expect(Math.abs(a - from)).toBeLessThan(TRUE);
};

describe.each(["a4", "letter", "a0", "roll-914"] as const)("a pattern printed on %s", (paper) => {
  let print: Printed;
  let measure: ReturnType<typeof measurer>;
  beforeAll(async () => {
    print = await printed(paper);
    measure = measurer(print);
  });

  test("has pages of the sheet's size, after title and map", () => {
    const { sheets, pdf } = print;
    const text = poppler("pdfinfo", pdf, ["-f", "1", "-l", String(sheets.count)]);
    expect(text).toMatch(new RegExp(`Pages: +${sheets.count}\\n`));
    const sizes = [...text.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)];
    for (const { page } of sheets.pages) {
      const [, width, height] = sizes[page - 1] ?? [];
      expect(Math.abs((Number(width) * 25.4) / 72 - sheets.width)).toBeLessThan(0.01);
      expect(Math.abs((Number(height) * 25.4) / 72 - sheets.height)).toBeLessThan(0.01);
    }
  });

  test("embeds its one font, and gives the body's name back letter by letter", () => {
    expect(poppler("pdffonts", print.pdf)).toMatch(/NotoSans +CID TrueType +Identity-H +yes/);
    expect(poppler("pdffonts", print.pdf).trim().split("\n")).toHaveLength(3);
    expect(poppler("pdftotext", print.pdf)).toContain(ACCENTED);
    expect(poppler("pdftotext", print.pdf, ["-f", "3", "-l", "3"])).toContain("sheet 1 of");
  });

  test("has a 50 mm test square on every sheet, true both ways", () => {
    for (const page of print.sheets.pages) {
      const { x, y } = squareOn(print, page);
      expectApart(measure(page, "across", y + 10), x, x + TEST_SQUARE);
      expectApart(measure(page, "down", x + 5), y, y + TEST_SQUARE);
    }
  });

  test("has scales of 150 mm or more on every sheet, true both ways", () => {
    const { sheets } = print;
    const [across, down] = rulerLengths(gridOf(sheets.width, sheets.height));
    const start = MARGIN + JOINT_IN + RULER_START;
    for (const page of sheets.pages) {
      // Between the ends of the longest ticks and of those of five.
      const foot = measure(page, "across", sheets.height - MARGIN - JOINT_IN + 2.3);
      expectApart(foot, start, start + across);
      const side = measure(page, "down", sheets.width - MARGIN - JOINT_IN + 2.3);
      expectApart(side, start, start + down);
    }
  });

  test("draws every cut line where the report's placements put it", () => {
    const { sheets } = print;
    const most = sheets.width > LARGE ? 3 : 8;
    let measured = 0;
    for (const piece of print.subject.garment.pieces) {
      const placement = placementOf(sheets, piece.name);
      const notches = notchPlaces(piece).map(({ at }) => at);
      const seen = squareCrossings(pointsAlong(piece.cutLine, 40), piece.onFold !== null)
        .filter((p) => notches.every((at) => Math.hypot(at.x - p.x, at.y - p.y) > 12))
        .map(({ x, y, along }) =>
          crossingOnSheet(placedPoint(placement, { x, y }), placement, along),
        )
        .flatMap((crossing) => onPage(crossing, sheets));
      measured += Math.min(most, seen.length);
      for (const { page, along, at, wanted } of seen.slice(0, most)) {
        const found = nearest(measure(page, along, at), wanted);
        expect(Math.abs(found - wanted), piece.name).toBeLessThan(TRUE);
      }
    }
    expect(measured).toBeGreaterThan(10);
  });

  test("prints nothing outside the margins", () => {
    const { sheets, pdf } = print;
    const width = MARGIN - PIXEL;
    for (const page of sheets.pages.slice(0, 6)) {
      for (const [along, at] of [
        ["across", width / 2],
        ["across", sheets.height - width / 2],
        ["down", width / 2],
        ["down", sheets.width - width / 2],
      ] as const) {
        const raster = rasterOf(pdf, {
          page: page.page,
          dpi: 100,
          box: edge(sheets, along, at, width),
        });
        expect(inkOf(raster)).toBe(0);
      }
    }
  });
});

/** A strip `width` broad whose middle is at `at`. */
const edge = (
  { width: w, height: h }: Sheets,
  along: "across" | "down",
  at: number,
  width: number,
) =>
  along === "across"
    ? { left: 0, top: at - width / 2, width: w, height: width }
    : { left: at - width / 2, top: 0, width, height: h };

const inkOf = ({ width, height, inkAt }: Raster): number => {
  let ink = 0;
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) ink += inkAt(x, y);
  return ink;
};

type Crossing = Point & { readonly along: "across" | "down" };

/** Places where a line runs level or upright, so that a row of pixels cuts it squarely. */
const squareCrossings = (points: readonly Point[], isOnFold: boolean): readonly Crossing[] =>
  points.flatMap((p, i): readonly Crossing[] => {
    const [before, after] = [points[i - 1], points[i + 1]];
    // The fold is a broken line, and may have a gap here.
    if (!before || !after || i % 13 !== 6 || (isOnFold && p.x < 1)) return [];
    const [dx, dy] = [Math.abs(after.x - before.x), Math.abs(after.y - before.y)];
    if (dx < dy * 0.05) return [{ ...p, along: "across" }];
    return dy < dx * 0.05 ? [{ ...p, along: "down" }] : [];
  });

/** A quarter turn makes an upright line a level one. */
const crossingOnSheet = (p: Point, { turn }: Placement, along: Crossing["along"]): Crossing => {
  const turned = along === "across" ? "down" : "across";
  return { ...p, along: turn === 90 ? turned : along };
};

type OnPage = {
  readonly page: SheetPage;
  readonly along: Crossing["along"];
  /** Of the line of pixels, and where the pattern's line should cross it, on the sheet. */
  readonly at: number;
  readonly wanted: number;
};

/** A crossing on the first sheet that shows it clear of scales and joints. */
const onPage = ({ x, y, along }: Crossing, sheets: Sheets): readonly OnPage[] => {
  const page = sheets.pages.find(({ x: left, y: top }) => {
    const [u, v] = [x - left, y - top];
    return u > 22 && u < sheets.width - 22 && v > 22 && v < sheets.height - 22;
  });
  if (!page) return [];
  const [u, v] = [x - page.x, y - page.y];
  return [
    along === "across" ? { page, along, at: v, wanted: u } : { page, along, at: u, wanted: v },
  ];
};

import { describe, expect, test } from "vitest";
import { TEST_SQUARE } from "../../src/export/data/paper.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { layOut } from "../../src/export/layout.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { placedPoint, placementOf } from "../../src/export/placing.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../../src/export/printChoices.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import { boundsOf } from "../../src/geometry/outline.ts";
import { crossings, poppler, rasterOf } from "../support/pdf.ts";
import { FONT, subjectOf } from "../support/sheetSubjects.ts";

/** The printer of the issue: what it makes of a length, along its feed and across it. */
const ALONG = 0.986;
const ACROSS = 1.009;
const TRUE = 0.2;
const DPI = 300;

const forThatPrinter: PrintChoices = {
  ...DEFAULT_PRINT,
  square: { along: 50 * ALONG, across: 50 * ACROSS },
};

const subject = subjectOf();
const PIECES = subject.garment.pieces;

/** The places of ink on the paper once that printer has printed the page. */
const onPaper = (pdf: Uint8Array, { lying }: Pick<Sheets, "lying">, page: number) => {
  const raster = rasterOf(pdf, { page, dpi: DPI });
  const [x, y] = lying ? [ALONG, ACROSS] : [ACROSS, ALONG];
  return {
    across: (at: number) => crossings(raster, "across", at / y).map((place) => place * x),
    down: (at: number) => crossings(raster, "down", at / x).map((place) => place * y),
  };
};

const nearest = (found: readonly number[], wanted: number): number =>
  found.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), Infinity);

const expectAt = (found: readonly number[], wanted: number): void =>
  expect(Math.abs(nearest(found, wanted) - wanted)).toBeLessThan(TRUE);

describe.each([
  ["a4", "portrait"],
  ["letter", "landscape"],
  ["210x330", "portrait"],
] as const)("sheets of %s, %s, made for a printer that is not true", (paper, turn) => {
  const sheets = layOut(PIECES, paper, { ...forThatPrinter, turn });
  const printed = toPdf(subject, sheets, { font: FONT });

  test("have test squares of 50 mm both ways once that printer has printed them", async () => {
    const pdf = await printed;
    const { squares } = drawLayout(subject, sheets);
    for (const [i, page] of sheets.pages.slice(0, 6).entries()) {
      const square = squares[i];
      if (!square) throw new Error("no square");
      const ink = onPaper(pdf, sheets, page.page);
      const [x, y] = [square.left - page.x, square.top - page.y];
      for (const end of [x, x + TEST_SQUARE]) expectAt(ink.across(y + 9), end);
      for (const end of [y, y + TEST_SQUARE]) expectAt(ink.down(x + 5), end);
    }
  });

  test("have straight edges of pieces where they belong", async () => {
    const pdf = await printed;
    let measured = 0;
    for (const name of ["back", "front", "hemBand"] as const) {
      const piece = PIECES.find((one) => one.name === name);
      if (!piece) throw new Error("no piece");
      const box = boundsOf(piece.cutLine);
      const placement = placementOf(sheets, name);
      for (const share of [0.15, 0.45, 0.83]) {
        const y = box.bottom - 120 * share - 20;
        const at = placedPoint(placement, { x: box.right, y });
        for (const page of sheets.pages) {
          const [u, v] = [at.x - page.x, at.y - page.y];
          if (u < 12 || v < 12 || u > sheets.grid.sheetWidth - 12) continue;
          if (v > sheets.grid.sheetHeight - 12) continue;
          const ink = onPaper(pdf, sheets, page.page);
          expectAt(
            placement.turn === 0 ? ink.across(v) : ink.down(u),
            placement.turn === 0 ? u : v,
          );
          measured++;
        }
      }
    }
    expect(measured).toBeGreaterThan(2);
  });

  test("say on every sheet which printer they are made for, and what its square measures", async () => {
    const pdf = await printed;
    for (const { page } of sheets.pages) {
      const text = poppler("pdftotext", pdf, ["-f", String(page), "-l", String(page)]);
      expect(text.replace(/[\s\u00a0]+/g, " ")).toMatch(
        /Made for a printer that prints 50 mm as 49\.3 mm along its feed and 50\.45 mm across it/,
      );
    }
    const first = poppler("pdftotext", pdf, ["-l", "1"]).replace(/[\s\u00a0]+/g, " ");
    expect(first).toContain("on it the square is 50 mm");
  });
});

describe("the squares of the first page", () => {
  test("are 100 mm and 4 in on that printer", async () => {
    const sheets = layOut(PIECES, "a4", forThatPrinter);
    const pdf = await toPdf(subject, sheets, { font: FONT });
    const ink = onPaper(pdf, sheets, 1);
    const found = ink.across(100);
    const left = 10;
    const [outer, inner] = [nearest(found, left), nearest(found, left + 0.8)];
    expect(Math.abs(nearest(found, outer + 101.6) - outer - 101.6)).toBeLessThan(TRUE);
    expect(Math.abs(nearest(found, inner + 100) - inner - 100)).toBeLessThan(TRUE);
  });
});

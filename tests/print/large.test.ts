import { describe, expect, test } from "vitest";
import { copyShopPdf, copyShopSheets } from "../../src/export/copyShop.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { placedPoint, placementOf } from "../../src/export/placing.ts";
import { projectorPdf, projectorSheets } from "../../src/export/projector.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import { boundsOf } from "../../src/geometry/outline.ts";
import { crossings, poppler, type Raster, rasterOf } from "../support/pdf.ts";
import { ACCENTED, FONT, subjectOf } from "../support/sheetSubjects.ts";

const DPI = 300;
const TRUE = 0.1;
const subject = subjectOf();
const PIECES = subject.garment.pieces;

const nearest = (found: readonly number[], wanted: number): number =>
  found.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), Infinity);

/** A strip one millimetre broad across a page. */
const stripAcross = (pdf: Uint8Array, { width }: Sheets, at: number): Raster =>
  rasterOf(pdf, { page: 1, dpi: DPI, box: { left: 0, top: at - 0.5, width, height: 1 } });

/** Where the back's side stands on the first page, 60 mm above its hem. */
const sideOfBack = (sheets: Sheets) => {
  const back = PIECES.find(({ name }) => name === "back");
  const [page] = sheets.pages;
  if (!back || !page) throw new Error("no back");
  const box = boundsOf(back.cutLine);
  const at = placedPoint(placementOf(sheets, "back"), { x: box.right, y: box.bottom - 60 });
  return { x: at.x - page.x, y: at.y - page.y };
};

describe.each(["roll-594", "roll-914", "a0", "ansi-e"] as const)(
  "a copy shop's file on %s",
  (paper) => {
    const sheets = copyShopSheets(PIECES, paper);
    const printed = copyShopPdf(subject, sheets, { font: FONT });

    test("is large pages alone, with title, squares and what to cut on them", async () => {
      const pdf = await printed;
      const text = poppler("pdfinfo", pdf);
      expect(text).toMatch(new RegExp(`Pages: +${sheets.pages.length}\\n`));
      const [, width] = /Page size: +([\d.]+) x/.exec(text) ?? [];
      expect(Math.abs((Number(width) * 25.4) / 72 - sheets.width)).toBeLessThan(0.01);
      const first = poppler("pdftotext", pdf, ["-l", "1"]);
      for (const word of [ACCENTED, "Measure me first", "What to cut", "Print at 100 %"])
        expect(first).toContain(word);
    });

    test("has squares of 4 in and 100 mm, and the pattern, true", async () => {
      const pdf = await printed;
      const found = crossings(stripAcross(pdf, sheets, 30), "across", 30);
      const [outer, inner] = [nearest(found, 10), nearest(found, 10.8)];
      expect(Math.abs(nearest(found, outer + 101.6) - outer - 101.6)).toBeLessThan(TRUE);
      expect(Math.abs(nearest(found, inner + 100) - inner - 100)).toBeLessThan(TRUE);
      const side = sideOfBack(sheets);
      if (side.y < sheets.height - 20) {
        const line = crossings(stripAcross(pdf, sheets, side.y), "across", side.y);
        expect(Math.abs(nearest(line, side.x) - side.x)).toBeLessThan(TRUE);
      }
      const [square] = drawLayout(subject, sheets).squares;
      const [page] = sheets.pages;
      if (!square || !page) throw new Error("no square");
      const [x, y] = [square.left - page.x, square.top - page.y + 9];
      const sides = crossings(stripAcross(pdf, sheets, y), "across", y);
      expect(Math.abs(nearest(sides, x + 50) - nearest(sides, x) - 50)).toBeLessThan(TRUE);
    });
  },
);

describe("a projector's file", () => {
  const sheets = projectorSheets(PIECES);
  const printed = projectorPdf(subject, sheets, { font: FONT });

  /** Where light lies along a row: the middles of runs that are lighter than the grid's strong lines. */
  const light = (raster: Raster, floor: number): readonly number[] => {
    const row = Math.floor(raster.height / 2);
    const found: number[] = [];
    let [sum, moment] = [0, 0];
    for (let i = 0; i <= raster.width; i++) {
      const value = i === raster.width ? 0 : Math.max(0, 255 - raster.inkAt(i, row) - floor);
      if (value > 0) [sum, moment] = [sum + value, moment + value * (i + 0.5)];
      else if (sum > 0) {
        found.push(moment / sum / raster.perMm);
        [sum, moment] = [0, 0];
      }
    }
    return found;
  };

  test("is one dark page at its own size, with the pattern as bright lines three times as thick", async () => {
    const pdf = await printed;
    expect(poppler("pdfinfo", pdf)).toMatch(/Pages: +1\n/);
    const side = sideOfBack(sheets);
    const raster = stripAcross(pdf, sheets, side.y);
    expect(raster.inkAt(3, 3)).toBeGreaterThan(230);
    const bright = light(raster, 200);
    expect(Math.abs(nearest(bright, side.x) - side.x)).toBeLessThan(TRUE);
    const middle = Math.floor(side.x * raster.perMm);
    const lit = Array.from({ length: 41 }, (_, i) => raster.inkAt(middle - 20 + i, 5));
    const thick = lit.filter((ink) => ink < 128).length / raster.perMm;
    expect(thick).toBeGreaterThan(1.3);
    expect(thick).toBeLessThan(1.7);
  });

  test("has a grid of 50 mm and gauges of 500 mm by which to set the projector", async () => {
    const pdf = await printed;
    const { grid } = sheets;
    // A row below the drawing's upper edge, over its whole width; the pattern hides a line or two.
    const found = light(stripAcross(pdf, sheets, grid.top + 33), 40);
    const wanted = Array.from(
      { length: Math.floor(grid.windowWidth / 50) },
      (_, i) => grid.left + 50 * (i + 1),
    );
    const there = wanted.filter((at) => Math.abs(nearest(found, at) - at) < TRUE);
    expect(there.length).toBeGreaterThan(0.8 * wanted.length);
    const gauge = light(stripAcross(pdf, sheets, grid.top - 22 - 4), 200);
    const from = nearest(gauge, grid.left);
    expect(Math.abs(nearest(gauge, grid.left + 500) - from - 500)).toBeLessThan(TRUE);
    expect(poppler("pdftotext", pdf)).toContain("Each square of the grid is 50 mm");
  });
});

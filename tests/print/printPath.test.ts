import { describe, expect, test } from "vitest";
import { drawLayout } from "../../src/export/drawing.ts";
import { layOut } from "../../src/export/layout.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import { crossings, poppler, rasterOf } from "../support/pdf.ts";
import { printedByChromium, printedByCups } from "../support/printers.ts";
import { FONT, subjectOf } from "../support/sheetSubjects.ts";

const DPI = 600;
const TRUE = 0.05;
const subject = subjectOf();
const sheets = layOut(subject.garment.pieces, "a4");
const pattern = toPdf(subject, sheets, { font: FONT });

const nearest = (found: readonly number[], wanted: number): number =>
  found.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), Infinity);

/** How long the first sheet's test square is on paper, across and down, when it is printed at a scale. */
const squareOn = (pdf: Uint8Array, { pages }: Sheets, scale: number, at = { x: 0, y: 0 }) => {
  const [page] = pages;
  const [square] = drawLayout(subject, sheets).squares;
  if (!page || !square) throw new Error("no square");
  const left = at.x + (square.left - page.x) * scale;
  const top = at.y + (square.top - page.y) * scale;
  const raster = rasterOf(pdf, { page: page.page, dpi: DPI });
  const across = crossings(raster, "across", top + 9 * scale);
  const down = crossings(raster, "down", left + 5 * scale);
  return [
    nearest(across, left + 50 * scale) - nearest(across, left),
    nearest(down, top + 50 * scale) - nearest(down, top),
  ] as const;
};

const wordsOn = (pdf: Uint8Array, page: number): string =>
  poppler("pdftotext", pdf, ["-f", String(page), "-l", String(page)]).replace(/[\s\u00a0]+/g, " ");

describe("printed from Chromium's own PDF viewer", () => {
  test("every page stays, and the square is 50 mm both ways", async () => {
    const printed = await printedByChromium(await pattern);
    const info = poppler("pdfinfo", printed);
    expect(info).toMatch(/Producer: +PDFium/);
    expect(info).toMatch(new RegExp(`Pages: +${sheets.count}\n`));
    for (const side of squareOn(printed, sheets, 1)) expect(Math.abs(side - 50)).toBeLessThan(TRUE);
    expect(wordsOn(printed, 3)).toContain("sheet 1 of");
  });
});

describe("sent through CUPS", () => {
  test("with no scaling the square is 50 mm", async () => {
    const printed = await printedByCups(await pattern, "print-scaling=none", 0.97);
    for (const side of squareOn(printed, sheets, 1)) expect(Math.abs(side - 50)).toBeLessThan(TRUE);
  });

  test("fitted to 97 % the square is 48.5 mm, and the sheet itself says what that means", async () => {
    const printed = await printedByCups(await pattern, "print-scaling=fit", 0.97);
    const bare = { x: sheets.width * 0.015, y: sheets.height * 0.015 };
    for (const side of squareOn(printed, sheets, 0.97, bare))
      expect(Math.abs(side - 48.5)).toBeLessThan(TRUE);
    for (const { page } of sheets.pages) {
      expect(wordsOn(printed, page)).toContain("48.5 both ways: fitted to 97 %.");
      expect(wordsOn(printed, page)).toContain("Print again at actual size.");
    }
    expect(wordsOn(printed, 1)).toContain("the page was fitted, here to 97 %");
  });

  test("a printer that is always so can be told of it, and the square is 50 mm again", async () => {
    const print = { ...DEFAULT_PRINT, square: { along: 48.5, across: 48.5 } };
    const made = layOut(subject.garment.pieces, "a4", print);
    const pdf = await toPdf(subject, made, { font: FONT });
    const printed = await printedByCups(pdf, "print-scaling=fit", 0.97);
    const [square] = drawLayout(subject, made).squares;
    const [page] = made.pages;
    if (!square || !page) throw new Error("no square");
    const raster = rasterOf(printed, { page: page.page, dpi: DPI });
    const left = square.left - page.x + made.width * 0.015;
    const across = crossings(raster, "across", square.top - page.y + made.height * 0.015 + 9);
    expect(Math.abs(nearest(across, left + 50) - nearest(across, left) - 50)).toBeLessThan(TRUE);
  });
});

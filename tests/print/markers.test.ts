import { beforeAll, describe, expect, test } from "vitest";
import { MOST_MARKS, markersPdf } from "../../src/export/markerPages.ts";
import { findMarks } from "../../src/trace/photo/findMarks.ts";
import { MARKER, MARKER_NAMES } from "../../src/trace/photo/markerDesign.ts";
import type { Picture } from "../../src/trace/photo/picture.ts";
import { crossings, poppler, type Raster, rasterOf } from "../support/pdf.ts";
import { FONT } from "../support/sheetSubjects.ts";

const SIZES = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
const DPI = 300;
/** Where the middle of each mark stands: half across, and 66 mm from the upper edge. */
const DOWN = 66;

const pictureOf = ({ width, height, inkAt }: Raster): Picture => ({
  width,
  height,
  grey: Uint8Array.from(
    { length: width * height },
    (_, k) => 255 - inkAt(k % width, Math.floor(k / width)),
  ),
});

describe.each(["a4", "letter"] as const)("the marks printed on %s", (paper) => {
  const { width, height } = SIZES[paper];
  let pdf: Uint8Array = new Uint8Array();
  beforeAll(async () => {
    pdf = await markersPdf(MOST_MARKS, { font: FONT, paper, language: "en" });
  });

  test("stand one a page, each found by itself in the rasterised page and named", () => {
    expect(poppler("pdfinfo", pdf)).toMatch(/Pages:\s+7/u);
    for (const [i, name] of MARKER_NAMES.entries()) {
      const raster = rasterOf(pdf, { page: i + 1, dpi: 150 });
      const told = findMarks(pictureOf(raster));
      if ("fault" in told) throw new Error(told.fault.reason);
      expect(told.found.map((mark) => mark.name)).toEqual([name]);
      const at = told.found[0]?.at ?? { x: 0, y: 0 };
      expect(at.x / raster.perMm).toBeCloseTo(width / 2, 1);
      expect(at.y / raster.perMm).toBeCloseTo(DOWN, 1);
    }
  });

  test("are at true scale: the ring 48 mm across, strokes 80 mm apart, the square 50 mm each way", () => {
    const raster = rasterOf(pdf, { page: 1, dpi: DPI });
    const [left, right] = [width / 2 - MARKER.ringOuter, width / 2 + MARKER.ringOuter];
    // Across the middle: ring, disc (parted by the white point), ring.
    const inked = (from: number, to: number): number => {
      const row = Math.floor(DOWN * raster.perMm);
      let sum = 0;
      for (let x = Math.round(from * raster.perMm); x < to * raster.perMm; x++)
        sum += raster.inkAt(x, row) / 255;
      return sum / raster.perMm;
    };
    expect(inked(left - 2, left + 12)).toBeCloseTo(8, 1);
    expect(inked(right - 12, right + 2)).toBeCloseTo(8, 1);
    expect(inked(left - 2, right + 2)).toBeCloseTo(16 + 20 - 1.2, 1);
    const square = crossings(raster, "across", height - 18 - 12);
    expect(square[0]).toBeCloseTo(10, 1);
    expect(square[1]).toBeCloseTo(60, 1);
    const down = crossings(raster, "down", 20);
    expect(down.some((y) => Math.abs(y - (height - 18)) < 0.1)).toBe(true);
    expect(down.some((y) => Math.abs(y - (height - 68)) < 0.1)).toBe(true);
  });
});

test("each page says how to lay, measure and take, and the caution, in both languages", async () => {
  const told = async (language: "en" | "de") => {
    const pdf = await markersPdf(4, { font: FONT, paper: "a4", language });
    expect(poppler("pdfinfo", pdf)).toMatch(/Pages:\s+4/u);
    return poppler("pdftotext", pdf).replaceAll(/\s+/gu, " ");
  };
  expect(await told("en")).toMatch(/Mark A .*actual size.*white point.*never on a chair.*Mark D/u);
  expect(await told("de")).toMatch(/Marke A .*tatsächlicher Größe.*nie auf einem Stuhl.*Marke D/u);
});

test("the same marks are the same bytes", async () => {
  const options = { font: FONT, paper: "a4", language: "en" } as const;
  expect(await markersPdf(4, options)).toEqual(await markersPdf(4, options));
});

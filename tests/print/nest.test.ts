import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { LAYER_STYLES, MOST_NESTED } from "../../src/export/data/layerStyles.ts";
import { nestPdf } from "../../src/export/nestPdf.ts";
import { placedPoint, placementOf } from "../../src/export/placing.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import { boundsOf } from "../../src/geometry/outline.ts";
import { nestOfSizes, nestOn, SIXTEEN } from "../support/nests.ts";
import { crossings, poppler, rasterOf, withTool } from "../support/pdf.ts";
import { ACCENTED, FONT, subjectOf } from "../support/sheetSubjects.ts";

const NAMES = ["W80-regular", "W90-regular", "W100-regular"];
const MB = 1e6;

/** The layers that a reader lists, and which of them are switched on at first. */
const layersOf = async (pdf: Uint8Array) => {
  const document = await getDocument({ data: pdf.slice() }).promise;
  const config = await document.getOptionalContentConfig();
  const order: readonly string[] = config.getOrder() ?? [];
  const layers = order.map((id) => ({
    name: config.getGroup(id)?.name,
    visible: config.isVisible({ type: "OCG", id }),
  }));
  await document.destroy();
  return layers;
};

/** The same file with these layers alone switched on; every byte keeps its place. */
const withOnly = (pdf: Uint8Array, on: readonly number[]): Uint8Array => {
  const text = Buffer.from(pdf).toString("latin1");
  const [, all = ""] = /\/OCGs \[([^\]]*)\]/.exec(text) ?? [];
  const ids = all.match(/\d+ 0 R/g) ?? [];
  const old =
    /\/BaseState \/ON \/ON \[\] \/OFF \[[^\]]*\] \/Order \[[^\]]*\]/.exec(text)?.[0] ?? "";
  const now = `/BaseState /OFF /ON [${on.map((i) => ids[i]).join(" ")}]`;
  return Buffer.from(text.replace(old, now.padEnd(old.length)), "latin1");
};

const NEST = nestOfSizes("W80", "W90", "W100");

/** Where the side of a back's or front's bounding box stands on its sheet, at the foot of the piece. */
const sideOf = (sheets: Sheets, place: number) => {
  const back = NEST[place]?.garment.pieces.find(({ name }) => name === "back");
  if (!back) throw new Error("no back");
  const box = boundsOf(back.cutLine);
  return placedPoint(placementOf(sheets, "back"), { x: box.right, y: box.bottom - 40 });
};

describe("several sizes in one file", () => {
  const sheets = nestOn(NEST);
  const printed = nestPdf(NEST, sheets, { font: FONT });

  test("are layers by their names, and seam lines one more that is switched off", async () => {
    const pdf = await printed;
    expect(await layersOf(pdf)).toEqual([
      { name: "Seam lines", visible: false },
      ...NAMES.map((name) => ({ name, visible: true })),
    ]);
    expect(withTool("qpdf", ["--check", "IN"], pdf)).toContain(
      "No syntax or stream encoding errors",
    );
    expect(withTool("mutool", ["show", "IN", "trailer/Root/OCProperties/OCGs"], pdf)).toMatch(
      /\[( \d+ 0 R){4} \]/,
    );
  });

  test("are switched off one by one: their lines leave the page, the others stay in place", async () => {
    const pdf = await printed;
    const sides = NEST.map((_, place) => sideOf(sheets, place));
    const [first] = sides;
    const page = sheets.pages.find(({ x, y }) => {
      const [u, v] = [(first?.x ?? 0) - x, (first?.y ?? 0) - y];
      return u > 15 && u < 150 && v > 20 && v < 270;
    });
    if (!first || !page) throw new Error("no sheet shows the side");
    const at = first.y - page.y;
    const seen = (only: readonly number[]): readonly number[] => {
      const raster = rasterOf(withOnly(pdf, only), { page: page.page, dpi: 300 });
      // Dashes leave gaps: look at some rows.
      return [0, 1.7, 3.9, 5.3, 7.1].flatMap((down) => crossings(raster, "across", at - down));
    };
    const shows = (found: readonly number[], place: number): boolean =>
      found.some((x) => Math.abs(x - ((sides[place]?.x ?? 0) - page.x)) < 0.2);
    for (const on of [0, 1, 2]) {
      const found = seen([on + 1]);
      expect([0, 1, 2].map((place) => shows(found, place))).toEqual(
        [0, 1, 2].map((place) => place === on && (sides[place]?.x ?? 0) - page.x < 200),
      );
    }
  });

  test("are named along their lines, and keyed on the first page with their bands", async () => {
    const pdf = await printed;
    for (const name of NAMES) {
      const first = poppler("pdftotext", pdf, ["-l", "1"]);
      expect(first).toContain(name);
      expect(poppler("pdftotext", pdf, ["-f", "3"]).split(name).length).toBeGreaterThan(8);
    }
    const hem = NEST[0].garment.bands.hemBand.cutLength;
    expect(poppler("pdftotext", pdf, ["-l", "1"])).toContain(String(Math.round(hem * 10) / 10));
  });
});

describe("bodies with names of their own", () => {
  test("are layers whose names keep every letter", async () => {
    const [ada, zoe] = [subjectOf({ chest: 900 }), subjectOf()];
    const nest = [{ ...ada, body: { ...ada.body, name: "Ada" } }, zoe] as const;
    const pdf = await nestPdf(nest, nestOn(nest), { font: FONT });
    const names = (await layersOf(pdf)).map(({ name }) => name);
    expect(names).toEqual(["Seam lines", "Ada", ACCENTED]);
  });
});

describe("sixteen sizes", () => {
  test("have as many kinds of line, no two alike", () => {
    expect(MOST_NESTED).toBe(16);
    expect(new Set(LAYER_STYLES.map((style) => JSON.stringify(style))).size).toBe(16);
  });

  test("take less than 2 MB", async () => {
    const pdf = await nestPdf(SIXTEEN, nestOn(SIXTEEN), { font: FONT });
    expect(pdf.byteLength).toBeLessThan(2 * MB);
    expect(await layersOf(pdf)).toHaveLength(17);
  });
});

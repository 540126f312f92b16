import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { layOut } from "../../src/export/layout.ts";
import type { PaperChoice } from "../../src/export/paperSize.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../../src/export/printChoices.ts";
import { poppler, withTool } from "../support/pdf.ts";
import { ACCENTED, FONT, subjectOf } from "../support/sheetSubjects.ts";

/** Each paper, and each way of printing that changes what stands in the file. */
const PRINTED: readonly (readonly [PaperChoice, Partial<PrintChoices>])[] = [
  ...PAPER_NAMES.map((name) => [name, {}] as const),
  ["210x330", {}],
  ["a4", { turn: "landscape" }],
  ["letter", { join: "butt", square: { along: 49.3, across: 50.45 } }],
];

const POINT = 25.4 / 72;
const subject = subjectOf();

/** Letters alone: readers part words and lines in their own ways. */
const plain = (text: string): string => text.normalize("NFC").replace(/[\s\u00a0]+/g, "");

type Size = { readonly width: number; readonly height: number };
type Read = { readonly sizes: readonly Size[]; readonly text: string };

/** What pdf.js, the reader in Firefox, makes of a file. */
const byPdfJs = async (pdf: Uint8Array): Promise<Read> => {
  const document = await getDocument({ data: pdf.slice() }).promise;
  const sizes: Size[] = [];
  let text = "";
  for (let i = 1; i <= document.numPages; i++) {
    const page = await document.getPage(i);
    const [left = 0, top = 0, right = 0, bottom = 0] = page.view;
    sizes.push({ width: (right - left) * POINT, height: (bottom - top) * POINT });
    const { items } = await page.getTextContent();
    text += items.map((item) => ("str" in item ? item.str : "")).join("");
  }
  await document.destroy();
  return { sizes, text };
};

const byPoppler = (pdf: Uint8Array, count: number): Read => {
  const info = poppler("pdfinfo", pdf, ["-f", "1", "-l", String(count)]);
  const sizes = [...info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)].map(
    ([, width, height]) => ({ width: Number(width) * POINT, height: Number(height) * POINT }),
  );
  return { sizes, text: poppler("pdftotext", pdf) };
};

const byMupdf = (pdf: Uint8Array): Read => {
  const boxes = withTool("mutool", ["pages", "IN"], pdf);
  const sizes = [
    ...boxes.matchAll(/MediaBox l="([\d.-]+)" b="([\d.-]+)" r="([\d.-]+)" t="([\d.-]+)"/g),
  ].map(([, l, b, r, t]) => ({
    width: (Number(r) - Number(l)) * POINT,
    height: (Number(t) - Number(b)) * POINT,
  }));
  return { sizes, text: withTool("mutool", ["draw", "-q", "-F", "txt", "IN"], pdf) };
};

describe.each(PRINTED)("sheets of %s with %j", (paper, changes) => {
  const sheets = layOut(subject.garment.pieces, paper, { ...DEFAULT_PRINT, ...changes });
  const printed = toPdf(subject, sheets, { font: FONT });

  test("are sound to a checker of PDF", async () => {
    expect(withTool("qpdf", ["--check", "IN"], await printed)).toContain(
      "No syntax or stream encoding errors",
    );
  });

  test("have the same pages and words, accents and all, in three readers", async () => {
    const pdf = await printed;
    const readers = {
      poppler: byPoppler(pdf, sheets.count),
      pdfJs: await byPdfJs(pdf),
      mupdf: byMupdf(pdf),
    };
    for (const [name, { sizes, text }] of Object.entries(readers)) {
      expect(sizes, name).toHaveLength(sheets.count);
      for (const { width, height } of sizes.slice(2)) {
        expect(Math.abs(width - sheets.width), name).toBeLessThan(0.02);
        expect(Math.abs(height - sheets.height), name).toBeLessThan(0.02);
      }
      expect(plain(text), name).toContain(plain(ACCENTED));
      expect(plain(text), name).toContain(plain("Cloth to buy: length of each width"));
      expect(plain(text), name).toContain(plain(`sheet ${sheets.pages.length} of`));
    }
  });
});

describe("the page map", () => {
  test("says how many sheets plain rows would need", async () => {
    const sheets = layOut(subject.garment.pieces, "a4");
    const pdf = await toPdf(subject, sheets, { font: FONT });
    const text = poppler("pdftotext", pdf, ["-f", "2", "-l", "2"]);
    const [, ours, plainRows] = /(\d+) sheets; plain rows would need (\d+)/.exec(text) ?? [];
    expect(Number(ours)).toBe(sheets.pages.length);
    expect(Number(plainRows)).toBeGreaterThan(sheets.pages.length);
  });
});

import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { guidePdf } from "../../src/export/guidePdf.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { printedArc } from "../../src/guide/arc.ts";
import { makingUp } from "../../src/guide/makingUp.ts";
import { tell, voiceOf } from "../../src/guide/words/tell.ts";
import { drawnLines } from "../support/drawnLines.ts";
import { garmentOf, WITHOUT_V } from "../support/garments.ts";
import { poppler } from "../support/pdf.ts";

const font = readFileSync(new URL("../../assets/fonts/NotoSans-subset.ttf", import.meta.url));
const garment = garmentOf();
const body = { id: "odile", name: "Odile Marrack" };
const options = { font, paper: "a4", language: "en" } as const;

const flat = (text: string): string => text.replaceAll(/[\s\u00a0–]+/gu, " ");
const textOf = (pdf: Uint8Array): string => flat(poppler("pdftotext", pdf));
const pagesOf = (pdf: Uint8Array): number =>
  Number(/Pages:\s+(\d+)/u.exec(poppler("pdfinfo", pdf))?.[1]);

describe("the printed guide", () => {
  let pdf: Uint8Array = new Uint8Array();
  let text = "";
  beforeAll(async () => {
    pdf = await guidePdf({ body, garment }, options);
    text = textOf(pdf);
  });

  test("is the same bytes each time", async () => {
    expect(await guidePdf({ body, garment }, options)).toEqual(pdf);
  });

  test("has every step's sentences, to be read and copied", () => {
    for (const { title, sentences } of makingUp(garment)) {
      for (const sentence of [title, ...sentences]) {
        expect(text).toContain(flat(tell(voiceOf("en"), sentence)));
      }
    }
  });

  test("has a box to tick for every step", () => {
    const boxes = Array.from({ length: pagesOf(pdf) }, (_, i) => drawnLines(pdf, i + 1))
      .flat()
      .filter(({ width, points }) => Math.abs(width - 0.5) < 0.001 && points.length >= 4);
    const ticks = boxes.filter(({ points: [a, b] }) => a && b && Math.abs(b[0] - a[0] - 8) < 0.01);
    expect(ticks.length).toBe(makingUp(garment).length);
  });

  test("has the table test's arc at its full size, ticks and all", () => {
    const lines = drawnLines(pdf, pagesOf(pdf));
    const arc = printedArc(garment);
    for (const path of [arc.edge, arc.fold]) {
      const wanted = lengthOf(path);
      expect(Math.min(...lines.map(({ length }) => Math.abs(length - wanted)))).toBeLessThan(0.05);
    }
    expect(lines.filter(({ length }) => Math.abs(length - 5) < 0.003).length).toBe(8);
  });

  test("tells nothing of a V where there is none", async () => {
    const plain = textOf(await guidePdf({ body, garment: garmentOf(WITHOUT_V) }, options));
    expect(plain).not.toMatch(/V-insert|point of the V/u);
    expect(plain).toContain("1 Before you sew");
    expect(plain).toContain("2 Sleeves to the front");
  });

  test("of a child says that there is no cord", async () => {
    const child = textOf(await guidePdf({ body, garment, isChild: true }, options));
    expect(child).toContain("No cord, drawstring or tie");
    expect(text).not.toContain("No cord");
  });

  test("is read in German on Letter, with a date where one is given", async () => {
    const german = { font, paper: "letter", language: "de", date: "2026-03-14" } as const;
    const printed = await guidePdf({ body, garment }, german);
    expect(textOf(printed)).toContain("Unterarm und Seite in einem");
    expect(textOf(printed)).toContain("2026-03-14");
    expect(poppler("pdfinfo", printed)).toMatch(/Page size:\s+612 x 792/u);
  });
});

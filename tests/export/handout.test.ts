import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { classPdf, type HandoutSubject, handoutPdf } from "../../src/export/handout.ts";
import { lesson } from "../../src/guide/lesson.ts";
import { tell, voiceOf } from "../../src/guide/words/tell.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { drawnLines } from "../support/drawnLines.ts";
import { garmentOf, WITHOUT_V } from "../support/garments.ts";
import { poppler, rasterOf } from "../support/pdf.ts";

const font = readFileSync(new URL("../../assets/fonts/NotoSans-subset.ttf", import.meta.url));
const subject: HandoutSubject = {
  body: { id: "odile", name: "Odile Marrack" },
  garment: garmentOf(),
};
const LARGE = {
  ...WORKED_EXAMPLE,
  chest: 1500,
  hip: 1550,
  upperArm: 500,
  height: 1950,
  napeToHip: 700,
  armLength: 680,
};

const flat = (text: string): string => text.replaceAll(/[\s\u00a0]+/gu, " ");

/** What each page says. */
const pagesOf = (pdf: Uint8Array): readonly string[] =>
  poppler("pdftotext", pdf, ["-layout"]).split("\f").slice(0, -1).map(flat);
const textOf = (pdf: Uint8Array): string => pagesOf(pdf).join(" ");
/** The first page that says this, from 1. */
const pageWith = (pages: readonly string[], text: string): number =>
  pages.findIndex((page) => page.includes(text)) + 1;

/** Every edge of the block, in mm of cloth; fold edges too. */
const edgeLengths = ({ garment }: HandoutSubject): readonly (readonly [string, number])[] =>
  [garment.block.front, garment.block.back, garment.block.sleeve].flatMap((piece) =>
    piece.edges.map(({ name, length }) => [`${piece.name}.${name}`, length] as const),
  );

const expectEdges = (pdf: Uint8Array, pages: readonly number[], times: number): void => {
  const drawn = pages.flatMap((page) => drawnLines(pdf, page)).map(({ length }) => length);
  for (const [name, length] of edgeLengths(subject)) {
    const nearest = Math.min(...drawn.map((one) => Math.abs(one - length / times)));
    expect(nearest, name).toBeLessThan(0.05);
  }
};

describe("a handout", () => {
  let pupil: Uint8Array = new Uint8Array();
  let pages: readonly string[] = [];
  beforeAll(async () => {
    const options = { font, paper: "a4", language: "en" } as const;
    pupil = await handoutPdf(subject, { ...options, answers: false });
    pages = pagesOf(pupil);
  });

  test("is the same bytes each time", async () => {
    const options = { font, paper: "a4", language: "en", answers: false } as const;
    expect(await handoutPdf(subject, options)).toEqual(pupil);
  });

  test("has the block at a quarter, each edge right within 0.05 mm by poppler", () => {
    const first = pageWith(pages, "at a quarter of its size:");
    const fifth = pageWith(pages, "at a fifth of its size:");
    expect(fifth).toBeGreaterThan(first);
    expectEdges(
      pupil,
      Array.from({ length: fifth - first }, (_, i) => first + i),
      4,
    );
  });

  test("has the block at a fifth, each edge right within 0.05 mm by poppler", () => {
    const first = pageWith(pages, "at a fifth of its size:");
    expectEdges(
      pupil,
      Array.from({ length: pages.length - first + 1 }, (_, i) => first + i),
      5,
    );
  });

  test("has a bar that measures 50 mm on paper, in the raster", () => {
    const page = pageWith(pages, "at a quarter of its size:");
    const bar = drawnLines(pupil, page).find(({ points: [a, b], length }) => {
      const isLevel = a !== undefined && b !== undefined && a[1] === b[1];
      return isLevel && Math.abs(length - 50) < 0.01;
    });
    const y = bar?.points[0]?.[1] ?? Number.NaN;
    const raster = rasterOf(pupil, {
      page,
      dpi: 600,
      box: { left: 5, top: y - 3, width: 57, height: 6 },
    });
    const middle = Math.round(3 * raster.perMm);
    const inked = Array.from({ length: raster.width }, (_, x) => x).filter(
      (x) => raster.inkAt(x, middle) > 128,
    );
    const [first = 0, last = 0] = [inked[0], inked[inked.length - 1]];
    // The end strokes are 0.25 wide, half of it beyond each end; a pixel is 0.042.
    expect(Math.abs((last - first + 1) / raster.perMm - 0.25 - 50)).toBeLessThan(0.09);
  });

  test("has a blank where a number was worked out, and no answer", () => {
    const text = pages.join(" ");
    expect(text).not.toContain("Answers");
    // The method's worked example: hem seam 274.14, underarm 369.45, the V's side 60.65.
    for (const answer of ["274.14", "369.45", "60.65", "70.69", "167.7", "1022.7"]) {
      expect(text, answer).not.toContain(answer);
    }
    expect(text).toContain("____");
  });

  test("for the teacher has every sum, on its last pages", async () => {
    const options = { font, paper: "a4", language: "en", answers: true } as const;
    const all = pagesOf(await handoutPdf(subject, options));
    const first = pageWith(all, "Answers");
    expect(first).toBeGreaterThan(pageWith(all, "at a fifth of its size:"));
    const text = all.slice(first - 1).join(" ");
    for (const step of lesson(subject.garment)) {
      for (const { working } of step.questions) {
        expect(text).toContain(tell(voiceOf("en"), working).replaceAll("\u00a0", " "));
      }
    }
  });

  test("has no V in it where the garment has none", async () => {
    const plain = { ...subject, garment: garmentOf(WITHOUT_V) };
    const options = { font, paper: "letter", language: "en", answers: true } as const;
    expect(textOf(await handoutPdf(plain, options))).not.toMatch(/V-insert|\bV\b/u);
  });

  test("is read in German, umlauts and all, on Letter paper", async () => {
    const options = { font, paper: "letter", language: "de", answers: true } as const;
    const german = await handoutPdf(subject, options);
    expect(textOf(german)).toContain("Ärmelende");
    expect(poppler("pdfinfo", german)).toMatch(/Page size:\s+612 x 792/u);
  });
});

describe("a class's sheets", () => {
  const options = { font, paper: "a4", language: "en" } as const;

  test("are one for each pupil, with the pupil's name", async () => {
    const names = ["Ada", "Bea", "Cem"];
    const pupils = names.map((name) => ({ ...subject, body: { id: name.toLowerCase(), name } }));
    const pdf = await classPdf("6b", pupils, options);
    const said = pagesOf(pdf);
    expect(said.length).toBe(3);
    names.forEach((name, i) => {
      expect(said[i]).toContain(name);
      expect(said[i]).not.toContain(names[(i + 1) % 3]);
    });
  });

  test("are at a quarter, each edge right within 0.05 mm", async () => {
    expectEdges(await classPdf("6b", [subject], options), [1], 4);
  });

  test("show no measure of a body", async () => {
    const text = textOf(await classPdf("6b", [subject], options));
    for (const measure of ["960", "1660", "1010", "561"]) expect(text).not.toContain(measure);
  });

  test("say so where a block goes on one sheet only at a smaller scale", async () => {
    const pdf = await classPdf("6b", [{ ...subject, garment: garmentOf({}, LARGE) }], options);
    expect(pagesOf(pdf).length).toBe(1);
    expect(textOf(pdf)).toMatch(/a quarter these pieces do not go|lie over each other/u);
  });
});

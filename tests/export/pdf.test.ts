import { describe, expect, test } from "vitest";
import type { Check } from "../../src/checks/check.ts";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { frontPage } from "../../src/export/frontPage.ts";
import { frontSize, insideMargins } from "../../src/export/frontSize.ts";
import { mapPage } from "../../src/export/mapPage.ts";
import type { PageArt } from "../../src/export/pageArt.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { boxOf, grown, isWithin } from "../../src/export/word.ts";
import { FONT, type Laid, laidOn, SUBJECTS, subjectOf } from "../support/sheetSubjects.ts";

const check = (id: string, verdict: Check["verdict"], message: string): Check => ({
  id,
  verdict,
  value: 1,
  limit: 0,
  unit: "mm",
  message,
});

const textOf = ({ words }: PageArt): string => words.map(({ text }) => text).join(" ");
const frontOf = ({ subject, sheets }: Laid, checks: readonly Check[], date: string | null = null) =>
  frontPage({
    subject: { ...subject, checks },
    sheets,
    drawing: drawLayout(subject, sheets),
    date,
  });

const latin1 = (bytes: Uint8Array): string => new TextDecoder("latin1").decode(bytes);

describe("the first page", () => {
  const laid = laidOn("a4");

  test("prints the sentence of every stop, however many there are", () => {
    const sentence = (i: number): string =>
      `The seam number ${i} is 12.3 mm longer than its mate, and the limit is 0.1 mm. Mend it so.`;
    const stops = Array.from({ length: 12 }, (_, i) => check(`s${i}`, "stop", sentence(i)));
    for (const paper of PAPER_NAMES) {
      const page = frontOf(laidOn(paper), stops);
      for (let i = 0; i < 12; i++) expect(textOf(page)).toContain(sentence(i));
      expect(textOf(page)).toContain("Stop: this cannot be sewn");
    }
  });

  test("lists what asks for a look, and says how many did not fit", () => {
    const attend = Array.from({ length: 30 }, (_, i) =>
      check(`a${i}`, "attend", `Look at place ${i}, where the limit is passed by 3 mm.`),
    );
    expect(textOf(frontOf(laid, attend.slice(0, 3)))).toContain("Look at place 2,");
    expect(textOf(frontOf(laid, attend))).toMatch(/And \d+ more/);
  });

  test("says nothing of checks that are sound", () => {
    expect(textOf(frontOf(laid, [check("x", "sound", "All is well.")]))).not.toContain("All is");
  });

  test("prints a date only where one is given", () => {
    expect(textOf(frontOf(laid, [], "2026-05-01"))).toContain("Drawn 2026-05-01.");
    expect(textOf(frontOf(laid, []))).not.toContain("Drawn");
  });

  test("lists every piece with its cloth, count, grain and sheets", () => {
    const words = textOf(frontOf(laid, []));
    for (const part of ["Front", "1 on the fold", "2, mirrored pair", "rib", "body cloth"]) {
      expect(words).toContain(part);
    }
    expect(words).toContain("upright");
    expect(words).toMatch(/A1 A2/);
  });
});

describe.each(SUBJECTS)("title and map of %s", (_, subject) => {
  test.each(PAPER_NAMES)("keep inside the margins on %s", (paper) => {
    const laid = laidOn(paper, subject);
    const { sheets } = laid;
    const room = grown(insideMargins(frontSize(sheets)), 0.01);
    const scene = { ...laid, drawing: drawLayout(subject, sheets), date: "2026-05-01" };
    for (const { shapes, words } of [frontPage(scene), mapPage(scene)]) {
      for (const word of words) expect(isWithin(boxOf(word), room), word.text).toBe(true);
      for (const { runs } of shapes) {
        for (const { x, y } of runs.flatMap(({ points }) => points)) {
          expect(isWithin({ left: x, top: y, right: x, bottom: y }, room)).toBe(true);
        }
      }
    }
  });
});

describe("a body of a long name and id", () => {
  const long = {
    ...subjectOf(),
    body: { id: "x".repeat(64), name: "A name of many words and no end ".repeat(9) },
  };

  test.each(PAPER_NAMES)("is named on every page, inside the margins, on %s", (paper) => {
    const laid = laidOn(paper, long);
    const scene = { ...laid, drawing: drawLayout(long, laid.sheets), date: null };
    const room = grown(insideMargins(frontSize(laid.sheets)), 0.01);
    for (const { words } of [frontPage(scene), mapPage(scene)]) {
      for (const word of words) expect(isWithin(boxOf(word), room), word.text).toBe(true);
    }
    const { pieces } = scene.drawing;
    for (const { words } of pieces) expect(words.length).toBeGreaterThan(3);
  });
});

describe("the page map", () => {
  test("names every sheet, and says which are left out", () => {
    const laid = laidOn("a4");
    const { subject, sheets } = laid;
    const page = mapPage({ ...laid, drawing: drawLayout(subject, sheets), date: null });
    const cells = sheets.rows * sheets.columns;
    const leftOut = page.words.filter(({ text }) => text === "left out");
    expect(leftOut).toHaveLength(cells - sheets.pages.length);
    for (const { row, column } of sheets.pages) {
      const name = `${String.fromCharCode(65 + row)}${column + 1}`;
      expect(page.words.some(({ text, strong }) => text === name && strong)).toBe(true);
    }
  });

  test("names every piece once", () => {
    const laid = laidOn("letter");
    const page = mapPage({ ...laid, drawing: drawLayout(laid.subject, laid.sheets), date: null });
    for (const name of ["Front", "Back", "Sleeve", "V-insert", "Neckband", "Cuff", "Hem band"]) {
      expect(page.words.filter(({ text }) => text === name)).toHaveLength(1);
    }
  });
});

describe("the PDF", () => {
  test("has the same bytes every time, and no clock in them", async () => {
    const { subject, sheets } = laidOn("a4");
    const [one, other] = [
      await toPdf(subject, sheets, { font: FONT }),
      await toPdf(subjectOf(), { ...sheets }, { font: FONT }),
    ];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
    expect(latin1(one)).not.toContain("CreationDate");
    expect(latin1(one)).not.toMatch(/\(D:\d{4}/);
  });

  test("carries the date that it is given", async () => {
    const { subject, sheets } = laidOn("a0");
    const pdf = await toPdf(subject, sheets, { font: FONT, date: "2026-05-01" });
    expect(latin1(pdf)).toContain("/CreationDate (D:20260501000000+00'00')");
  });

  test("asks viewers to print it at its own size", async () => {
    const { subject, sheets } = laidOn("a0");
    const pdf = await toPdf(subject, sheets, { font: FONT });
    expect(latin1(pdf)).toContain("/PrintScaling /None");
  });

  test("is under 300 kB for a large body on A4", async () => {
    const { subject, sheets } = laidOn("a4", SUBJECTS[2]?.[1]);
    expect((await toPdf(subject, sheets, { font: FONT })).length).toBeLessThan(300_000);
  });

  test("prints a letter that the font lacks as a question mark, and the rest of the name", async () => {
    const { subject, sheets } = laidOn("a0");
    const odd = { ...subject, body: { id: "li", name: "李 Ana 🧵 Bo" } };
    expect((await toPdf(odd, sheets, { font: FONT })).length).toBeGreaterThan(10_000);
  });
});

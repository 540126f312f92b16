import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { bodyFile, file, folder, json, listing, ribwright } from "./ribwright.ts";

const draft = (out: string, ...options: readonly string[]) =>
  ribwright("draft", "--body", bodyFile(), "--out", out, ...options);

/** What of a report's sheets is looked at here. */
type ToldSheets = {
  readonly count: number;
  readonly pages: readonly unknown[];
  readonly drawn?: { readonly x: number; readonly y: number };
};

const isReport = (value: unknown): value is { readonly sheets: ToldSheets } =>
  typeof value === "object" && value !== null && "sheets" in value;

const sheetsIn = (out: string): ToldSheets => {
  const report = json(join(out, "report.json"));
  if (!isReport(report)) throw new Error("no report");
  return report.sheets;
};

/** How many pages a file of ours has; every page is an object of its own. */
const pagesIn = (path: string): number =>
  readFileSync(path, "latin1").match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;

describe("a draft's sheets", () => {
  test("are those that were asked for, alone and numbered from one", () => {
    const out = folder();
    expect(draft(out, "--only", "A2,B1").status).toBe(0);
    const sheets = sheetsIn(out);
    expect(sheets.count).toBe(2);
    expect(sheets.pages).toMatchObject([
      { page: 1, x: 170, y: -10 },
      { page: 2, x: -10, y: 257 },
    ]);
    expect(pagesIn(join(out, "pattern.pdf"))).toBe(2);
  });

  test("that there are not are refused in one sentence, and nothing is written", () => {
    const out = folder();
    const { status, err } = draft(out, "--only", "A1,Z9");
    expect(status).toBe(2);
    expect(err).toMatch(/^There is no sheet Z9; the \d+ sheets are A1 .*\. Take their names from/u);
    expect(listing(out)).toEqual([]);
  });

  test("made for a printer that is not true say how large the file draws a millimetre", () => {
    const [true_, made] = [folder(), folder()];
    expect(draft(true_).status).toBe(0);
    expect(draft(made, "--square-along", "49.3", "--square-across", "50.45").status).toBe(0);
    expect(sheetsIn(true_)).not.toHaveProperty("drawn");
    const { drawn } = sheetsIn(made);
    expect(drawn?.x).toBeCloseTo(50 / 50.45, 6);
    expect(drawn?.y).toBeCloseTo(50 / 49.3, 6);
  });

  test("lie down, in a size of the maker's own", () => {
    const out = folder();
    expect(draft(out, "--paper", "210x330", "--turn", "landscape").status).toBe(0);
    const sheets = sheetsIn(out);
    expect(sheets).toMatchObject({ paper: "210x330", width: 330, height: 210 });
  });

  test("have larger files beside them where they are asked for", () => {
    const out = folder();
    expect(draft(out, "--copy-shop", "roll-914", "--projector").status).toBe(0);
    expect(listing(out)).toContain("copy-shop.pdf");
    expect(listing(out)).toContain("projector.pdf");
    expect(pagesIn(join(out, "projector.pdf"))).toBe(1);
  });

  test("refuse what cannot be printed with exit status 2 and the usage", () => {
    for (const options of [
      ["--paper", "40x60"],
      ["--margins", "210"],
      ["--overlap", "120"],
      ["--square-along", "0"],
      ["--square-across", "300"],
      ["--copy-shop", "a4"],
    ]) {
      const { status, err } = draft(folder(), ...options);
      expect(status).toBe(2);
      const [told = "", gap] = err.split("\n");
      expect(told).toMatch(/\d.*\. [A-Z]/u);
      expect(gap).toBe("");
    }
  });
});

describe("nest", () => {
  test("puts standard sizes into one file", () => {
    const out = folder();
    const { status, err } = ribwright("nest", "--sizes", "W80,W90,M100", "--out", out);
    expect(status).toBe(2);
    expect(err).toContain("M100 is not a standard size");
    const again = ribwright("nest", "--sizes", "W80,W90", "--out", out);
    expect(again).toMatchObject({ status: 0 });
    expect(again.err).toMatch(/^2 in one, \d+ sheets, in /u);
    expect(listing(out)).toEqual(["nested.pdf"]);
  });

  test("takes a table of bodies; a row that is refused does not stop the others", () => {
    const rows = "id,chest,height\nada,960,1660\nbo,9,1700\ncy,1040,1750\n";
    const out = folder();
    const bodies = file("b.csv", rows);
    const { status, err } = ribwright("nest", "--bodies", bodies, "--out", out);
    expect(status).toBe(2);
    expect(err).toContain("Row 2 (bo):");
    expect(err).toContain("2 in one,");
    expect(listing(out)).toEqual(["nested.pdf"]);
  });

  test("refuses more than can be told apart", () => {
    const rows = Array.from({ length: 17 }, (_, i) => `b${i},${900 + 10 * i},1660`);
    const bodies = file("b.csv", `id,chest,height\n${rows.join("\n")}\n`);
    const { status, err } = ribwright("nest", "--bodies", bodies, "--out", folder());
    expect(status).toBe(2);
    expect(err).toContain("17 bodies are to be nested; 16 can be told apart by their lines.");
  });
});

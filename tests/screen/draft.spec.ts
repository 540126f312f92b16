import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { openDoors, turnTo, typeNumber, watchFaults } from "./support.ts";

const MEASURES = { chest: 964, height: 1672, hip: 1008, neckBase: 366, wrist: 157, head: 556 };
const MM_PER_POINT = 25.4 / 72;

const takeMeasures = async (page: Page): Promise<void> => {
  await openDoors(page);
  await page.getByRole("button", { name: "Take measures" }).click();
  await page.getByRole("textbox", { name: "Name", exact: true }).fill("Tabitha Fennimore");
  for (const [id, mm] of Object.entries(MEASURES))
    await typeNumber(page, `measures.${id}`, `${mm}`);
};

const saved = async (page: Page, button: RegExp): Promise<Buffer> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).click();
  return readFileSync(await (await waits).path());
};

/** The same body, choices, paper and date by command. */
const byCommand = (folder: string, date: string): string => {
  mkdirSync(folder, { recursive: true });
  const body = { id: "body-1", name: "Tabitha Fennimore", measures: MEASURES };
  const choices = { alterations: { raiseHem: { on: true, by: 60 } } };
  writeFileSync(`${folder}/body.json`, JSON.stringify(body));
  writeFileSync(`${folder}/choices.json`, JSON.stringify(choices));
  const given = ["--body", `${folder}/body.json`, "--choices", `${folder}/choices.json`];
  const rest = ["--paper", "a0", "--date", date, "--out", folder];
  execFileSync("npm", ["run", "-s", "ribwright", "--", "draft", ...given, ...rest]);
  return folder;
};

type Point = { readonly x: number; readonly y: number };
type Stroke = readonly Point[];

/** Where a point of a poppler drawing lies on the sheet, in mm. */
const placed = (matrix: readonly number[], x: number, y: number): Point => {
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix;
  return { x: (a * x + c * y + e) * MM_PER_POINT, y: (b * x + d * y + f) * MM_PER_POINT };
};

/** Every straight stroke that poppler draws on a page. */
const strokesOf = (pdf: string, page: number): readonly Stroke[] => {
  const args = ["-svg", "-f", `${page}`, "-l", `${page}`, pdf, "-"];
  const svg = execFileSync("pdftocairo", args, { encoding: "utf8", maxBuffer: 1 << 28 });
  return [...svg.matchAll(/<path[^>]*\sd="([^"]*)"[^>]*>/g)].flatMap((found): Stroke[] => {
    const matrix = (/transform="matrix\(([^)]*)\)"/.exec(found[0])?.[1] ?? "1,0,0,1,0,0")
      .split(/[ ,]+/)
      .map(Number);
    return (found[1] ?? "").split(/(?=M)/).map((part) => {
      const numbers = (part.replace(/C[^MLZ]*/g, " ").match(/-?[\d.]+/g) ?? []).map(Number);
      return Array.from({ length: Math.floor(numbers.length / 2) }, (_, i) =>
        placed(matrix, numbers[2 * i] ?? 0, numbers[2 * i + 1] ?? 0),
      );
    });
  });
};

const lengthsOf = (strokes: readonly Stroke[]): readonly number[] =>
  strokes.flatMap((stroke) =>
    stroke.slice(1).map((p, i) => Math.hypot(p.x - (stroke[i]?.x ?? 0), p.y - (stroke[i]?.y ?? 0))),
  );

const nearest = (lengths: readonly number[], wanted: number): number =>
  lengths.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a), 0);

test("from measures to a PDF that is the command line's, byte for byte", async ({ page }, info) => {
  const faults = watchFaults(page);
  await takeMeasures(page);
  await turnTo(page, "Alterations");
  await typeNumber(page, "raiseHem.by", "60");
  await turnTo(page, "Paper");
  await page.locator('[data-word="paper.name"]').selectOption("a0");
  await page.getByLabel("Date on the sheets").first().selectOption("dated");
  await page.locator('input[type="date"]').fill("2026-03-04");
  const folder = byCommand(info.outputPath("by-command"), "2026-03-04");
  const pdf = await saved(page, /^Make the PDF/);
  await expect(page.getByText("Measure the test square first.")).toBeVisible();
  writeFileSync(info.outputPath("by-page.pdf"), pdf);
  expect(pdf.equals(readFileSync(`${folder}/pattern.pdf`))).toBe(true);
  const others = [
    [/^SVG$/, "pattern.svg"],
    [/^DXF$/, "pattern.dxf"],
    [/^Report$/, "report.json"],
  ] as const;
  for (const [button, file] of others) {
    const made = await saved(page, button);
    expect(made.equals(readFileSync(`${folder}/${file}`)), file).toBe(true);
  }
  expect(faults).toEqual([]);
});

test("the PDF asks for no scaling; its square and a seam measure what they say", async ({
  page,
}, info) => {
  await takeMeasures(page);
  await turnTo(page, "Paper");
  await page.locator('[data-word="paper.name"]').selectOption("a0");
  const pdf = await saved(page, /^Make the PDF/);
  const report = JSON.parse((await saved(page, /^Report$/)).toString());
  const file = info.outputPath("pattern.pdf");
  writeFileSync(file, pdf);
  expect(pdf.toString("latin1")).toContain("/PrintScaling /None");
  const first = report.sheets.pages[0].page;
  const onSheets = report.sheets.pages.flatMap(({ page: at }: { page: number }) =>
    lengthsOf(strokesOf(file, at)),
  );
  // poppler rounds the size of a page to whole points and draws at that scale: the square, which
  // is measured first, shows by how much, and the seam is measured by the square.
  const square = nearest(lengthsOf(strokesOf(file, first)), 50);
  expect(square).toBeCloseTo(50, 1);
  const side = report.pieces.front.edges.side.length;
  const seam = nearest(onSheets, (side * square) / 50) * (50 / square);
  expect(seam).toBeCloseTo(side, 1);
});

test("a file under way can be stopped, and another begun", async ({ page }) => {
  await takeMeasures(page);
  await turnTo(page, "Paper");
  // The worker's own file comes slowly, so that there is time to stop it.
  await page.route(/exportWorker/, async (route) => {
    await new Promise((done) => setTimeout(done, 800));
    await route.continue();
  });
  await page.getByRole("button", { name: /^Make the PDF/ }).click();
  await expect(page.getByText(/^Making “tabitha-fennimore.pdf”/)).toBeVisible();
  await page.getByRole("button", { name: "Stop", exact: true }).click();
  await expect(page.getByText("Stopped. Nothing was written.")).toBeVisible();
  const again = await saved(page, /^Make the PDF/);
  expect(again.subarray(0, 5).toString()).toBe("%PDF-");
});

import { expect, test } from "@playwright/test";
import { lengthOf } from "../../src/geometry/length.ts";
import { readPathData } from "../../src/geometry/pathData.ts";
import { twoPages } from "./ownBlockFiles.ts";
import { door, downloaded, open, report, toDoctor, undo, way } from "./ownBlockSupport.ts";
import { kept, openChoir } from "./support.ts";

test("a PDF of the tool's own comes back true: tiles by their marks, seams within 0.05 mm", async ({
  page,
}) => {
  test.slow();
  await openChoir(page);
  // The block itself: every alteration unbuttoned.
  const buttons = page.locator("main [role=switch][aria-checked=true]");
  while ((await buttons.count()) > 0) await buttons.first().click();
  const before = await report(page);
  const sheets = await downloaded(page, /^Make the PDF/);
  await door(page);
  await way(page, "drawing");
  await open(page, { name: "pattern.pdf", mimeType: "application/pdf", buffer: sheets });
  await expect(page.getByText("The tool’s own corner marks are on them")).toBeVisible({
    timeout: 30_000,
  });
  await page.getByRole("button", { name: "The size is right" }).click();
  await toDoctor(page);
  await page.getByRole("button", { name: "Use this block" }).click();
  await page.waitForTimeout(500);
  const { block } = JSON.parse((await kept(page)) ?? "");
  for (const [piece, edge] of [
    ["front", "raglan"],
    ["front", "side"],
    ["back", "raglan"],
    ["back", "neckline"],
    ["sleeve", "raglanFront"],
    ["sleeve", "underarmBack"],
    ["sleeve", "wrist"],
  ] as const) {
    const truth = before.pieces[piece]?.edges[edge]?.length ?? Number.NaN;
    const read = readPathData(block.file.pieces[piece].edges[edge]);
    const back = "path" in read ? lengthOf(read.path) : Number.NaN;
    expect(Math.abs(back - truth), `${piece} ${edge}`).toBeLessThan(0.05);
  }
});

test("pages without marks are put together by hand: dragged, or by keys and S", async ({
  page,
}) => {
  await openChoir(page);
  await door(page);
  await way(page, "drawing");
  await open(page, twoPages());
  await page.getByRole("button", { name: "Put pages together" }).click();
  const second = page.locator('[data-page="2"]');
  await second.focus();
  // Page 2 lies 222 mm to the right; its lines meet at 190 mm.
  for (let i = 0; i < 20; i++) await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("s");
  await page.getByRole("button", { name: "The pages lie right" }).click();
  await expect(page.locator('[data-choice="front"]')).toContainText("line 1, open, 170 mm long");
  await undo(page).click();
  await undo(page).click();
  await expect(page.locator('[data-choice="front"]')).not.toContainText("170 mm");
});

test.describe("without a network", () => {
  test.use({ serviceWorkers: "allow" });

  test("a PDF opens without a network once one was opened, and its reader loads only then", async ({
    page,
    context,
  }) => {
    const loaded: string[] = [];
    page.on("request", (request) => loaded.push(request.url()));
    await openChoir(page);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await door(page);
    await way(page, "drawing");
    const readers = () => loaded.filter((url) => /\/pdf[.-][^/]*\.m?js/u.test(url)).length;
    expect(readers()).toBe(0);
    await open(page, twoPages());
    await expect(page.getByText("2 pages, 2 of them on the table.")).toBeVisible();
    expect(readers()).toBeGreaterThan(0);
    await page.waitForFunction(async () => {
      const kept = await (await caches.open("ribwright")).keys();
      return kept.filter(({ url }) => /\/pdf[.-][^/]*\.m?js/u.test(url)).length > 1;
    });
    await context.setOffline(true);
    await page.reload();
    await open(page, { ...twoPages(), name: "again.pdf" });
    await expect(page.getByText("“again.pdf” is open.")).toBeVisible();
  });
});

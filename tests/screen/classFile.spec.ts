import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { openChoir, turnTo } from "./support.ts";

test.use({ viewport: { width: 1280, height: 720 } });

const pupils = (count: number): string =>
  [
    "id,height,chest",
    ...Array.from({ length: count }, (_, i) => `p${i + 1},${1500 + i},${800 + 5 * i}`),
  ].join("\n");

const bringClass = (page: Page, text: string, name = "7b.csv") =>
  page
    .locator("input[data-file='class']")
    .setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });

test("a class file: every pupil's sheet as PDF, one refused is told and stops no other", async ({
  page,
}) => {
  await openChoir(page);
  await turnTo(page, "Making up");
  await bringClass(page, `${pupils(40)}`.replace("p3,1502,810", "p3,1502,ninety"));
  await expect(page.locator("[data-class-read]")).toHaveText(
    "“7b.csv”: 39 pupils read, 1 refused.",
  );
  await expect(page.locator("[data-class-refused]")).toContainText(
    /^Row 3 \(p3\): chest is "ninety", which is not a number/u,
  );
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the class’s sheets, 39" }).click();
  await expect(page.getByRole("progressbar")).toBeVisible();
  const saved = await waits;
  expect(saved.suggestedFilename()).toBe("7b-class.pdf");
  const pages = readFileSync(await saved.path(), "latin1").match(/\/Type\s*\/Page\b(?!s)/gu);
  expect(pages).toHaveLength(39);
});

test("the class's sheets are stopped half way, and nothing is written", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Making up");
  await bringClass(page, pupils(40));
  await page.getByRole("button", { name: "Save the class’s sheets, 40" }).click();
  await page.getByRole("button", { name: "Stop", exact: true }).click();
  await expect(page.locator('[data-run="stopped"]')).toHaveText("Stopped. Nothing was written.");
});

test("41 pupils, or a file of another kind, are refused in one sentence", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Making up");
  await bringClass(page, pupils(41));
  await expect(page.locator("[data-class-refused]")).toHaveText(
    "7b.csv has 41 pupils; a class has 40 at most. Part the table into two.",
  );
  await expect(page.getByRole("button", { name: /Save the class/u })).toHaveCount(0);
  await bringClass(page, "name\nann", "names.csv");
  await expect(page.locator("[data-class-refused]")).toContainText("names.csv has no column id");
});

test("the lesson works on a pupil's measures, and the work stays as it was", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Making up");
  await bringClass(page, "id,height,chest,wrist\nours,1600,900,155\n");
  await page.locator('[data-choice="pupil"]').selectOption("ours");
  await page.getByRole("button", { name: "Show in class" }).last().click();
  await page.keyboard.press("a");
  await expect(page.locator(".classAsk")).toContainText("The chest measures 900 mm.");
  await page.keyboard.press("Escape");
  await turnTo(page, "Measures");
  await expect(page.locator('main [data-field="measures.chest"]')).toHaveValue("960");
});

import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { CHAPTERS, findings, openChoir, openDoors, pin, turnTo } from "./support.ts";

/** Nothing half faded in: contrast is measured on what has come to rest. */
const still = (page: Page): Promise<void> => page.emulateMedia({ reducedMotion: "reduce" });

for (const theme of ["light", "dark", "projector"] as const) {
  test(`axe finds nothing on any chapter, ${theme}`, async ({ page }) => {
    await still(page);
    await openDoors(page);
    await page.getByLabel("Ground").first().selectOption(theme);
    expect(await findings(page), "first page").toEqual([]);
    await page.getByRole("button", { name: "Open the choir" }).click();
    for (const chapter of CHAPTERS) {
      await turnTo(page, chapter);
      expect(await findings(page), chapter).toEqual([]);
    }
  });
}

test("axe finds nothing in the states: refused, card, facts, keys, stops, narrow, German", async ({
  page,
}) => {
  await still(page);
  await openChoir(page);
  await page.locator('main [data-field="raiseHem.by"]').fill("999");
  await page.keyboard.press("Enter");
  await page.locator('[data-word="vInsert.method"]').selectOption("cut-away");
  await page.locator('[data-check="v-insert-match"]').click();
  expect(await findings(page), "refused and card").toEqual([]);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Read as a table" }).click();
  expect(await findings(page), "facts").toEqual([]);
  await page.getByRole("button", { name: "Keys" }).first().click();
  expect(await findings(page), "keys").toEqual([]);
  await page.keyboard.press("Escape");
  await turnTo(page, "Paper");
  expect(await findings(page), "stops").toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await findings(page), "narrow").toEqual([]);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.getByLabel("Language").first().selectOption("de");
  await expect(page.getByRole("heading", { level: 1, name: "Papier" })).toBeVisible();
  expect(await findings(page), "German").toEqual([]);
});

/** Tab until what has the focus fits; a keyboard user can get there at all. */
const tabTo = async (page: Page, selector: string, most = 120): Promise<void> => {
  for (let i = 0; i < most; i++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
  }
  throw new Error(`Tab does not reach ${selector}.`);
};

test("the whole job by keyboard alone: measures, alterations, a check, the PDF", async ({
  page,
}) => {
  await openDoors(page);
  await tabTo(page, ".door .go");
  await page.keyboard.press("Enter");
  await tabTo(page, '[data-field="measures.height"]');
  await page.keyboard.type("1660");
  await page.keyboard.press("Tab");
  await page.keyboard.type("960");
  await page.keyboard.press("Enter");
  await page.keyboard.press("F6");
  await expect(page.locator(".table")).toBeVisible();
  await tabTo(page, '.chapter[aria-label="Alterations"]', 200);
  await page.keyboard.press("Enter");
  await tabTo(page, '[role="switch"][aria-label="Hem"]');
  await page.keyboard.press("Space");
  await expect(page.getByRole("switch", { name: "Hem" })).not.toBeChecked();
  await page.keyboard.press("Space");
  await tabTo(page, '[data-field="raiseHem.by"]');
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("PageUp");
  await expect(page.locator('main [data-field="raiseHem.by"]')).toHaveValue("61.8");
  await tabTo(page, '[data-piece="front"]');
  await page.keyboard.press("n");
  await expect(page.locator("[data-pin]:focus")).toHaveCount(1);
  await tabTo(page, '[data-pin="endSleeve.aboveWrist"]');
  await page.keyboard.press("ArrowUp");
  await expect(pin(page, "endSleeve.aboveWrist")).toHaveAttribute("aria-valuetext", /51\.8/u);
  await page.keyboard.press("5");
  await expect(page.getByRole("heading", { level: 1, name: "Ribs" })).toBeVisible();
  await tabTo(page, "[data-check]");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  await expect(page.locator(".card")).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(page.locator(".card")).toBeHidden();
  await page.keyboard.press("Control+p");
  await expect(page.getByRole("heading", { level: 1, name: "Paper" })).toBeVisible();
  await tabTo(page, ".go", 200);
  const waits = page.waitForEvent("download");
  await page.keyboard.press("Enter");
  expect(
    readFileSync(await (await waits).path())
      .subarray(0, 5)
      .toString(),
  ).toBe("%PDF-");
  await page.keyboard.press("Control+z");
  await expect(page.getByRole("button", { name: /^Redo: / })).toBeVisible();
});

test("a screen reader is told the settled result, and each thing has its name", async ({
  page,
}) => {
  await openChoir(page);
  await expect(page.getByRole("spinbutton", { name: "Hem raised by, millimetres" })).toHaveValue(
    "50.8",
  );
  await expect(page.getByRole("slider", { name: "Hem raised by" })).toHaveAttribute(
    "aria-valuemax",
    "300",
  );
  await expect(
    page.getByRole("group", { name: /^Front, cut one on the fold, .* long, .* wide$/u }),
  ).toBeVisible();
  await page.getByRole("spinbutton", { name: "Hem raised by, millimetres" }).press("ArrowUp");
  await expect(page.locator("[data-settled]")).toHaveText(
    /Hem raised by: 50\.8.mm to 51\.8.mm\. \d+ checks sound, \d+ attend, 0 stop\./u,
  );
});

test("400 % zoom: one leaf, nothing to scroll sideways", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openChoir(page);
  const wider = await page.evaluate(() => {
    const leaf = document.querySelector("main");
    return (leaf?.scrollWidth ?? 0) - (leaf?.clientWidth ?? 0);
  });
  expect(wider).toBeLessThanOrEqual(0);
});

test("in German the checks and the doubts speak German", async ({ page }) => {
  await openChoir(page);
  await page.getByLabel("Language").first().selectOption("de");
  await expect(page.getByRole("heading", { level: 1, name: "Änderungen" })).toBeVisible();
  await page.locator('[data-word="vInsert.method"]').selectOption("cut-away");
  await page.locator('[data-check="v-insert-match"]').click();
  const card = page.locator(".card");
  await expect(card).toContainText(/Das V im Vorderteil .* auseinander; die Grenze ist 0,5.mm\./u);
  await expect(card).not.toContainText(/\b(?:the|apart|limit)\b/u);
  await page.keyboard.press("Escape");
  await page.locator('.chapter[aria-label="Maße"]').click();
  await page.locator('main [data-field="measures.wrist"]').fill("240");
  await page.keyboard.press("Enter");
  await expect(page.locator(".doubt").first()).toHaveText(
    /^Handgelenk: 240.mm\. .*noch einmal messen\.?/iu,
  );
});

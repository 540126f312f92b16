import { expect, test } from "@playwright/test";
import { number, openChoir, turnTo, watchFaults } from "./support.ts";

test("where each measure is taken: line and number point at each other", async ({ page }) => {
  const faults = watchFaults(page);
  await openChoir(page);
  await turnTo(page, "Measures");
  await page.getByRole("button", { name: "See where each is taken" }).click();
  await expect(page.locator("[data-figure]")).toHaveCount(2);
  await number(page, "measures.hip").focus();
  await expect(page.locator('[data-figure="front"] [data-taken="hip"]')).toHaveClass("lit");
  await expect(page.locator('[data-figure="back"] [data-taken="hip"]')).toHaveClass("lit");
  await page.locator('[data-figure="front"] [data-taken="wrist"] text').click();
  await expect(number(page, "measures.wrist")).toBeFocused();
  await page.getByRole("button", { name: "Back to the tapes" }).click();
  await expect(page.locator("[data-figure]")).toHaveCount(0);
  expect(faults).toEqual([]);
});

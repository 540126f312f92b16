import { expect, type Page, test } from "@playwright/test";
import { openChoir, turnTo, typeNumber, watchFaults } from "./support.ts";

test.use({ viewport: { width: 1440, height: 900 } });

/** Px to a millimetre, from the back's own words and from how large it is drawn. */
const perMm = (page: Page): Promise<number> =>
  page.locator('[data-piece="back"]').evaluate((back) => {
    const told = /([\d.]+).mm wide/u.exec(back.getAttribute("aria-label") ?? "")?.[1];
    const cut = back.querySelector("path.cut")?.getBoundingClientRect();
    return (cut?.width ?? 0) / Number(told);
  });

test("true size asks about the screen once, and keeps to it", async ({ page }) => {
  const faults = watchFaults(page);
  await openChoir(page);
  await turnTo(page, "Turnings");
  const fit = page.getByLabel("Size of the drawing").first();
  await fit.selectOption("true");
  await page.getByLabel("Size of the drawn card").fill("4");
  // 85.6 mm at 4 px each.
  await expect(page.locator(".screenCard")).toHaveAttribute("width", "342.4");
  await page.getByRole("button", { name: "It is as large" }).click();
  await expect(fit).toHaveValue("true");
  expect(await perMm(page)).toBeCloseTo(4, 1);
  await fit.selectOption("fitted");
  expect(await perMm(page)).toBeLessThan(2);
  await fit.selectOption("true");
  await expect(page.getByRole("dialog")).toHaveCount(0);
  expect(await perMm(page)).toBeCloseTo(4, 1);
  // Another chapter lays the pieces otherwise; they stay as large.
  await typeNumber(page, "allowances.side", "30");
  await expect(fit).toHaveValue("true");
  expect(await perMm(page)).toBeCloseTo(4, 1);
  expect(faults).toEqual([]);
});

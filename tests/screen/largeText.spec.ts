import { expect, type Page, test } from "@playwright/test";
import config from "../../playwright.config.ts";
import { CHAPTERS, openChoir, openDoors, turnTo } from "./support.ts";

/** The browser's own letters, twice as large: so a maker with poor sight sets them (WCAG 1.4.4). */
const launch = config.use?.launchOptions ?? {};
test.use({
  launchOptions: {
    ...launch,
    args: [...(launch.args ?? []), "--blink-settings=defaultFontSize=32"],
  },
});

const SIZES = [
  { width: 1440, height: 900 },
  { width: 768, height: 1024 },
  { width: 390, height: 844 },
] as const;

/** What runs out of the page at its side, or of a heading, and cannot be read. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(`(() => {
    const told = (e) => (e.className || e.tagName) + ": " + (e.textContent || "").trim().slice(0, 40);
    const wide = [...document.querySelectorAll("main, h1, h2, .spine, .tape .tip, .tableTools, .cover")];
    return wide.filter((e) => e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1).map(told);
  })()`);

for (const viewport of SIZES) {
  test.describe(`letters twice as large, ${viewport.width} px wide`, () => {
    test.use({ viewport });

    test("are whole on the first page", async ({ page }) => {
      await openDoors(page);
      expect(await cutOff(page)).toEqual([]);
    });

    test("are whole in every chapter, and leave the page a fifth of the height", async ({
      page,
    }) => {
      await openChoir(page);
      for (const chapter of CHAPTERS) {
        await turnTo(page, chapter);
        await expect(page.locator(".lateNote")).toHaveCount(0);
        expect(await cutOff(page), chapter).toEqual([]);
        const box = await page.locator("main").boundingBox();
        expect(box?.height, chapter).toBeGreaterThan(viewport.height / 5);
      }
    });
  });
}

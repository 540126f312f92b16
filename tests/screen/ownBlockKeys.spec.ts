import { expect, type Page, test } from "@playwright/test";
import { UNEVEN } from "./ownBlockFiles.ts";
import { door, drawn, finding, next, title, toDoctor, way } from "./ownBlockSupport.ts";
import { findings, openChoir, openDoors } from "./support.ts";

const tabTo = async (page: Page, selector: string, most = 60): Promise<void> => {
  for (let i = 0; i < most; i++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
  }
  throw new Error(`Tab does not reach ${selector}.`);
};

test("the whole way by keyboard alone", async ({ page }) => {
  await openDoors(page);
  for (let i = 0; i < 12; i++) {
    await page.keyboard.press("Tab");
    const text = await page.evaluate(() => document.activeElement?.textContent);
    if (text === "Bring a block") break;
  }
  await page.keyboard.press("Enter");
  await title(page, "Your own block");
  await tabTo(page, '[data-way="drawing"]');
  await page.keyboard.press("Enter");
  await title(page, "Pieces");
  await tabTo(page, "main button.go");
  const waits = page.waitForEvent("filechooser");
  await page.keyboard.press("Enter");
  await (await waits).setFiles(UNEVEN);
  await expect(page.getByText("“uneven.svg” is open.")).toBeVisible();
  await tabTo(page, "main button.go.quiet");
  await page.keyboard.press("Enter");
  await tabTo(page, '[data-choice="sleeve"]');
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Edges");
  await tabTo(page, '[data-choice="corner.raglan"]');
  await tabTo(page, '[data-corner="2"]');
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Control+z");
  await page
    .getByRole("main")
    .focus()
    .catch(() => undefined);
  await page.keyboard.press("F6");
  await tabTo(page, "main button.go:not(.quiet)", 200);
  await page.keyboard.press("Enter");
  await title(page, "Turnings");
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Doctor");
  await tabTo(page, '[data-finding="side-match"] input');
  await page.keyboard.press("ArrowDown");
  await tabTo(page, "main button.go.quiet");
  await page.keyboard.press("Enter");
  await expect(finding(page, "side-match")).toHaveCount(0);
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Block");
});

for (const theme of ["light", "dark", "projector"] as const) {
  test(`axe finds nothing on any step, ${theme}, at two widths`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: "reduce" });
    await openChoir(page);
    await door(page);
    await page.getByLabel("Ground").first().selectOption(theme);
    expect(await findings(page), "ways").toEqual([]);
    await way(page, "tape");
    expect(await findings(page), "tape").toEqual([]);
    await page.getByRole("button", { name: "Way in", exact: true }).click();
    await drawn(page, UNEVEN);
    expect(await findings(page), "pieces").toEqual([]);
    await next(page, "edges");
    expect(await findings(page), "edges").toEqual([]);
    await next(page, "turnings");
    await page.locator('[data-choice="turnings"]').selectOption("with");
    expect(await findings(page), "turnings").toEqual([]);
    await next(page, "doctor");
    await page.locator("[data-finding] input").nth(1).check();
    expect(await findings(page), "doctor").toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await findings(page), "doctor, narrow").toEqual([]);
  });
}

test("nothing runs out of the page from 390 to 2560 px, in English and German", async ({
  page,
}) => {
  test.slow();
  await openChoir(page);
  await door(page);
  await drawn(page, UNEVEN);
  await toDoctor(page);
  for (const language of ["en", "de"]) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.locator("select").filter({ hasText: "Deutsch" }).first().selectOption(language);
    for (const width of [390, 768, 1180, 1440, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      for (const chapter of await page.locator(".spine .chapter").all()) {
        await chapter.click();
        const over = await page.evaluate(
          () =>
            [document.documentElement, ...document.querySelectorAll("main.page")].filter(
              (part) => part.scrollWidth > part.clientWidth + 1,
            ).length,
        );
        expect(over, `${language} ${width} ${await chapter.getAttribute("aria-label")}`).toBe(0);
      }
    }
  }
});

import { expect, type Page, test } from "@playwright/test";
import { LEAST_CAPITAL, lettering } from "./legible.ts";
import { findings, keptChoices, openChoir, watchFaults } from "./support.ts";

test.use({ viewport: { width: 1280, height: 720 } });

const opener = (page: Page) => page.getByRole("button", { name: "Show in class" }).first();
const stepWord = (page: Page) => page.locator("[data-class-step]");
const share = (page: Page) => page.locator(".classDrawing");

/** By keys alone: the button is reached by the keyboard as well. */
const openClass = async (page: Page): Promise<void> => {
  await openChoir(page);
  await opener(page).focus();
  await page.keyboard.press("Enter");
  await expect(stepWord(page)).toHaveText("Step 1 of 7");
};

const press = async (page: Page, key: string, step: string): Promise<void> => {
  await page.keyboard.press(key);
  await expect(stepWord(page)).toHaveText(step);
};

test("the whole lesson by keys alone, and back to where it was opened", async ({ page }) => {
  const faults = watchFaults(page);
  await openClass(page);
  await press(page, "ArrowLeft", "Step 1 of 7");
  await press(page, "ArrowRight", "Step 2 of 7");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Side seams");
  await press(page, " ", "Step 3 of 7");
  await press(page, "PageDown", "Step 4 of 7");
  await press(page, "ArrowDown", "Step 5 of 7");
  await press(page, "ArrowUp", "Step 4 of 7");
  await press(page, "End", "Step 7 of 7");
  await press(page, " ", "Step 7 of 7");
  await press(page, "Home", "Step 1 of 7");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("heading", { level: 1, name: "Alterations" })).toBeVisible();
  await expect(opener(page)).toBeFocused();
  expect(faults).toEqual([]);
});

test("N hides what the class works out, A shows the answers until the next step", async ({
  page,
}) => {
  await openClass(page);
  await press(page, "ArrowRight", "Step 2 of 7");
  await press(page, "ArrowRight", "Step 3 of 7");
  await expect(page.locator(".classWhy")).toContainText("; 25.4");
  expect(await page.locator(".classNumber").count()).toBeGreaterThan(0);
  await page.keyboard.press("n");
  await expect(page.locator(".classNumber")).toHaveCount(0);
  await expect(page.locator(".classWhy")).toContainText("; ____");
  await expect(page.locator("[data-answer]")).toHaveCount(0);
  await page.keyboard.press("a");
  await expect(page.locator("[data-answer]").last()).toHaveText(
    /^76\.2.mm − 50\.8.mm = 25\.4.mm$/u,
  );
  await press(page, "ArrowRight", "Step 4 of 7");
  await expect(page.locator("[data-answer]")).toHaveCount(0);
});

test("L gives a black ground, B a blank, R moves the drawing again", async ({ page }) => {
  await openClass(page);
  await press(page, "ArrowRight", "Step 2 of 7");
  await expect(share(page)).toHaveAttribute("data-share", "1");
  await page.keyboard.press("r");
  await expect(share(page)).not.toHaveAttribute("data-share", "1");
  await expect(share(page)).toHaveAttribute("data-share", "1");
  await page.keyboard.press("l");
  await expect(page.locator(".classRoom")).toHaveCSS("background-color", "rgb(0, 0, 0)");
  await page.keyboard.press("b");
  await expect(page.locator(".classBlank")).toBeVisible();
  await page.keyboard.press("b");
  await expect(page.locator(".classBlank")).toHaveCount(0);
});

test("with reduced motion the new line stands at once", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openClass(page);
  const shares: string[] = [];
  await page.exposeFunction("shareSeen", (seen: string) => shares.push(seen));
  await page.evaluate(
    "new MutationObserver(() => shareSeen(document.querySelector('.classDrawing').dataset.share)).observe(document.querySelector('.classDrawing'), { attributes: true, attributeFilter: ['data-share'] })",
  );
  await press(page, "ArrowRight", "Step 2 of 7");
  await expect(share(page)).toHaveAttribute("data-share", "1");
  expect(shares.filter((seen) => seen !== "1")).toEqual([]);
});

test("the ring stays where the pointer was left", async ({ page }) => {
  await openClass(page);
  await page.mouse.move(700, 300);
  await page.mouse.move(720, 320);
  await press(page, "ArrowRight", "Step 2 of 7");
  const box = await page.locator(".pointerRing").boundingBox();
  expect((box?.x ?? 0) + (box?.width ?? 0) / 2).toBeCloseTo(720, 0);
  expect((box?.y ?? 0) + (box?.height ?? 0) / 2).toBeCloseTo(320, 0);
});

/** Each step in turn, its questions answered. */
const eachStep = async (page: Page, look: (step: number) => Promise<void>): Promise<void> => {
  for (let i = 1; i <= 7; i++) {
    await page.keyboard.press("a");
    await look(i);
    await page.keyboard.press("ArrowRight");
  }
};

const scrolledAway = (page: Page): Promise<number> =>
  page.locator(".classWords").evaluate((words) => words.scrollHeight - words.clientHeight);

test("every step, questions answered, stands on the page without scrolling", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openClass(page);
  await eachStep(page, async (i) => {
    expect(await scrolledAway(page), `step ${i}`).toBeLessThanOrEqual(1);
  });
});

test("what the class reads is legible at four metres", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openClass(page);
  await eachStep(page, async (i) => {
    const all = await lettering(page);
    expect(all.length).toBeGreaterThan(5);
    const small = all.filter(({ capital }) => capital < LEAST_CAPITAL);
    expect(small, `step ${i}`).toEqual([]);
  });
});

const classNumber = (page: Page, field: string) => page.locator(`[data-class-field="${field}"]`);

test("C changes the number before the class: drawing and answers follow, and are kept if asked", async ({
  page,
}) => {
  await openClass(page);
  await press(page, "ArrowRight", "Step 2 of 7");
  await page.keyboard.press("a");
  await page.keyboard.press("c");
  await expect(classNumber(page, "moveSideSeams.by")).toBeFocused();
  await page.keyboard.type("30");
  await page.keyboard.press("Enter");
  await expect(page.locator("[data-answer]").first()).toHaveText(/^275.mm \+ 30.mm = 305.mm$/u);
  await expect(page.locator(".classNumber", { hasText: "305" })).toHaveCount(2);
  // The keys are the teacher's again.
  await press(page, "ArrowRight", "Step 3 of 7");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Keep these" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Alterations" })).toBeVisible();
  await expect(page.locator('main [data-field="moveSideSeams.by"]')).toHaveValue("30");
  await expect
    .poll(async () => (await keptChoices(page)).alterations["moveSideSeams"])
    .toMatchObject({ by: 30 });
  await page.keyboard.press("Control+z");
  await expect(page.locator('main [data-field="moveSideSeams.by"]')).toHaveValue("12.7");
});

test("a number changed in class is not kept unasked; Escape puts it back, or stays", async ({
  page,
}) => {
  await openClass(page);
  await press(page, "ArrowRight", "Step 2 of 7");
  await page.keyboard.press("c");
  await page.keyboard.press("ArrowUp");
  await expect(classNumber(page, "moveSideSeams.by")).toHaveValue("13.7");
  await page.keyboard.press("Escape");
  await expect(classNumber(page, "moveSideSeams.by")).toHaveValue("12.7");
  await page.keyboard.press("c");
  await page.keyboard.type("400");
  await page.keyboard.press("Enter");
  await expect(page.locator(".classRefused")).toContainText("must be 0 mm to 60 mm");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await expect(stepWord(page)).toHaveText("Step 2 of 7");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "As it was before" }).press("Enter");
  await expect(page.locator('main [data-field="moveSideSeams.by"]')).toHaveValue("12.7");
});

test("F asks for the full screen, and the class leaves it again", async ({ page }) => {
  await openClass(page);
  await page.keyboard.press("f");
  await expect.poll(() => page.evaluate("document.fullscreenElement !== null")).toBe(true);
  await page.locator(".classHead button", { hasText: "Leave" }).click();
  await expect.poll(() => page.evaluate("document.fullscreenElement !== null")).toBe(false);
});

test("in German and inches: words, numbers and answers", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openChoir(page);
  await page.getByLabel("Unit").first().selectOption("in");
  await page.getByLabel("Language").first().selectOption("de");
  await page.getByRole("button", { name: "Im Unterricht zeigen" }).first().click();
  const word = page.locator("[data-class-step]");
  await expect(word).toHaveText("Schritt 1 von 7");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".classSentence")).toContainText("Saum");
  await expect(page.locator(".classSentence input")).toHaveValue("2");
  await page.keyboard.press("a");
  await expect(page.locator("[data-answer]").last()).toHaveText(/^3.Zoll − 2.Zoll = 1.Zoll$/u);
  await page.keyboard.press("Home");
  await eachStep(page, async (i) => {
    expect(await scrolledAway(page), `step ${i}`).toBeLessThanOrEqual(1);
    const tools = await page
      .locator(".classHead")
      .evaluate((head) => head.scrollWidth - head.clientWidth);
    expect(tools, `keys of step ${i}`).toBeLessThanOrEqual(0);
    const small = (await lettering(page)).filter(({ capital }) => capital < LEAST_CAPITAL);
    expect(small, `letters of step ${i}`).toEqual([]);
  });
});

test("no body is named: measures are private", async ({ page }) => {
  await openChoir(page);
  const who = await page.locator(".headR .who").textContent();
  await opener(page).click();
  await expect(stepWord(page)).toBeVisible();
  await expect(page.locator(".classRoom")).not.toContainText(who?.slice(0, 8) ?? "?");
});

test("axe finds nothing, on white and on black", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openClass(page);
  await press(page, "ArrowRight", "Step 2 of 7");
  await page.keyboard.press("a");
  expect(await findings(page), "white").toEqual([]);
  await page.keyboard.press("l");
  expect(await findings(page), "black").toEqual([]);
});

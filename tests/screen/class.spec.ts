import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { keptChoices, openChoir, turnTo, watchFaults } from "./support.ts";

type Finding = { readonly id: string; readonly nodes: readonly { readonly html: string }[] };

const findings = async (page: Page): Promise<readonly string[]> => {
  await page.addScriptTag({ path: "node_modules/axe-core/axe.min.js" });
  const found: readonly Finding[] = await page.evaluate(
    "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then((r) => r.violations)",
  );
  return found.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`,
  );
};

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

/**
 * Letters are read at ease from 16 minutes of arc, measured on a capital (ISO 9241-303, from memory).
 * At 4 m that is 18.6 mm. A picture 2 m wide, common practice for a classroom, has 1280 px: 1.56 mm each.
 */
const LEAST_CAPITAL = (4000 * Math.tan(((16 / 60) * Math.PI) / 180)) / (2000 / 1280);

/** What only the teacher reads, at the machine: the keys and the list of steps. */
const TEACHERS = ".classHead, .classFoot, .vh";

type Lettering = { readonly text: string; readonly capital: number };

/** Every text that the class reads, with how high its capitals are, in px. */
const lettering = (page: Page): Promise<readonly Lettering[]> =>
  page.evaluate(`(() => {
    const canvas = document.createElement("canvas").getContext("2d");
    const walker = document.createTreeWalker(document.querySelector(".classRoom"), NodeFilter.SHOW_TEXT);
    const found = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (node.data.trim() === "" || parent.closest(${JSON.stringify(TEACHERS)})) continue;
      const style = getComputedStyle(parent);
      canvas.font = style.fontWeight + " " + style.fontSize + " " + style.fontFamily;
      found.push({ text: node.data, capital: canvas.measureText("H").actualBoundingBoxAscent });
    }
    return found;
  })()`);

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

const pupils = (count: number): string =>
  [
    "id,height,chest",
    ...Array.from({ length: count }, (_, i) => `p${i + 1},${1500 + i},${800 + 5 * i}`),
  ].join("\n");

const bringClass = (page: Page, text: string, name = "7b.csv") =>
  page
    .locator("[data-class-file]")
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
  await page.locator("[data-class-pupil]").selectOption("ours");
  await page.getByRole("button", { name: "Show in class" }).last().click();
  await page.keyboard.press("a");
  await expect(page.locator(".classAsk")).toContainText("The chest measures 900 mm.");
  await page.keyboard.press("Escape");
  await turnTo(page, "Measures");
  await expect(page.locator('main [data-field="measures.chest"]')).toHaveValue("960");
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

import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { poppler } from "../support/pdf.ts";
import { findings, kept, number, openChoir, turnTo, typeNumber, watchFaults } from "./support.ts";

const STEPS = [
  "1, Before you sew",
  "2, Stay the point of the V",
  "3, Sew in the V-insert",
  "4, Sleeves to the front",
  "5, Sleeves to the back",
  "6, Underarm and side in one",
  "7, Neckband",
  "8, Cuffs",
  "9, Hem band",
  "10, Press",
];

const stepSwitches = (page: Page) => page.locator(".guideSteps").getByRole("switch");

const openMaking = async (page: Page): Promise<void> => {
  await openChoir(page);
  await turnTo(page, "Making up");
  await expect(stepSwitches(page)).toHaveCount(STEPS.length);
};

const savedPdf = async (page: Page, button: string, name: RegExp): Promise<void> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: button, exact: true }).click();
  const saved = await waits;
  expect(saved.suggestedFilename()).toMatch(name);
  expect(
    readFileSync(await saved.path())
      .subarray(0, 5)
      .toString(),
  ).toBe("%PDF-");
};

test("the guide is the core's: every step, marks in mm, stitches, cautions, a picture each", async ({
  page,
}) => {
  const faults = watchFaults(page);
  await openMaking(page);
  for (const [i, name] of STEPS.entries()) {
    await expect(stepSwitches(page).nth(i)).toHaveAccessibleName(name);
  }
  await expect(page.locator('[data-step="neckband"] table tbody tr')).toHaveCount(8);
  await expect(page.locator('[data-step="cuffs"] table tbody tr')).toHaveCount(4);
  await expect(page.locator('[data-step="neckband"] caption')).toHaveText(/, in mm$/u);
  await expect(page.locator('[data-step="raglan-front"]')).toContainText("ISO 4915 type 514");
  await expect(page.locator('[data-step="neckband"] .caution')).toContainText("Take care");
  await expect(page.locator("[data-pictures]")).toHaveCount(STEPS.length - 1);
  await expect(
    page.locator('[data-pictures="v-insert"]').getByRole("img", { name: /stop here/u }),
  ).toBeVisible();
  expect(faults).toEqual([]);
});

test("without a V its two steps fall away, and a turning changed is changed in the guide", async ({
  page,
}) => {
  await openChoir(page);
  await page.getByRole("switch", { name: "V-insert" }).click();
  await turnTo(page, "Turnings");
  await typeNumber(page, "allowances.raglan", "12");
  await expect(number(page, "allowances.raglan")).toHaveValue("12");
  await turnTo(page, "Making up");
  await expect(stepSwitches(page)).toHaveCount(STEPS.length - 2);
  await expect(page.locator('[data-step="raglan-front"]')).toContainText("its turning 12");
});

test("a step is ticked off for this body, and is kept with the project", async ({ page }) => {
  await openMaking(page);
  await stepSwitches(page).nth(1).click();
  await expect(stepSwitches(page).nth(1)).toBeChecked();
  await expect(page.getByText("1 of 10 sewn.")).toBeVisible();
  await expect.poll(() => kept(page)).toContain("stay-v");
  await page.getByRole("button", { name: "Next body" }).click();
  await expect(page.getByText("0 of 10 sewn.")).toBeVisible();
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+z");
  await expect(stepSwitches(page).nth(1)).not.toBeChecked();
});

test("for a child the first step warns of cords", async ({ page }) => {
  await openMaking(page);
  const first = page.locator('[data-step="prepare"]');
  await expect(first).not.toContainText("drawstring");
  await page.getByRole("switch", { name: "For a child" }).click();
  await expect(first).toContainText("No cord, drawstring or tie");
});

test("guide and handouts are saved as PDF", async ({ page }) => {
  await openMaking(page);
  await savedPdf(page, "Save the guide", /-guide\.pdf$/u);
  await savedPdf(page, "Class handout", /-handout\.pdf$/u);
  await savedPdf(page, "Handout with answers", /-answers\.pdf$/u);
});

const savedText = async (page: Page, button: string): Promise<string> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: button, exact: true }).click();
  return readFileSync(await (await waits).path(), "latin1");
};

test("guide and handouts on Letter, though the pattern goes on A4", async ({ page }) => {
  await openMaking(page);
  await page.locator("[data-home-paper]").selectOption("letter");
  for (const button of ["Save the guide", "Class handout"]) {
    // 8.5 by 11 inches, in points.
    expect(await savedText(page, button)).toMatch(/MediaBox\s*\[\s*0 0 612\.? ?\d* 792/u);
  }
});

test("the table test's readings say how each band changes, before they are used", async ({
  page,
}) => {
  await openChoir(page);
  await turnTo(page, "Cloth");
  await page.getByText("Find the rib’s two numbers on a table").click();
  const fold = page.locator("[data-table-test]");
  await fold.getByLabel(/^Reading under load/u).fill("160");
  await fold.getByLabel(/^Reading after one hour/u).fill("104");
  await expect(fold.locator('[data-rib="test.found.stretch"]')).toHaveText(
    "Stretch 60 %.".replace(" %", "\u00a0%"),
  );
  await expect(fold.locator('[data-rib="test.change.hem"]')).toBeVisible();
  await expect(fold.locator('[data-rib="test.change.pass"]')).toContainText("60");
  await fold.getByLabel(/^Shortest flat arc/u).fill("101");
  await expect(fold.locator('[data-rib="test.found.slack"]')).toBeVisible();
  await fold.getByRole("button", { name: /^Use / }).click();
  await expect(number(page, "rib.stretch")).toHaveValue("60");
});

test("the table test is printed by itself, with its arc", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Cloth");
  await page.getByText("Find the rib’s two numbers on a table").click();
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Print the test and its arc" }).click();
  const saved = await waits;
  expect(saved.suggestedFilename()).toMatch(/-rib-test\.pdf$/u);
  const text = poppler("pdftotext", readFileSync(await saved.path()), ["-layout"]);
  expect(text).toContain("arc");
  expect(text).not.toContain("Sleeves to the front");
});

test("the screen is kept awake in this chapter only", async ({ page }) => {
  await page.addInitScript(() => {
    const counts = { taken: 0, released: 0 };
    Object.assign(globalThis, { counts });
    const request = async () => {
      counts.taken += 1;
      const lock = new EventTarget();
      return Object.assign(lock, {
        release: async () => {
          counts.released += 1;
          lock.dispatchEvent(new Event("release"));
        },
      });
    };
    Object.defineProperty(navigator, "wakeLock", { value: { request } });
  });
  const counts = () => page.evaluate("({ ...globalThis.counts })");
  await openMaking(page);
  await expect(page.getByText("The screen stays on while this page is open.")).toBeVisible();
  await turnTo(page, "Paper");
  await expect.poll(counts).toEqual({ taken: 1, released: 1 });
});

test("on a phone: large type, pictures in the steps, nothing to scroll sideways, axe clean", async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.setViewportSize({ width: 390, height: 844 });
  await openMaking(page);
  const said = page.locator(".guideSteps .said").first();
  expect(
    await said.evaluate((p) => Number.parseFloat(getComputedStyle(p).fontSize)),
  ).toBeGreaterThanOrEqual(20);
  await expect(page.locator('[data-step="cuffs"]').getByRole("img").first()).toBeVisible();
  const wider = await page.evaluate(() => {
    const leaf = document.querySelector("main");
    return (leaf?.scrollWidth ?? 0) - (leaf?.clientWidth ?? 0);
  });
  expect(wider).toBeLessThanOrEqual(0);
  expect(await findings(page)).toEqual([]);
});

test("German: the guide speaks it too, axe clean", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openMaking(page);
  await page.getByLabel("Language").first().selectOption("de");
  await expect(page.getByRole("button", { name: "Anleitung speichern" })).toBeVisible();
  await expect(stepSwitches(page).nth(6)).toHaveAccessibleName("7, Halsbündchen");
  expect(await findings(page)).toEqual([]);
});

test("cloth needed: by width and lay, with what it takes for granted", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Cloth");
  const result = page.locator("[data-cloth-result]");
  await expect(result).toHaveText(/^\d+.mm of body cloth and \d+.mm of rib$/u);
  const folded = await result.textContent();
  await page.getByLabel("How the body cloth is laid").selectOption("opened");
  await expect(result).not.toHaveText(folded ?? "");
  await page.getByText("What this takes for granted").click();
  await expect(page.getByText("Lengths are rounded up to 10")).toBeVisible();
});

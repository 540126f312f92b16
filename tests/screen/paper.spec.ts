import { readFileSync } from "node:fs";
import { expect, test } from "@playwright/test";
import { poppler } from "../support/pdf.ts";
import {
  keptPrint,
  makeButton,
  openPaper,
  piece,
  savedPdf,
  sheetCount,
  word,
} from "./paperPage.ts";
import { findings, number, typeNumber, watchFaults } from "./support.ts";

test.use({ viewport: { width: 1440, height: 900 } });

test("paper, way and size are words of a sentence; the sheets saved are told", async ({ page }) => {
  const faults = watchFaults(page);
  await openPaper(page);
  await expect(page.locator("main")).toContainText(/Plain rows would take \d+: \d+ saved\./u);
  const upright = await sheetCount(page);
  await word(page, "print.turn").selectOption("fewest");
  expect(await sheetCount(page)).toBeLessThanOrEqual(upright);
  await word(page, "paper.name").selectOption("own");
  await typeNumber(page, "sheet.width", "300");
  await typeNumber(page, "sheet.height", "400");
  expect(await sheetCount(page)).toBeLessThan(upright);
  const pdf = await savedPdf(page);
  const sizes = poppler("pdfinfo", pdf, ["-l", "9"]).match(/Page +3 size: +([\d.]+) x ([\d.]+)/u);
  const sides = [Number(sizes?.[1]), Number(sizes?.[2])].map((points) => (points / 72) * 25.4);
  expect(sides.sort((a, b) => a - b).map(Math.round)).toEqual([300, 400]);
  await word(page, "paper.name").selectOption("roll-610");
  await expect(word(page, "print.turn")).toHaveCount(0);
  expect(faults).toEqual([]);
});

test("a measured square is suited, told on the page and kept", async ({ page }) => {
  await openPaper(page);
  await expect(page.getByText("50 mm both ways: the printer is true.")).toBeVisible();
  await typeNumber(page, "print.along", "49.3");
  await typeNumber(page, "print.across", "50.45");
  // 50 / 49.3 and 50 / 50.45.
  await expect(page.locator("main")).toContainText(/drawn 101\.4.% .* and 99\.1.% across/u);
  await expect.poll(async () => (await keptPrint(page)).square.along).toBe(49.3);
  expect(poppler("pdftotext", await savedPdf(page))).toContain("Made for a printer");
});

test("what cannot be printed is refused beside the number, and the sheets stay", async ({
  page,
}) => {
  await openPaper(page);
  const before = await sheetCount(page);
  const refused = page.locator("main .refuse[role=alert]");
  for (const [field, text, told] of [
    ["print.left", "150", "Margin at the left must be"],
    ["print.overlap", "120", "Half of what a sheet prints is the most."],
    ["print.along", "300", "must be 45 mm to 55 mm"],
    ["print.along", "0", "must be 45 mm to 55 mm"],
  ] as const) {
    await typeNumber(page, field, text);
    await expect(refused.first()).toContainText(told);
    await expect(number(page, field)).toHaveAttribute("aria-invalid", "true");
    expect(await sheetCount(page)).toBe(before);
    await number(page, field).press("Escape");
    await expect(refused).toHaveCount(0);
  }
  await word(page, "paper.name").selectOption("own");
  await typeNumber(page, "sheet.width", "40");
  await expect(refused.first()).toContainText("The test square of 50 mm");
});

test("only the sheets that are wanted: typed, pressed on the map, and refused in one sentence", async ({
  page,
}) => {
  await openPaper(page);
  const wanted = page.locator("[data-wanted]");
  await wanted.fill("1-3, 5");
  await wanted.press("Enter");
  await expect(page.getByText(/4 of \d+ sheets, without title and map\./u)).toBeVisible();
  await expect(makeButton(page)).toHaveText("Make the PDF, 4 pages");
  expect(poppler("pdfinfo", await savedPdf(page))).toMatch(/Pages: +4\b/u);
  await wanted.fill("99");
  await wanted.press("Enter");
  await expect(page.locator("#wantedRefused")).toContainText("“99” is no sheet of the");
  await expect(makeButton(page)).toHaveText("Make the PDF, 4 pages");
  await wanted.press("Escape");
  await page.getByRole("button", { name: "Leave it out" }).click();
  await expect(wanted).toHaveValue("2-3, 5");
  await expect.poll(async () => (await keptPrint(page)).only.length).toBe(3);
  await page.keyboard.press("Control+z");
  await expect(wanted).toHaveValue("1-3, 5");
});

test("the bodies of the work are nested in one file, each a layer", async ({ page }) => {
  await openPaper(page);
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Make the nested PDF, 12 layers" }).click();
  const saved = await waits;
  expect(saved.suggestedFilename()).toBe("pennyfarrow-choir-nested.pdf");
  const pdf = readFileSync(await saved.path(), "latin1");
  // A layer a body, and one for all seam lines.
  expect(pdf.match(/\/Type\s*\/OCG\b/gu)).toHaveLength(13);
  await page.locator("[data-nested]").selectOption("women");
  await expect(
    page.getByRole("button", { name: /^Make the nested PDF, \d+ layers/u }),
  ).toBeEnabled();
});

test("one large page for a copy shop, one for a projector", async ({ page }) => {
  await openPaper(page);
  await page.locator("[data-large-paper]").selectOption("roll-610");
  for (const [button, name] of [
    ["Make the copy-shop file", /-copy-shop\.pdf$/u],
    ["Make the projector file", /-projector\.pdf$/u],
  ] as const) {
    const waits = page.waitForEvent("download");
    await page.getByRole("button", { name: button }).click();
    const saved = await waits;
    expect(saved.suggestedFilename()).toMatch(name);
    const told = poppler("pdfinfo", readFileSync(await saved.path()));
    const [, width] = /Page size: +([\d.]+) x/u.exec(told) ?? [];
    const roll = button.includes("copy") ? 610 : 1067;
    expect((Number(width) / 72) * 25.4).toBeCloseTo(roll, 0);
  }
});

test("German and inches, axe clean", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await openPaper(page);
  expect(await findings(page)).toEqual([]);
  await page.getByLabel("Unit").first().selectOption("in");
  await page.getByLabel("Language").first().selectOption("de");
  await expect(page.locator("main")).toContainText("Ein gedrucktes Prüfquadrat misst");
  await expect(number(page, "print.along")).toHaveValue("50");
  await expect(number(page, "print.left")).toHaveValue(
    "≈ 3⁄8".replace(" ", "\u00a0").replace("3⁄8", "⅜"),
  );
  await piece(page, "sleeve").focus();
  await page.keyboard.press("ArrowRight");
  expect(await findings(page)).toEqual([]);
});

test("on a phone nothing is scrolled sideways, axe clean", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.setViewportSize({ width: 390, height: 844 });
  await openPaper(page);
  const wider = await page.evaluate(() => {
    const leaf = document.querySelector("main");
    return (leaf?.scrollWidth ?? 0) - (leaf?.clientWidth ?? 0);
  });
  expect(wider).toBeLessThanOrEqual(0);
  expect(await findings(page)).toEqual([]);
});

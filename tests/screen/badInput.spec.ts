import { expect, type Page, test } from "@playwright/test";
import { check, number, openChoir, openDoors, turnTo, typeNumber, watchFaults } from "./support.ts";

const drawing = (page: Page): Promise<readonly (string | null)[]> =>
  page.locator("[data-piece] .cut").evaluateAll((all) => all.map((line) => line.getAttribute("d")));

/** The sentence beside a number, tied to it for a screen reader. */
const refusal = async (page: Page, field: string): Promise<string> => {
  const described = await number(page, field).getAttribute("aria-describedby");
  expect(await number(page, field).getAttribute("aria-invalid")).toBe("true");
  return (await page.locator(`main [id="${described}"]`).textContent()) ?? "";
};

test.beforeEach(async ({ page }) => {
  await openChoir(page);
});

test("an empty number is refused; the drawing stays", async ({ page }) => {
  const before = await drawing(page);
  await typeNumber(page, "raiseHem.by", "");
  expect(await refusal(page, "raiseHem.by")).toContain("still shows 50.8");
  expect(await drawing(page)).toEqual(before);
});

test("a text is refused, with what to type instead", async ({ page }) => {
  const before = await drawing(page);
  await typeNumber(page, "raiseHem.by", "two fingers");
  const sentence = await refusal(page, "raiseHem.by");
  expect(sentence).toContain("“two fingers” is no length. Give a number, such as 12.7.");
  await expect(number(page, "raiseHem.by")).toHaveValue("two fingers");
  expect(await drawing(page)).toEqual(before);
});

test("a value out of range is refused, with its range; Escape puts the good one back", async ({
  page,
}) => {
  const before = await drawing(page);
  await typeNumber(page, "raiseHem.by", "400");
  const sentence = await refusal(page, "raiseHem.by");
  expect(sentence).toMatch(/400.mm is refused; the table still shows 50\.8.mm\./u);
  expect(sentence).toMatch(/must be 0.mm to 300.mm/u);
  expect(await drawing(page)).toEqual(before);
  await number(page, "raiseHem.by").press("Escape");
  await expect(number(page, "raiseHem.by")).toHaveValue("50.8");
  await expect(page.locator("main .refuse")).toHaveCount(0);
});

test("96 for 960 is taken for centimetres, in words", async ({ page }) => {
  await turnTo(page, "Measures");
  await typeNumber(page, "measures.chest", "96");
  expect(await refusal(page, "measures.chest")).toContain("If you meant 96 cm, type 960.");
});

test("measures that disagree are asked about beside the measure, and drafted all the same", async ({
  page,
}) => {
  await turnTo(page, "Measures");
  await typeNumber(page, "measures.hand", "150");
  await expect(page.locator("main .doubt").first()).toContainText(/wrist/i);
  await expect(check(page, "measure-wrist")).toContainText("attend");
});

test("a V too deep is held or refused, and says so", async ({ page }) => {
  await typeNumber(page, "vInsert.depth", "300");
  expect(await refusal(page, "vInsert.depth")).toMatch(/must be 10.mm to 250.mm/u);
  // Within its range, but more than this body has room for once the hem is raised: held, in words.
  await typeNumber(page, "raiseHem.by", "300");
  await typeNumber(page, "vInsert.depth", "250");
  await expect(page.locator("[data-check^='rail-']").first()).toBeVisible();
});

test("a rib that cannot be sewn stops, and the numbers that mend it stand in the card", async ({
  page,
}) => {
  const faults = watchFaults(page);
  await turnTo(page, "Ribs");
  await typeNumber(page, "rib.stretch", "5 %");
  const cell = check(page, "hand-passes-cuff");
  await expect(cell).toContainText("stop");
  await cell.click();
  const card = page.getByRole("region", { name: "Hand through cuff" });
  await expect(card).toContainText("Measured");
  await card.locator('[data-field="cuff.ease"]').fill("60");
  await expect(cell).toContainText("sound");
  await turnTo(page, "Paper");
  await expect(page.getByRole("button", { name: /^Make the PDF/ })).toBeDisabled();
  expect(faults).toEqual([]);
});

test("a stop may be signed for, and then the file is made", async ({ page }) => {
  await page.locator('[data-word="vInsert.method"]').selectOption("cut-away");
  await turnTo(page, "Paper");
  await expect(page.getByRole("button", { name: /^Make the PDF/ })).toBeDisabled();
  await page.getByRole("button", { name: "Sign for it" }).click();
  await expect(page.getByText("Say why in a few words")).toBeVisible();
  await page.getByLabel("I will make it anyway, because").fill("for a display");
  await page.getByRole("button", { name: "Sign for it" }).click();
  await expect(page.getByText("Signed for: “for a display”.")).toBeVisible();
  await expect(page.getByRole("button", { name: /^Make the PDF/ })).toBeEnabled();
});

test("a broken file changes nothing that is typed", async ({ page }) => {
  await typeNumber(page, "raiseHem.by", "61");
  const waits = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a file" }).first().click();
  await (await waits).setFiles({
    name: "broken.json",
    mimeType: "application/json",
    buffer: Buffer.from('{ "format": "ribwr'),
  });
  await expect(page.getByRole("alert")).toContainText("“broken.json” is not opened");
  await expect(number(page, "raiseHem.by")).toHaveValue("61");
});

test("leaving the chapter puts the last good value back, and says so once", async ({ page }) => {
  await typeNumber(page, "raiseHem.by", "999");
  await turnTo(page, "Ribs");
  await expect(page.getByRole("status")).toContainText("Hem raised by is back at 50.8");
  await turnTo(page, "Alterations");
  await expect(number(page, "raiseHem.by")).toHaveValue("50.8");
});

test("without chest and height nothing is drafted, and each chapter says what it lacks", async ({
  page,
}) => {
  await page.getByRole("button", { name: "First page" }).first().click();
  await page.getByRole("button", { name: "Take measures" }).click();
  await expect(page.getByText("Needed before anything can be drafted.").first()).toBeVisible();
  for (const chapter of ["Block", "Alterations", "Ribs", "Paper"] as const) {
    await turnTo(page, chapter);
    await expect(page.getByText("No block yet.").first()).toBeVisible();
  }
  await turnTo(page, "Measures");
  await typeNumber(page, "measures.chest", "950");
  await typeNumber(page, "measures.height", "1650");
  await turnTo(page, "Alterations");
  await expect(page.locator("[data-piece='front']")).toBeVisible();
});

test("the first page opens without a kept work", async ({ page }) => {
  await page.evaluate(() => indexedDB.deleteDatabase("ribwright"));
  await openDoors(page).catch(() => undefined);
  await expect(page.getByText("Ribwright").first()).toBeVisible();
});

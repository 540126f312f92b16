import { expect, type Page, test } from "@playwright/test";
import {
  check,
  kept,
  keptChoices,
  number,
  openChoir,
  pin,
  pull,
  turnTo,
  typeNumber,
  watchFaults,
} from "./support.ts";

/** Every number of the five alterations: how it is typed, and which way its pin is pulled. */
const NUMBERS = [
  { field: "moveSideSeams.by", typed: "20", mm: 20, pull: [14, 0], less: false },
  { field: "raiseHem.by", typed: "6 cm", mm: 60, pull: [0, -14], less: false },
  { field: "endSleeve.aboveWrist", typed: "2 1/4 in", mm: 57.15, pull: [0, -14], less: false },
  { field: "vInsert.halfWidth", typed: "30,5", mm: 30.5, pull: [6, -2], less: false },
  { field: "vInsert.depth", typed: "+10", mm: 60.8, pull: [0, 12], less: false },
  { field: "neckline.lowerFront", typed: "15", mm: 15, pull: [0, 12], less: false },
  { field: "neckline.lowerBack", typed: "12", mm: 12, pull: [0, 12], less: false },
  { field: "neckline.widen", typed: "10", mm: 10, pull: [10, 10], less: false },
] as const;

const buttonNeckline = async (page: Page): Promise<void> => {
  await page.getByRole("switch", { name: "Neckline" }).click();
  await expect(page.getByRole("switch", { name: "Neckline" })).toBeChecked();
};

const numberIn = async (page: Page, field: string): Promise<number> =>
  Number(await number(page, field).getAttribute("aria-valuenow"));

const cutLines = (page: Page): Promise<readonly (string | null)[]> =>
  page.locator("[data-piece] .cut").evaluateAll((all) => all.map((line) => line.getAttribute("d")));

test.beforeEach(async ({ page }) => {
  await openChoir(page);
  await buttonNeckline(page);
});

for (const {
  field,
  typed,
  mm,
  pull: [dx, dy],
} of NUMBERS) {
  test(`${field} by sentence, by dragging and by keyboard`, async ({ page }) => {
    const faults = watchFaults(page);
    await typeNumber(page, field, typed);
    expect(await numberIn(page, field)).toBeCloseTo(mm, 6);
    await expect(page.locator("[data-settled]")).toContainText("checks sound");

    await pull(page, field, dx, dy);
    const pulled = await numberIn(page, field);
    expect(pulled).toBeGreaterThan(mm);
    expect(pulled * 2).toBeCloseTo(Math.round(pulled * 2), 6);

    await pin(page, field).focus();
    await page.keyboard.press("ArrowUp");
    expect(await numberIn(page, field)).toBeCloseTo(pulled + 1, 6);
    await page.keyboard.press("Shift+ArrowDown");
    expect(await numberIn(page, field)).toBeCloseTo(pulled + 0.9, 6);
    await number(page, field).press("ArrowDown");
    expect(await numberIn(page, field)).toBeCloseTo(pulled - 0.1, 6);
    expect(faults).toEqual([]);
  });
}

test("each button takes its alteration off, and puts it on again", async ({ page }) => {
  await typeNumber(page, "neckline.lowerFront", "15");
  for (const name of ["Neckline", "Side seams", "Hem", "Sleeve end", "V-insert"]) {
    const button = page.getByRole("switch", { name });
    const before = await cutLines(page);
    await button.click();
    await expect(button).not.toBeChecked();
    expect(await cutLines(page)).not.toEqual(before);
    await button.click();
    await expect(button).toBeChecked();
    expect(await cutLines(page)).toEqual(before);
  }
});

test("checks follow: a V cut away attends or stops, one drafted to fit is sound", async ({
  page,
}) => {
  const verdict = check(page, "v-insert-match");
  await expect(verdict).toContainText("sound");
  await page.locator('[data-word="vInsert.method"]').selectOption("cut-away");
  await expect(verdict).toContainText("stop");
  await verdict.click();
  const card = page.getByRole("region", { name: "V-insert to the front" });
  await expect(card).toContainText("Measured");
  await expect(page.locator('[data-edge="front.v"]')).toHaveClass(/checked/);
  await page.keyboard.press("Escape");
  await expect(card).toBeHidden();
  await expect(verdict).toBeFocused();
});

test("Escape while dragging puts the value back, and leaves no step", async ({ page }) => {
  const head = await pin(page, "raiseHem.by").locator(".pinHead").boundingBox();
  if (!head) throw new Error("no pin");
  await page.mouse.move(head.x + 6, head.y + 6);
  await page.mouse.down();
  await page.mouse.move(head.x + 6, head.y - 30, { steps: 4 });
  expect(await numberIn(page, "raiseHem.by")).toBeGreaterThan(50.8);
  await page.keyboard.press("Escape");
  await page.mouse.up();
  expect(await numberIn(page, "raiseHem.by")).toBe(50.8);
  await expect(page.getByRole("button", { name: "Undo: Neckline buttoned" })).toBeEnabled();
});

test("a pin stops at its limit and says so", async ({ page }) => {
  await pull(page, "moveSideSeams.by", 400, 0);
  expect(await numberIn(page, "moveSideSeams.by")).toBe(60);
  await pin(page, "moveSideSeams.by").focus();
  await expect(pin(page, "moveSideSeams.by")).toContainText("60, the most");
});

test("undo to the start and redo to the end give the same work", async ({ page }) => {
  await typeNumber(page, "raiseHem.by", "70");
  await pull(page, "moveSideSeams.by", 10, 0);
  await turnTo(page, "Ribs");
  await typeNumber(page, "cuff.ease", "5");
  await turnTo(page, "Measures");
  await typeNumber(page, "measures.waist", "850");
  await page.getByRole("textbox", { name: "Name", exact: true }).fill("Odile M");
  await page.waitForTimeout(600);
  const end = await kept(page);
  const undo = page.getByRole("button", { name: /^Undo: / });
  while (await undo.count()) await undo.click();
  await expect(page.getByRole("button", { name: "Undo, nothing yet" })).toBeDisabled();
  await page.waitForTimeout(600);
  expect(await kept(page)).not.toEqual(end);
  const redo = page.getByRole("button", { name: /^Redo: / });
  while (await redo.count()) await redo.click();
  await page.waitForTimeout(600);
  expect(await kept(page)).toEqual(end);
});

test("steps are named", async ({ page }) => {
  await typeNumber(page, "raiseHem.by", "60");
  await expect(
    page.getByRole("button", { name: "Undo: Hem raised by: 50.8 mm to 60 mm" }),
  ).toBeVisible();
  await page.keyboard.press("Control+z");
  expect(await numberIn(page, "raiseHem.by")).toBe(50.8);
  await page.keyboard.press("Control+Shift+z");
  expect(await numberIn(page, "raiseHem.by")).toBe(60);
});

test("inches show fractions, take them, and change nothing that is kept", async ({ page }) => {
  await page.waitForTimeout(400);
  const before = await keptChoices(page);
  await page.getByLabel("Unit").first().selectOption("in");
  await expect(number(page, "moveSideSeams.by")).toHaveValue("½");
  await expect(number(page, "raiseHem.by")).toHaveValue("2");
  await page.waitForTimeout(400);
  expect(await keptChoices(page)).toEqual(before);
  await typeNumber(page, "raiseHem.by", "2 3/16");
  expect(await numberIn(page, "raiseHem.by")).toBeCloseTo(55.5625, 6);
  await typeNumber(page, "raiseHem.by", "55mm");
  await expect(number(page, "raiseHem.by")).toHaveValue(/^≈/);
  await number(page, "raiseHem.by").press("ArrowUp");
  expect(await numberIn(page, "raiseHem.by")).toBeCloseTo(55 + 25.4 / 16, 6);
});

test("a seam and its partner light together; old lines can be hidden", async ({ page }) => {
  const seam = page.locator('[data-edge="front.side"]');
  const box = await seam.boundingBox();
  if (!box) throw new Error("no seam");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height * 0.3);
  await expect(seam).toHaveClass(/lit/);
  await expect(page.locator('[data-edge="back.side"]')).toHaveClass(/partner/);
  await expect(page.locator("[data-piece] .old")).toHaveCount(3);
  await page.getByRole("button", { name: /^Before and after/ }).click();
  await expect(page.locator("[data-piece] .old")).toHaveCount(0);
});

test("zoom, pan and fit; a length measured along a seam", async ({ page }) => {
  const edge = page.locator('[data-edge="front.raglan"]');
  const fitted = await edge.boundingBox();
  await page.getByRole("button", { name: "Closer" }).click();
  const closer = await edge.boundingBox();
  expect((closer?.height ?? 0) / (fitted?.height ?? 1)).toBeCloseTo(1.25, 1);
  await page.getByRole("button", { name: "Fit", exact: true }).click();
  expect(await edge.boundingBox()).toEqual(fitted);
  await page.getByRole("button", { name: "Measure", exact: true }).click();
  const side = await page.locator('[data-edge="front.side"]').boundingBox();
  if (!side) throw new Error("no side");
  await page.mouse.click(side.x + 1, side.y + 6);
  await page.mouse.click(side.x + 1, side.y + side.height - 6);
  await expect(page.locator("[data-measured]")).toContainText("along Front, side");
});

test("T reads the drawing as a table with the same figures", async ({ page }) => {
  const figure = await page.locator('[data-figure="front.raglan"]').textContent();
  await page.locator('[data-piece="front"]').focus();
  await page.keyboard.press("t");
  const table = page.getByRole("table", { name: "Edges of the front" });
  await expect(table.getByRole("row", { name: /^raglan/ })).toContainText(figure ?? "none");
  await expect(table.getByRole("row", { name: /^raglan/ })).toContainText("Sleeve, front raglan");
});

import { expect, test } from "@playwright/test";
import { poppler } from "../support/pdf.ts";
import { dragPiece, keptPrint, openPaper, piece, savedPdf, sheetCount } from "./paperPage.ts";

test.use({ viewport: { width: 1440, height: 900 } });

test("on the map a click looks at a sheet, and another leaves it out; through a piece too", async ({
  page,
}) => {
  await openPaper(page);
  const wanted = page.locator("[data-wanted]");
  const looked = page.getByLabel("as it leaves the printer");
  const cell = page.locator('[data-cell="A2"] rect');
  await cell.click({ position: { x: 4, y: 4 } });
  await expect(looked).toHaveValue("A2");
  await expect(wanted).toHaveValue("");
  await cell.click({ position: { x: 4, y: 4 } });
  await expect(wanted).toHaveValue(/^1, 3-\d+$/u);
  await cell.click({ position: { x: 4, y: 4 } });
  await expect(wanted).toHaveValue("");
  const box = await piece(page, "back").boundingBox();
  if (!box) throw new Error("No back.");
  await page.mouse.click(box.x + 0.2 * box.width, box.y + 0.9 * box.height);
  await expect(looked).not.toHaveValue("A2");
  await expect(page.locator("[data-lie]")).toHaveText("as they are packed");
});

test("a piece is dragged on the map: sheets follow, it is kept and printed, and undone at once", async ({
  page,
}) => {
  await openPaper(page);
  const packed = await sheetCount(page);
  await dragPiece(page, "sleeve", 260, 40);
  await expect(page.locator("[data-lie]")).toHaveText("as you laid them");
  await expect.poll(() => sheetCount(page)).not.toBe(packed);
  const laid = await sheetCount(page);
  const kepts = async () => (await keptPrint(page)).placed.length;
  await expect.poll(kepts).toBe(7);
  expect(poppler("pdfinfo", await savedPdf(page))).toMatch(new RegExp(`Pages: +${laid}\\b`, "u"));
  await page.keyboard.press("Control+z");
  await expect(page.locator("[data-lie]")).toHaveText("as they are packed");
  expect(await sheetCount(page)).toBe(packed);
  await page.keyboard.press("Control+Shift+z");
  expect(await sheetCount(page)).toBe(laid);
  await page.getByRole("button", { name: "Put back as packed" }).click();
  expect(await sheetCount(page)).toBe(packed);
});

test("by keys: arrows move a piece, R turns it, and what lies over another is told", async ({
  page,
}) => {
  await openPaper(page);
  await piece(page, "cuff").focus();
  const at = async () => (await keptPrint(page)).placed.find((own) => own.piece === "cuff");
  await page.keyboard.press("ArrowRight");
  await expect.poll(at).toBeDefined();
  const first = await at();
  await page.keyboard.press("ArrowRight");
  await expect.poll(async () => (await at())?.x).toBeCloseTo((first?.x ?? 0) + 10, 1);
  await page.keyboard.press("Shift+ArrowRight");
  await expect.poll(async () => (await at())?.x).toBeCloseTo((first?.x ?? 0) + 11, 1);
  await page.keyboard.press("r");
  await expect.poll(async () => (await at())?.turn).toBe(((first?.turn ?? 0) + 90) % 360);
  await page.keyboard.press("Control+z");
  await expect(page.locator("[data-lie]")).toHaveText("as they are packed");
  const [cuff, front] = [
    await piece(page, "cuff").boundingBox(),
    await piece(page, "front").boundingBox(),
  ];
  if (!cuff || !front) throw new Error("The map is not there.");
  await dragPiece(
    page,
    "cuff",
    front.x + front.width / 2 - cuff.x - cuff.width / 2,
    front.y + 0.7 * front.height - cuff.y - cuff.height / 2,
  );
  await expect(page.locator("main .refuse[role=alert]")).toContainText("lie over each other");
});

test("Escape while dragging puts the piece back", async ({ page }) => {
  await openPaper(page);
  const box = await piece(page, "sleeve").boundingBox();
  if (!box) throw new Error("No sleeve.");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 80, box.y + box.height / 2, { steps: 5 });
  await expect(page.locator("[data-lie]")).toHaveText("as you laid them");
  await page.keyboard.press("Escape");
  await expect(page.locator("[data-lie]")).toHaveText("as they are packed");
  await page.mouse.up();
  await expect(page.locator("[data-lie]")).toHaveText("as they are packed");
});

test("the sheet that is looked at has its test square where the file has it", async ({ page }) => {
  await openPaper(page);
  const pdf = await savedPdf(page);
  const picker = page.getByLabel("as it leaves the printer");
  const square = page.locator(".testSquare");
  // Page by page, after title and map: the words stand in the middle of the square.
  for (const [i, name] of ["A1", "A2", "A3"].entries()) {
    await picker.selectOption(name);
    await expect(square).toHaveCount(1);
    const [sheet, box] = [
      await page.locator(".oneSheet").boundingBox(),
      await square.boundingBox(),
    ];
    if (!sheet || !box) throw new Error("No sheet is shown.");
    const words = poppler("pdftotext", pdf, ["-bbox", "-f", `${i + 3}`, "-l", `${i + 3}`]);
    const [, width] = /page width="([\d.]+)"/u.exec(words) ?? [];
    const at = /xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)" yMax="([\d.]+)">both</u.exec(words);
    const ways = /xMax="([\d.]+)" yMax="[\d.]+">ways</u.exec(words);
    expect(at && ways, name).toBeTruthy();
    const middle = (Number(at?.[1]) + Number(ways?.[1])) / 2 / Number(width);
    const shown = (box.x + box.width / 2 - sheet.x) / sheet.width;
    expect(Math.abs(shown - middle), name).toBeLessThan(0.01);
  }
});

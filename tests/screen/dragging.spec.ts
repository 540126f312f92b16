import { expect, type Page, test } from "@playwright/test";
import { kept, openChoir, pin } from "./support.ts";

/**
 * What a pull of the underarm writes, counted and not timed: it follows the hand because a move
 * touches only what it changes (npm run bench:studio -- drag).
 */
const MOVES = 8;

/** Notes each attribute and text that is written on the page from now on, as "where: what". */
const watchWriting = (page: Page): Promise<void> =>
  page.evaluate(`
    globalThis.written = [];
    const whereOf = (node) => {
      const at = node.nodeType === 1 ? node : node.parentElement;
      const pin = at?.closest("[data-pin]");
      if (pin) return "pin " + pin.dataset.pin;
      return (at?.closest("main, .spine, .headL, .headR, .tape, .draw")?.getAttribute("class")) ?? "elsewhere";
    };
    new MutationObserver((all) => {
      for (const one of all) written.push(whereOf(one.target) + ": " + (one.attributeName ?? "text"));
    }).observe(document.body, { subtree: true, attributes: true, characterData: true, childList: true });
  `);

const writtenSince = (page: Page): Promise<readonly string[]> => page.evaluate("written");

test.beforeEach(async ({ page }) => {
  await openChoir(page);
  await page.waitForTimeout(600);
});

/** Takes the underarm's pin, moves it a little every frame, and says what the moves wrote. */
const pulled = async (page: Page): Promise<readonly string[]> => {
  const head = await pin(page, "moveSideSeams.by").locator(".pinHead").boundingBox();
  if (!head) throw new Error("There is no pin.");
  const [x, y] = [head.x + head.width / 2, head.y + head.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 4, y);
  await page.waitForTimeout(300);
  await watchWriting(page);
  for (let i = 1; i <= MOVES; i++) await page.mouse.move(x + 4 + 3 * i, y);
  return writtenSince(page);
};

test("a move of the underarm writes nothing that it does not change", async ({ page }) => {
  const written = await pulled(page);
  await page.mouse.up();
  const places = new Set(written.map((one) => one.split(": ")[0]));
  expect(places).toContain("pin moveSideSeams.by");
  expect(places).toContain("draw");
  for (const still of ["spine cloth", "headR", "elsewhere", "pin neckline.widen"]) {
    expect(places).not.toContain(still);
  }
  // Lettering and pins are moved by their groups: nothing of them is set or shaped anew.
  const shaped = written.filter((one) => /: (?:x|y|cx|cy)$/.test(one) && one.startsWith("draw"));
  expect(shaped).toEqual([]);
  const drawn = written.filter((one) => one.startsWith("draw")).length;
  expect(drawn / MOVES).toBeLessThan(60);
});

test("while a pin is held nothing is kept on the device; let go, it is", async ({ page }) => {
  const before = await kept(page);
  await pulled(page);
  await page.waitForTimeout(700);
  expect(await kept(page)).toBe(before);
  await page.mouse.up();
  await expect.poll(() => kept(page)).not.toBe(before);
});

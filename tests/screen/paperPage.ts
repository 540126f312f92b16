import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { kept, openChoir, turnTo } from "./support.ts";

export const openPaper = async (page: Page): Promise<void> => {
  await openChoir(page);
  await turnTo(page, "Paper");
};

export const word = (page: Page, id: string) => page.locator(`main [data-word="${id}"]`);
export const piece = (page: Page, name: string) => page.locator(`[data-map-piece="${name}"]`);
export const makeButton = (page: Page) => page.getByRole("button", { name: /^Make the PDF/u });
export const sheetCount = async (page: Page): Promise<number> =>
  Number((await makeButton(page).textContent())?.match(/\d+/u)?.[0]);

export const savedPdf = async (page: Page): Promise<Buffer> => {
  const waits = page.waitForEvent("download");
  await makeButton(page).click();
  return readFileSync(await (await waits).path());
};

type Print = {
  readonly placed: readonly { readonly piece: string; readonly x: number; readonly turn: number }[];
  readonly only: readonly string[];
  readonly square: { readonly along: number };
};
export const keptPrint = async (page: Page): Promise<Print> =>
  JSON.parse((await kept(page)) ?? "{}").print;

/** Drags a piece by its middle, in px, as a hand does. */
export const dragPiece = async (
  page: Page,
  name: string,
  dx: number,
  dy: number,
): Promise<void> => {
  const box = await piece(page, name).boundingBox();
  if (!box) throw new Error(`No ${name} on the map.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i++) await page.mouse.move(x + (dx * i) / 8, y + (dy * i) / 8);
  await page.mouse.up();
};

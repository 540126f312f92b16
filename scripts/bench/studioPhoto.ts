import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "@playwright/test";
import type { Picture } from "../../src/trace/photo/picture.ts";
import { greyPng } from "../../tests/support/photo/greyPng.ts";
import { largePicture } from "../../tests/support/photo/largePicture.ts";

export type Tell = (what: string, value: number, limit: number, unit: string) => void;

/** The page draws 30 frames a second or more while its worker is busy (issue 6). */
const FRAME = 33.3;
const LINE_FOUND = 2000;
const WAIT = 120_000;

/** Each pixel four times: what 48 megapixels cost does not depend on what they show. */
const twice = ({ grey, width, height }: Picture): Picture => ({
  width: 2 * width,
  height: 2 * height,
  grey: Uint8Array.from(
    { length: 4 * width * height },
    (_, k) => grey[Math.floor(k / (4 * width)) * width + Math.floor((k % (2 * width)) / 2)] ?? 0,
  ),
});

// As text: what runs in the page knows nothing of the program that tsx makes of this file.
const watch = (page: Page): Promise<void> =>
  page.evaluate(`
    {
      const frames = [];
      globalThis.frames = frames;
      // A watch that was ended may have one frame still to come: it draws no other on.
      const next = (at) => {
        if (globalThis.frames !== frames) return;
        frames.push(at);
        requestAnimationFrame(next);
      };
      requestAnimationFrame(next);
    }
  `);

/** Waits between frames since the watch began, ms. */
const waits = async (page: Page): Promise<readonly number[]> => {
  const frames = await page.evaluate<number[]>(
    "(() => { const { frames } = globalThis; globalThis.frames = null; return frames; })()",
  );
  return frames.slice(1).map((at, i) => at - (frames[i] ?? at));
};

const tellFrames = async (page: Page, what: string, tell: Tell): Promise<void> => {
  const all = await waits(page);
  const mean = all.reduce((sum, wait) => sum + wait, 0) / Math.max(1, all.length);
  tell(`${what}, time a frame, mean of ${all.length}`, mean, FRAME, "ms");
  console.log(`     longest ${Math.max(...all).toFixed(0)} ms`);
};

const choose = async (page: Page, name: string, picture: Picture): Promise<void> => {
  // Too large for one message: the browser reads it from a file.
  const folder = mkdtempSync(join(tmpdir(), "ribwright-photo-"));
  const file = join(folder, name);
  writeFileSync(file, greyPng(picture));
  await page.locator("input[data-file='picture']").first().setInputFiles(file);
  await page.getByText(name).first().waitFor({ timeout: WAIT });
  await page.locator('[data-grip="mark.D"]').waitFor({ timeout: WAIT });
  rmSync(folder, { recursive: true });
};

/** Pictures of 48 and 12 megapixels on the photo page: how it draws meanwhile, how long a line takes. */
export const benchPhoto = async (browser: Browser, home: string, tell: Tell): Promise<void> => {
  const { picture, distances } = largePicture();
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(home);
  await page.getByRole("button", { name: "Bring a block" }).click();
  await page.locator('[data-way="photo"]').click();
  await page.getByRole("button", { name: "Choose a picture" }).waitFor();
  await watch(page);
  await choose(page, "large.png", twice(picture));
  await tellFrames(page, "48 megapixels opened and marks found", tell);
  await choose(page, "usual.png", picture);
  for (const { from, to, length } of distances) {
    const field = page.locator(`[data-mm="${from}-${to}"]`);
    await field.fill(String(length));
    await field.press("Enter");
  }
  await page.locator("[data-foretold]").waitFor();
  await watch(page);
  await page.getByRole("button", { name: "Lay it on the table" }).click();
  const find = page.getByRole("button", { name: "Find the outline" });
  await find.and(page.locator(":enabled")).waitFor({ timeout: WAIT });
  await tellFrames(page, "12 megapixels laid on the table", tell);
  await watch(page);
  const began = Date.now();
  await find.click();
  await page.locator('[data-grip="point.0"]').waitFor({ timeout: WAIT });
  const took = Date.now() - began;
  await tellFrames(page, "line found", tell);
  tell("line found at 12 megapixels, click to drawn", took, LINE_FOUND, "ms");
  await page.close();
};

import { readFileSync } from "node:fs";
import { expect, type Page } from "@playwright/test";
import type { Given } from "./ownBlockFiles.ts";
import { turnTo } from "./support.ts";

export const door = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "First page" }).first().click();
  await page.getByRole("button", { name: "Bring a block" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Your own block" })).toBeVisible();
};

export const way = (page: Page, name: "photo" | "drawing" | "tape") =>
  page.locator(`[data-way="${name}"]`).click();

export const open = async (page: Page, file: Given): Promise<void> => {
  const waits = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: /^Open (?:an SVG|another)/ }).click();
  await (await waits).setFiles(file);
};

export const title = (page: Page, name: string) =>
  expect(page.getByRole("heading", { level: 1, name })).toBeVisible();

export const next = (page: Page, to: string) =>
  page.getByRole("button", { name: `On to the ${to}` }).click();

/** A drawing opened, its size confirmed. */
export const drawn = async (page: Page, file: Given): Promise<void> => {
  await way(page, "drawing");
  await open(page, file);
  await expect(page.getByText(`“${file.name}” is open.`)).toBeVisible();
  await page.getByRole("button", { name: "The size is right" }).click();
};

/** On as far as the doctor. */
export const toDoctor = async (page: Page): Promise<void> => {
  await next(page, "edges");
  await next(page, "turnings");
  await next(page, "doctor");
  await title(page, "Doctor");
};

export const downloaded = async (page: Page, name: RegExp | string): Promise<Buffer> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name, exact: typeof name === "string" }).click();
  return readFileSync(await (await waits).path());
};

type Report = {
  readonly block: Readonly<Record<string, { edges: Readonly<Record<string, { length: number }>> }>>;
  readonly pieces: Report["block"];
};

export const report = async (page: Page): Promise<Report> => {
  await turnTo(page, "Paper");
  return JSON.parse((await downloaded(page, "Report")).toString());
};

export const undo = (page: Page) => page.getByRole("button", { name: /^Undo: / }).first();
export const finding = (page: Page, id: string) => page.locator(`[data-finding="${id}"]`);
export const refusal = (page: Page) => page.locator("main .refuse");

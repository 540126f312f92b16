import { expect, type Locator, type Page } from "@playwright/test";

/** What the studio keeps and shows, read from the page as a maker sees it. */
export const CHAPTERS = [
  "Measures",
  "Cloth",
  "Block",
  "Alterations",
  "Ribs",
  "Turnings",
  "Paper",
  "Making up",
] as const;
export type ChapterName = (typeof CHAPTERS)[number];

/** The page's own faults fail the test that met them. */
export const watchFaults = (page: Page): readonly string[] => {
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  return faults;
};

export const openDoors = async (page: Page): Promise<void> => {
  await page.goto("./");
  await expect(page.getByRole("heading", { name: "Three doors" })).toBeVisible();
};

export const openChoir = async (page: Page): Promise<void> => {
  await openDoors(page);
  await page.getByRole("button", { name: "Open the choir" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Alterations" })).toBeVisible();
};

export const turnTo = async (page: Page, chapter: ChapterName): Promise<void> => {
  await page
    .getByRole("navigation", { name: "Chapters" })
    .getByRole("button", { name: chapter, exact: true })
    .click();
  await expect(page.getByRole("heading", { level: 1, name: chapter })).toBeVisible();
};

/** A number of the open chapter, by the choice it changes. */
export const number = (page: Page, field: string): Locator =>
  page.locator(`main [data-field="${field}"]`);

export const typeNumber = async (page: Page, field: string, text: string): Promise<void> => {
  await number(page, field).fill(text);
  await number(page, field).press("Enter");
};

export const pin = (page: Page, field: string): Locator => page.locator(`[data-pin="${field}"]`);

/** Pulls a pin by its head, in px, in steps as a hand does. */
export const pull = async (page: Page, field: string, dx: number, dy: number): Promise<void> => {
  const head = pin(page, field).locator(".pinHead");
  const box = await head.boundingBox();
  if (!box) throw new Error(`No pin for ${field}.`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i++) await page.mouse.move(x + (dx * i) / 8, y + (dy * i) / 8);
  await page.mouse.up();
};

/** The work that this device keeps, as its file's text. */
export const kept = (page: Page): Promise<string | null> =>
  page.evaluate(
    () =>
      new Promise<string | null>((done) => {
        const open = indexedDB.open("ribwright");
        open.onerror = () => done(null);
        open.onsuccess = () => {
          const read = open.result.transaction("work").objectStore("work").get("handbook");
          read.onerror = () => done(null);
          read.onsuccess = () => done(read.result?.text ?? null);
        };
      }),
  );

type Choices = {
  readonly alterations: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
};

/** The choices that are kept, once they have settled. */
export const keptChoices = async (page: Page): Promise<Choices> => {
  const text = await kept(page);
  return JSON.parse(text ?? "{}").choices;
};

export const check = (page: Page, id: string): Locator => page.locator(`[data-check="${id}"]`);

type Finding = { readonly id: string; readonly nodes: readonly { readonly html: string }[] };

/** Every rule of WCAG 2.2 A and AA that axe knows, on the page as it stands. */
export const findings = async (page: Page): Promise<readonly string[]> => {
  await page.addScriptTag({ path: "node_modules/axe-core/axe.min.js" });
  const found: readonly Finding[] = await page.evaluate(
    "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then((r) => r.violations)",
  );
  return found.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`,
  );
};

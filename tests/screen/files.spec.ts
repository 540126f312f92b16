import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { kept, number, openChoir, openDoors, turnTo, typeNumber } from "./support.ts";

const savedCopy = async (page: Page): Promise<string> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save a copy" }).first().click();
  return readFileSync(await (await waits).path(), "utf8");
};

const bring = async (page: Page, name: string, text: string): Promise<void> => {
  const waits = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a file" }).first().click();
  const chooser = await waits;
  await chooser.setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
};

const said = (page: Page) => page.locator(".notices [role=alert], .notices [role=status]");

test("a reload restores the work, without a word lost", async ({ page }) => {
  await openChoir(page);
  await typeNumber(page, "raiseHem.by", "62.5");
  await page.waitForTimeout(500);
  const before = await kept(page);
  await page.reload();
  await expect(page.locator(".who", { hasText: "Odile Marrack" })).toBeVisible();
  await turnTo(page, "Alterations");
  await expect(number(page, "raiseHem.by")).toHaveValue("62.5");
  expect(await kept(page)).toEqual(before);
});

test("a change is kept even when the page is left at once", async ({ page }) => {
  await openChoir(page);
  await typeNumber(page, "raiseHem.by", "44");
  await page.goto("about:blank");
  await page.goto("./");
  await turnTo(page, "Alterations");
  await expect(number(page, "raiseHem.by")).toHaveValue("44");
});

test("a copy saved and opened again is the same work; undo brings back what was there", async ({
  page,
}) => {
  await openChoir(page);
  await typeNumber(page, "vInsert.depth", "66");
  const copy = await savedCopy(page);
  await typeNumber(page, "vInsert.depth", "40");
  await bring(page, "mine.ribwright.json", copy);
  await expect(said(page)).toContainText("“mine.ribwright.json” is open.");
  await expect(number(page, "vInsert.depth")).toHaveValue("66");
  expect(await savedCopy(page)).toEqual(copy);
  await page.getByRole("button", { name: "Undo: opened mine.ribwright.json" }).click();
  await expect(number(page, "vInsert.depth")).toHaveValue("40");
});

const REFUSED = [
  [
    "a picture",
    "holiday.json",
    "\u0089PNG\r\n",
    /“holiday.json” is not opened: it is no Ribwright handbook/,
  ],
  [
    "another program's file",
    "list.json",
    '{"name":"shopping"}',
    /it is no Ribwright handbook or block/,
  ],
  [
    "a handbook cut short",
    "cut.json",
    '{ "format": "ribwright-project", "ver',
    /it is cut short or damaged/,
  ],
  [
    "a later version",
    "later.json",
    '{ "format": "ribwright-project", "version": 9 }',
    /saved by a later Ribwright, version 9; this is version 3/,
  ],
  [
    "a block that lacks an edge",
    "block.json",
    '{ "format": "ribwright-block", "version": 1, "unit": "mm", "pieces": {} }',
    /cannot be taken/,
  ],
] as const;

for (const [what, name, text, sentence] of REFUSED) {
  test(`${what} is refused with one sentence, and the work is untouched`, async ({ page }) => {
    await openChoir(page);
    await typeNumber(page, "raiseHem.by", "62.5");
    await page.waitForTimeout(400);
    const before = await kept(page);
    await bring(page, name, text);
    await expect(said(page)).toHaveCount(1);
    await expect(said(page)).toContainText(sentence);
    await expect(number(page, "raiseHem.by")).toHaveValue("62.5");
    await page.waitForTimeout(400);
    expect(await kept(page)).toEqual(before);
  });
}

test("a value out of range in a handbook is refused, and named", async ({ page }) => {
  await openChoir(page);
  const copy = JSON.parse(await savedCopy(page));
  copy.choices.alterations.raiseHem.by = 900;
  await bring(page, "wild.json", JSON.stringify(copy));
  await expect(said(page)).toContainText("choices.alterations.raiseHem.by");
  await expect(said(page)).toContainText("0 to 300 mm");
});

test("a handbook of version 1 is brought up to date", async ({ page }) => {
  await openDoors(page);
  const old = {
    format: "ribwright-project",
    version: 1,
    unit: "mm",
    body: { id: "ada", name: "Ada Thistlewood", measures: { chest: 930, height: 1640 } },
    choices: { alterations: { raiseHem: { on: true, by: 40 } } },
  };
  const waits = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a handbook you saved" }).click();
  const file = { name: "old.json", mimeType: "application/json" };
  await (await waits).setFiles({ ...file, buffer: Buffer.from(JSON.stringify(old)) });
  await expect(page.locator(".who", { hasText: "Ada Thistlewood" })).toBeVisible();
  await turnTo(page, "Alterations");
  await expect(number(page, "raiseHem.by")).toHaveValue("40");
  expect(JSON.parse(await savedCopy(page)).version).toBe(3);
});

test("a block of one's own is brought, and altered like a drafted one", async ({ page }) => {
  await openChoir(page);
  await turnTo(page, "Paper");
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Report", exact: true }).click();
  const report = JSON.parse(readFileSync(await (await waits).path(), "utf8"));
  const edgesOf = (piece: { edges: Record<string, { path: string }> }) => ({
    edges: Object.fromEntries(Object.entries(piece.edges).map(([name, e]) => [name, e.path])),
  });
  const { front, back, sleeve } = report.block;
  const pieces = { front: edgesOf(front), back: edgesOf(back), sleeve: edgesOf(sleeve) };
  await bring(
    page,
    "own.json",
    JSON.stringify({ format: "ribwright-block", version: 1, unit: "mm", pieces }),
  );
  await expect(page.getByRole("heading", { level: 1, name: "Block" })).toBeVisible();
  await expect(page.getByText("“own.json” is taken as it is.")).toBeVisible();
  await turnTo(page, "Alterations");
  const again = page.waitForEvent("download");
  await turnTo(page, "Paper");
  await page.getByRole("button", { name: "Report", exact: true }).click();
  const altered = JSON.parse(readFileSync(await (await again).path(), "utf8"));
  const length = (r: typeof report) => r.pieces.front.edges.raglan.length;
  expect(length(altered)).toBeCloseTo(length(report), 3);
});

test("a link carries one body and its choices in its fragment", async ({ page, context }) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await openChoir(page);
  await typeNumber(page, "raiseHem.by", "33");
  await page.getByRole("button", { name: "Copy a link" }).first().click();
  const link = await page.getByRole("textbox", { name: "Copy a link" }).inputValue();
  expect(link).toContain("#work=");
  expect(link.length).toBeLessThan(4000);
  const other = await context.newPage();
  await other.goto("about:blank");
  await other.goto(link);
  await expect(other.getByText("The work of the link is open.")).toBeVisible();
  await turnTo(other, "Alterations");
  await expect(number(other, "raiseHem.by")).toHaveValue("33");
  expect(other.url()).not.toContain("#work=");
  await other.goto("about:blank");
  await other.goto(link.slice(0, -20));
  await expect(other.getByText("The link is not opened")).toBeVisible();
});

test("nothing is sent anywhere", async ({ page, baseURL }) => {
  const sent: string[] = [];
  page.on("request", (request) => {
    if (request.method() !== "GET" || !request.url().startsWith(baseURL ?? "")) {
      if (!request.url().startsWith("blob:") && !request.url().startsWith("data:"))
        sent.push(request.url());
    }
  });
  await openChoir(page);
  await typeNumber(page, "raiseHem.by", "33");
  await turnTo(page, "Paper");
  await savedCopy(page);
  expect(sent).toEqual([]);
});

test("two windows do not write over each other unseen", async ({ page, context }) => {
  await openChoir(page);
  await page.waitForTimeout(500);
  const other = await context.newPage();
  await other.goto("./");
  await turnTo(other, "Alterations");
  await typeNumber(page, "raiseHem.by", "77");
  const warning = other.getByRole("alert", { name: "This handbook is open in another window" });
  await expect(warning).toBeVisible();
  await typeNumber(other, "raiseHem.by", "11");
  await other.waitForTimeout(600);
  expect(JSON.parse((await kept(page)) ?? "").choices.alterations.raiseHem.by).toBe(77);
  await other.getByRole("button", { name: "Keep what is here" }).click();
  await other.waitForTimeout(500);
  expect(JSON.parse((await kept(page)) ?? "").choices.alterations.raiseHem.by).toBe(11);
  const back = page.getByRole("alert", { name: "This handbook is open in another window" });
  await expect(back).toBeVisible();
  await page.getByRole("button", { name: "Show the other window’s work here" }).click();
  await expect(number(page, "raiseHem.by")).toHaveValue("11");
  await page.getByRole("button", { name: /^Undo: / }).click();
  await expect(number(page, "raiseHem.by")).toHaveValue("77");
});

test.describe("without a network", () => {
  test.use({ serviceWorkers: "allow" });

  test("after the first load it works without a network, the PDF too", async ({
    page,
    context,
  }) => {
    await openChoir(page);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(
      async () => (await (await caches.open("ribwright")).keys()).length > 5,
    );
    await context.setOffline(true);
    await page.reload();
    await turnTo(page, "Alterations");
    await typeNumber(page, "raiseHem.by", "33");
    await turnTo(page, "Paper");
    const waits = page.waitForEvent("download");
    await page.getByRole("button", { name: /^Make the PDF/ }).click();
    const pdf = readFileSync(await (await waits).path());
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    await page.getByLabel("Language").first().selectOption("de");
    await expect(page.getByRole("heading", { level: 1, name: "Papier" })).toBeVisible();
  });
});

test("what is kept but cannot be read is put aside, not written over unseen", async ({ page }) => {
  await openChoir(page);
  await page.waitForTimeout(500);
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const open = indexedDB.open("ribwright");
        open.onsuccess = () => {
          const store = open.result.transaction("work", "readwrite").objectStore("work");
          store.put({ revision: 9, text: "{ broken" }, "handbook").onsuccess = () => done();
        };
      }),
  );
  await page.reload();
  await expect(page.getByText("could not be read, and was put aside")).toBeVisible();
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save what was kept" }).click();
  expect(readFileSync(await (await waits).path(), "utf8")).toBe("{ broken");
});

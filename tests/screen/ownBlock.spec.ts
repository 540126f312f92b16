import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { lengthOf } from "../../src/geometry/length.ts";
import { readPathData } from "../../src/geometry/pathData.ts";
import {
  BOMB,
  CROSSING,
  type Given,
  lockedPdf,
  millionNodes,
  NO_PDF,
  namedEdges,
  OPEN,
  PLAIN,
  SCRIPT,
  SWAPPED,
  twoPages,
  UNEVEN,
} from "./ownBlockFiles.ts";
import { kept, openChoir, openDoors, turnTo, typeNumber, watchFaults } from "./support.ts";

const door = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "First page" }).first().click();
  await page.getByRole("button", { name: "Bring a block" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Your own block" })).toBeVisible();
};

const way = (page: Page, name: "photo" | "drawing" | "tape") =>
  page.locator(`[data-way="${name}"]`).click();

const open = async (page: Page, file: Given): Promise<void> => {
  const waits = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: /^Open (?:an SVG|another)/ }).click();
  await (await waits).setFiles(file);
};

const title = (page: Page, name: string) =>
  expect(page.getByRole("heading", { level: 1, name })).toBeVisible();

const next = (page: Page, to: string) =>
  page.getByRole("button", { name: `On to the ${to}` }).click();

/** A drawing opened, its size confirmed. */
const drawn = async (page: Page, file: Given): Promise<void> => {
  await way(page, "drawing");
  await open(page, file);
  await expect(page.getByText(`“${file.name}” is open.`)).toBeVisible();
  await page.getByRole("button", { name: "The size is right" }).click();
};

/** On as far as the doctor. */
const toDoctor = async (page: Page): Promise<void> => {
  await next(page, "edges");
  await next(page, "turnings");
  await next(page, "doctor");
  await title(page, "Doctor");
};

const downloaded = async (page: Page, name: RegExp | string): Promise<Buffer> => {
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name, exact: typeof name === "string" }).click();
  return readFileSync(await (await waits).path());
};

type Report = {
  readonly block: Readonly<Record<string, { edges: Readonly<Record<string, { length: number }>> }>>;
  readonly pieces: Report["block"];
};

const report = async (page: Page): Promise<Report> => {
  await turnTo(page, "Paper");
  return JSON.parse((await downloaded(page, "Report")).toString());
};

const undo = (page: Page) => page.getByRole("button", { name: /^Undo: / }).first();
const finding = (page: Page, id: string) => page.locator(`[data-finding="${id}"]`);
const refusal = (page: Page) => page.locator("main .refuse");

test("the whole way from a drawing to a printed sweatshirt, with a remedy on the way", async ({
  page,
}) => {
  const faults = watchFaults(page);
  await openChoir(page);
  await door(page);
  await drawn(page, UNEVEN);
  await next(page, "edges");
  await title(page, "Edges");
  await expect(page.locator('[data-choice="corner.raglan"]')).toHaveValue(/\d/);
  await next(page, "turnings");
  await next(page, "doctor");
  await expect(finding(page, "raglan-front-match")).toContainText(/mm apart/);
  await expect(finding(page, "side-match")).toContainText(/mm apart/);
  await finding(page, "side-match").locator('[data-remedy="front"]').check();
  await expect(page.getByText(/Front: lines move by up to/)).toBeVisible();
  await page.getByRole("button", { name: "Do this" }).click();
  await expect(finding(page, "side-match")).toHaveCount(0);
  await finding(page, "raglan-front-match").locator('[data-remedy="sleeve"]').check();
  await page.getByRole("button", { name: "Do this" }).click();
  await expect(finding(page, "raglan-front-match")).toHaveCount(0);
  await expect(page.getByRole("table")).toContainText("Odile Marrack");
  await page.getByRole("button", { name: "Use this block" }).click();
  await title(page, "Block");
  await expect(page.getByText("“uneven.svg” is taken as it is.")).toBeVisible();
  await turnTo(page, "Alterations");
  await typeNumber(page, "raiseHem.by", "40");
  const made = await report(page);
  expect(made.block["front"]?.edges["side"]?.length).toBeCloseTo(
    made.block["back"]?.edges["side"]?.length ?? 0,
    3,
  );
  expect((await downloaded(page, /^Make the PDF/)).subarray(0, 5).toString()).toBe("%PDF-");
  expect(faults).toEqual([]);
});

test("every step is undone, one by one, and the work is untouched until the block is used", async ({
  page,
}) => {
  await openChoir(page);
  await page.waitForTimeout(400);
  const before = await kept(page);
  await door(page);
  await drawn(page, UNEVEN);
  await next(page, "edges");
  await page.locator('[data-choice="corner.hem"]').selectOption("0");
  await expect(refusal(page)).toContainText("The corners of the front do not follow one another");
  await undo(page).click();
  await expect(refusal(page)).toHaveCount(0);
  await next(page, "turnings");
  await page.locator('[data-choice="turnings"]').selectOption("with");
  await next(page, "doctor");
  await page.locator("[data-finding] [data-remedy=leave]").first().check();
  await page.getByRole("button", { name: "Leave it so" }).click();
  const names: string[] = [];
  for (let i = 0; i < 12; i++) {
    if (!(await undo(page).isVisible())) break;
    names.push((await undo(page).getAttribute("aria-label")) ?? "");
    await page.keyboard.press("Control+z");
  }
  expect(names).toEqual([
    expect.stringMatching(/^Undo: a remedy: /),
    "Undo: with or without turnings",
    "Undo: size said to be right",
    "Undo: opened uneven.svg",
    "Undo: another way in",
  ]);
  await title(page, "Your own block");
  for (const _ of names) await page.keyboard.press("Control+Shift+z");
  await title(page, "Doctor");
  expect(await kept(page)).toEqual(before);
  await page.getByRole("button", { name: "Use this block" }).click();
  await page.getByRole("button", { name: "Undo: brought a block" }).click();
  await page.waitForTimeout(400);
  expect(await kept(page)).toEqual(before);
});

test("edges that a file names find their place by themselves", async ({ page }) => {
  await openChoir(page);
  await door(page);
  await drawn(page, namedEdges());
  await toDoctor(page);
  await expect(page.getByRole("heading", { name: "Everything is sound" })).toBeVisible();
});

test("lines are assigned by hand: by clicking one, or from the list", async ({ page }) => {
  await openChoir(page);
  await door(page);
  await drawn(page, PLAIN);
  const front = page.locator('[data-choice="front"]');
  const taken = await front.inputValue();
  await front.selectOption("none");
  await expect(page.getByRole("button", { name: "On to the edges" })).toBeEnabled();
  // The middle of a line's box need not lie on the line.
  await page.locator(`[data-shape="${taken}"] .reach`).dispatchEvent("click");
  await page.locator('[data-choice="inHand"]').selectOption("front");
  await expect(front).toHaveValue(taken);
  await toDoctor(page);
  await expect(page.getByRole("heading", { name: "Everything is sound" })).toBeVisible();
});

test("a known length sets the size of the whole drawing", async ({ page }) => {
  await openChoir(page);
  await door(page);
  await way(page, "drawing");
  await open(page, PLAIN);
  const size = page.getByRole("spinbutton", { name: /^Length of line 1/ });
  const whole = Number(await size.inputValue());
  await size.fill(String(whole * 2));
  await size.press("Enter");
  await expect(page.getByText("The drawing is at 200")).toBeVisible();
  await toDoctor(page);
  await expect(page.locator(".girths tbody tr").first().locator("td").first()).toContainText(
    "2200 mm",
  );
});

test("a PDF of the tool's own comes back true: tiles by their marks, seams within 0.05 mm", async ({
  page,
}) => {
  test.slow();
  await openChoir(page);
  // The block itself: every alteration unbuttoned.
  const buttons = page.locator("main [role=switch][aria-checked=true]");
  while ((await buttons.count()) > 0) await buttons.first().click();
  const before = await report(page);
  const sheets = await downloaded(page, /^Make the PDF/);
  await door(page);
  await way(page, "drawing");
  await open(page, { name: "pattern.pdf", mimeType: "application/pdf", buffer: sheets });
  await expect(page.getByText("The tool’s own corner marks are on them")).toBeVisible({
    timeout: 30_000,
  });
  await page.getByRole("button", { name: "The size is right" }).click();
  await toDoctor(page);
  await page.getByRole("button", { name: "Use this block" }).click();
  await page.waitForTimeout(500);
  const { block } = JSON.parse((await kept(page)) ?? "");
  for (const [piece, edge] of [
    ["front", "raglan"],
    ["front", "side"],
    ["back", "raglan"],
    ["back", "neckline"],
    ["sleeve", "raglanFront"],
    ["sleeve", "underarmBack"],
    ["sleeve", "wrist"],
  ] as const) {
    const truth = before.pieces[piece]?.edges[edge]?.length ?? Number.NaN;
    const read = readPathData(block.file.pieces[piece].edges[edge]);
    const back = "path" in read ? lengthOf(read.path) : Number.NaN;
    expect(Math.abs(back - truth), `${piece} ${edge}`).toBeLessThan(0.05);
  }
});

test("pages without marks are put together by hand: dragged, or by keys and S", async ({
  page,
}) => {
  await openChoir(page);
  await door(page);
  await way(page, "drawing");
  await open(page, twoPages());
  await page.getByRole("button", { name: "Put pages together" }).click();
  const second = page.locator('[data-page="2"]');
  await second.focus();
  // Page 2 lies 222 mm to the right; its lines meet at 190 mm.
  for (let i = 0; i < 20; i++) await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("s");
  await page.getByRole("button", { name: "The pages lie right" }).click();
  await expect(page.locator('[data-choice="front"]')).toContainText("line 1, open, 170 mm long");
  await undo(page).click();
  await undo(page).click();
  await expect(page.locator('[data-choice="front"]')).not.toContainText("170 mm");
});

const TAPE = ["275", "74", "100", "22", "250", "330", "272", "415", "220", "420"];

test("a block by tape: refused figures told, the block solved, what was assumed shown, used", async ({
  page,
}) => {
  await openChoir(page);
  await door(page);
  await way(page, "tape");
  const slots = page.locator("main [role=spinbutton]");
  await slots.nth(0).fill("9999");
  await slots.nth(0).press("Enter");
  await expect(refusal(page)).toContainText("“9999” is not taken: Half width at the underarm");
  for (const [i, length] of TAPE.entries()) {
    await slots.nth(i).fill(length);
    await slots.nth(i).press("Enter");
  }
  await expect(page.getByText("The sleeve's cap was solved")).toBeVisible();
  await slots.nth(6).fill("590");
  await slots.nth(6).press("Enter");
  await expect(refusal(page)).toContainText("the side would lie nearly flat");
  await undo(page).click();
  await page.getByLabel("Unit").first().selectOption("in");
  await expect(slots.nth(0)).toHaveValue(/10/);
  await slots.nth(0).fill("10 7/8");
  await slots.nth(0).press("Enter");
  await next(page, "doctor");
  await expect(page.getByRole("heading", { name: "Everything is sound" })).toBeVisible();
  await page.getByRole("button", { name: "Use this block" }).click();
  await page.getByLabel("Unit").first().selectOption("mm");
  const made = await report(page);
  expect(made.block["front"]?.edges["side"]?.length).toBeCloseTo(330, 2);
  expect(made.block["sleeve"]?.edges["underarmFront"]?.length).toBeCloseTo(420, 2);
});

test("a reload comes back to where the maker was, and leaving loses nothing", async ({ page }) => {
  await openChoir(page);
  await door(page);
  await drawn(page, UNEVEN);
  await toDoctor(page);
  await page.waitForTimeout(500);
  await page.reload();
  await title(page, "Doctor");
  await page.getByRole("button", { name: "Leave, and keep what is begun" }).first().click();
  await expect(page.getByRole("navigation", { name: "Chapters" })).toBeVisible();
  await turnTo(page, "Block");
  await page.getByRole("button", { name: "Bring a block" }).click();
  await title(page, "Doctor");
});

test("a block serves the body it was brought for; the next is drafted, and that is said", async ({
  page,
}) => {
  await openChoir(page);
  await door(page);
  await drawn(page, PLAIN);
  await toDoctor(page);
  await page.getByRole("button", { name: "Use this block" }).click();
  await expect(page.locator('[data-word="block.source"]')).toHaveValue("own");
  await page.getByRole("button", { name: "Next body" }).click();
  await expect(page.locator("main .doubt")).toContainText("was brought for Odile Marrack");
  await expect(page.locator('[data-word="block.source"]')).toHaveValue("measures");
  await page.getByRole("button", { name: "Body before" }).click();
  await expect(page.locator('[data-word="block.source"]')).toHaveValue("own");
});

const REFUSED: readonly (readonly [what: string, file: () => Given, sentence: RegExp])[] = [
  ["an SVG with a script", () => SCRIPT, /The file holds a <script>; a drawing needs none/],
  ["an entity bomb", () => BOMB, /The file declares entities of its own; they are never read/],
  ["a million elements", millionNodes, /more than 100000 elements/],
  ["a PDF with a password", lockedPdf, /locked with a password/],
  ["a PDF that is none", () => NO_PDF, /no PDF that can be read/],
];

for (const [what, file, sentence] of REFUSED) {
  test(`${what} is refused with one sentence, and what was brought in stays`, async ({ page }) => {
    await openChoir(page);
    await door(page);
    await drawn(page, PLAIN);
    await open(page, file());
    await expect(refusal(page)).toHaveCount(1, { timeout: 20_000 });
    await expect(refusal(page)).toContainText(sentence);
    await expect(page.getByText("“plain.svg” is open.")).toBeVisible();
    await toDoctor(page);
  });
}

test("an open outline is told, and joined if the maker says so", async ({ page }) => {
  await openChoir(page);
  await door(page);
  await drawn(page, OPEN);
  const front = page.locator('[data-choice="front"]');
  const option = front.locator("option", { hasText: /, open, / }).first();
  await front.selectOption((await option.getAttribute("value")) ?? "");
  await expect(refusal(page)).toContainText("The outline of the front is open: its ends stand");
  await page.getByRole("button", { name: "Join the ends with a straight line" }).click();
  await expect(refusal(page)).toHaveCount(0);
});

test("a crossing outline, swapped edges, and a front given as the back are told", async ({
  page,
}) => {
  await openChoir(page);
  await door(page);
  await drawn(page, CROSSING);
  await expect(refusal(page)).toContainText("The outline of the front crosses itself near");
  await open(page, namedEdges(["raglan", "hem"]));
  await expect(refusal(page)).toContainText("The outline of the front is open: run 1 ends");
  await open(page, SWAPPED);
  await page.getByRole("button", { name: "The size is right" }).click();
  await toDoctor(page);
  await expect(refusal(page)).toContainText("front and back seem to be taken for each other");
});

test("a drawing is dropped anywhere on the page", async ({ page }) => {
  await openChoir(page);
  const data = await page.evaluateHandle(
    ({ name, text }) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], name, { type: "image/svg+xml" }));
      return transfer;
    },
    { name: PLAIN.name, text: PLAIN.buffer.toString() },
  );
  await page.dispatchEvent("body", "drop", { dataTransfer: data });
  await expect(page.getByText("“plain.svg” is open.")).toBeVisible();
});

const tabTo = async (page: Page, selector: string, most = 60): Promise<void> => {
  for (let i = 0; i < most; i++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
  }
  throw new Error(`Tab does not reach ${selector}.`);
};

test("the whole way by keyboard alone", async ({ page }) => {
  await openDoors(page);
  for (let i = 0; i < 12; i++) {
    await page.keyboard.press("Tab");
    const text = await page.evaluate(() => document.activeElement?.textContent);
    if (text === "Bring a block") break;
  }
  await page.keyboard.press("Enter");
  await title(page, "Your own block");
  await tabTo(page, '[data-way="drawing"]');
  await page.keyboard.press("Enter");
  await tabTo(page, "main button.go");
  const waits = page.waitForEvent("filechooser");
  await page.keyboard.press("Enter");
  await (await waits).setFiles(UNEVEN);
  await expect(page.getByText("“uneven.svg” is open.")).toBeVisible();
  await tabTo(page, "main button.go.quiet");
  await page.keyboard.press("Enter");
  await tabTo(page, '[data-choice="sleeve"]');
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Edges");
  await tabTo(page, '[data-choice="corner.raglan"]');
  await tabTo(page, '[data-corner="2"]');
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Control+z");
  await page
    .getByRole("main")
    .focus()
    .catch(() => undefined);
  await page.keyboard.press("F6");
  await tabTo(page, "main button.go:not(.quiet)", 200);
  await page.keyboard.press("Enter");
  await title(page, "Turnings");
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Doctor");
  await tabTo(page, '[data-finding="side-match"] input');
  await page.keyboard.press("ArrowDown");
  await tabTo(page, "main button.go.quiet");
  await page.keyboard.press("Enter");
  await expect(finding(page, "side-match")).toHaveCount(0);
  await tabTo(page, "main button.go:not(.quiet)");
  await page.keyboard.press("Enter");
  await title(page, "Block");
});

type Violation = { readonly id: string; readonly nodes: readonly { readonly html: string }[] };

const findings = async (page: Page): Promise<readonly string[]> => {
  await page.addScriptTag({ path: "node_modules/axe-core/axe.min.js" });
  const found: readonly Violation[] = await page.evaluate(
    "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then((r) => r.violations)",
  );
  return found.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`,
  );
};

for (const theme of ["light", "dark", "projector"] as const) {
  test(`axe finds nothing on any step, ${theme}, at two widths`, async ({ page }) => {
    test.slow();
    await page.emulateMedia({ reducedMotion: "reduce" });
    await openChoir(page);
    await door(page);
    await page.getByLabel("Ground").first().selectOption(theme);
    expect(await findings(page), "ways").toEqual([]);
    await way(page, "tape");
    expect(await findings(page), "tape").toEqual([]);
    await page.getByRole("button", { name: "Way in", exact: true }).click();
    await drawn(page, UNEVEN);
    expect(await findings(page), "pieces").toEqual([]);
    await next(page, "edges");
    expect(await findings(page), "edges").toEqual([]);
    await next(page, "turnings");
    await page.locator('[data-choice="turnings"]').selectOption("with");
    expect(await findings(page), "turnings").toEqual([]);
    await next(page, "doctor");
    await page.locator("[data-finding] input").nth(1).check();
    expect(await findings(page), "doctor").toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await findings(page), "doctor, narrow").toEqual([]);
  });
}

test("nothing runs out of the page from 390 to 2560 px, in English and German", async ({
  page,
}) => {
  test.slow();
  await openChoir(page);
  await door(page);
  await drawn(page, UNEVEN);
  await toDoctor(page);
  for (const language of ["en", "de"]) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.locator("select").filter({ hasText: "Deutsch" }).first().selectOption(language);
    for (const width of [390, 768, 1180, 1440, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      for (const chapter of await page.locator(".spine .chapter").all()) {
        await chapter.click();
        const over = await page.evaluate(
          () =>
            [document.documentElement, ...document.querySelectorAll("main.page")].filter(
              (part) => part.scrollWidth > part.clientWidth + 1,
            ).length,
        );
        expect(over, `${language} ${width} ${await chapter.getAttribute("aria-label")}`).toBe(0);
      }
    }
  }
});

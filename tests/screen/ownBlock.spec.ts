import { expect, test } from "@playwright/test";
import { namedEdges, PLAIN, UNEVEN } from "./ownBlockFiles.ts";
import {
  door,
  downloaded,
  drawn,
  finding,
  next,
  open,
  refusal,
  report,
  title,
  toDoctor,
  undo,
  way,
} from "./ownBlockSupport.ts";
import { kept, openChoir, turnTo, typeNumber, watchFaults } from "./support.ts";

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

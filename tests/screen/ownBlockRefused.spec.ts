import { expect, test } from "@playwright/test";
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
} from "./ownBlockFiles.ts";
import { door, drawn, open, refusal, toDoctor } from "./ownBlockSupport.ts";
import { openChoir } from "./support.ts";

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

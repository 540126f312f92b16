import { readFileSync } from "node:fs";
import { expect as expectSoon, type Locator, type Page, test } from "@playwright/test";
import { lengthOf } from "../../src/geometry/length.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { poppler } from "../support/pdf.ts";
import { greyPng } from "../support/photo/greyPng.ts";
import {
  type LaidPiece,
  laidPiece,
  type PieceName,
  partOf,
  secondPicture,
} from "../support/photo/laidPieces.ts";
import { findings, openDoors, turnTo, typeNumber } from "./support.ts";

/** Pictures are made by the project's own renderer: a known piece, a known camera. */
test.setTimeout(120_000);
/** Pictures are decoded and lines found by a worker that may have to wait for a core. */
const expect = expectSoon.configure({ timeout: 20_000 });

const openPhotos = async (page: Page): Promise<void> => {
  await openDoors(page);
  await page.getByRole("button", { name: "Bring a block" }).click();
  await page.locator('[data-way="photo"]').click();
  await expect(page.getByRole("button", { name: "Choose a picture" })).toBeVisible();
};

const choose = (page: Page, name: string, buffer: Buffer, mimeType = "image/png") =>
  page.locator("input[data-file='picture']").first().setInputFiles({ name, mimeType, buffer });

const mark = (page: Page, name: string): Locator => page.locator(`[data-grip="mark.${name}"]`);
const point = (page: Page, i: number): Locator => page.locator(`[data-grip="point.${i}"]`);
const points = (page: Page): Locator =>
  page.locator('[data-grip^="point."]:not([data-grip*="before"]):not([data-grip*="after"])');
const distance = (page: Page, pair: string): Locator => page.locator(`[data-mm="${pair}"]`);
const fault = (page: Page): Locator => page.locator("[data-fault]");

const typeDistances = async (page: Page, { distances }: LaidPiece): Promise<void> => {
  for (const { from, to, length } of distances) {
    await distance(page, `${from}-${to}`).fill(String(length));
    await distance(page, `${from}-${to}`).press("Enter");
  }
};

const place = async (page: Page, piece: LaidPiece, name = "piece.png"): Promise<void> => {
  await choose(page, name, piece.png);
  await expect(mark(page, "D")).toBeVisible();
  await typeDistances(page, piece);
  await expect(page.locator("[data-foretold]")).toBeVisible();
};

const lay = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "Lay it on the table" }).click();
  await expect(page.getByRole("button", { name: "Find the outline" })).toBeEnabled();
};

const find = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "Find the outline" }).click();
  await expect(page.getByRole("button", { name: "Find it again" })).toBeVisible();
};

const undoTo = async (page: Page, step: string): Promise<void> => {
  await expect(page.getByRole("button", { name: `Undo: ${step}` }).first()).toBeEnabled();
  await page.keyboard.press("Control+z");
};

/** The runs that were handed on, as the device keeps them. */
const handedOn = (page: Page, piece: PieceName): Promise<readonly Path[]> =>
  page.evaluate(
    (name) =>
      new Promise<readonly Path[]>((done) => {
        const open = indexedDB.open("ribwright-own");
        open.onsuccess = () => {
          const read = open.result.transaction("block").objectStore("block").get("begun");
          read.onsuccess = () => done(read.result?.block?.pieces?.[name]?.runs ?? []);
        };
      }),
    piece,
  );

const sorted = (edges: readonly Path[]): readonly number[] =>
  edges.map(lengthOf).sort((a, b) => a - b);

/** From the picture to the outline, as a maker does it; held against the truth. */
const traced = async (page: Page, name: PieceName): Promise<void> => {
  const piece = laidPiece(name);
  await page.locator(`[data-piece-tab="${name}"]`).click();
  await place(page, piece, `${name}.png`);
  await lay(page);
  if (name === "back") await page.locator('[data-choice="followed"]').selectOption("edge");
  await find(page);
  const fit = Number(await page.locator("[data-fit]").getAttribute("data-fit"));
  expect(fit).toBeLessThanOrEqual(0.5);
  await page.getByRole("button", { name: "Take this outline" }).click();
  await expect(page.getByText(/^Taken as the /u)).toBeVisible();
  await expect.poll(async () => (await handedOn(page, name)).length).toBe(piece.edges.length);
  const [is, was] = [sorted(await handedOn(page, name)), sorted(piece.edges)];
  for (const [i, length] of was.entries())
    expect(Math.abs((is[i] ?? 0) / length - 1)).toBeLessThan(0.005);
};

/** The doctor's findings mended one after the other: the sleeve is corrected to fit the body. */
const mend = async (page: Page): Promise<void> => {
  for (let i = 0; i < 12; i++) {
    const remedy = page.locator('[data-finding] [data-remedy="sleeve"]').first();
    if ((await remedy.count()) === 0) return;
    await remedy.check();
    await page.getByRole("button", { name: "Do this" }).click();
  }
};

test("the whole way: photos true within half a per cent, edges, turnings, doctor, the pattern on paper", async ({
  page,
}) => {
  await openPhotos(page);
  for (const name of ["front", "back", "sleeve"] as const) await traced(page, name);
  await page.getByRole("button", { name: "Name its edges" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Edges" })).toBeVisible();
  await page.getByRole("button", { name: "On to the turnings" }).click();
  await page.getByRole("button", { name: "On to the doctor" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Doctor" })).toBeVisible();
  await mend(page);
  await page.getByRole("button", { name: "Use this block" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Block" })).toBeVisible();
  await turnTo(page, "Measures");
  await typeNumber(page, "measures.height", "1660");
  await typeNumber(page, "measures.chest", "960");
  await turnTo(page, "Alterations");
  await expect(page.locator('[data-piece="front"]')).toBeVisible();
  await turnTo(page, "Paper");
  await expect(page.locator('[data-check="raglan-front-match"]')).toContainText("sound");
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: /^Make the PDF/u }).click();
  const pdf = readFileSync(await (await waits).path());
  expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
  const text = poppler("pdftotext", pdf);
  for (const piece of ["Front", "Back", "Sleeve", "Neckband"]) expect(text).toContain(piece);
});

test("the error is foretold before anything is traced, and every step is undone by name", async ({
  page,
}) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await choose(page, "front.png", piece.png);
  await expect(mark(page, "A")).toBeVisible();
  await expect(page.getByText("The distances between the marks are needed.")).toBeVisible();
  await expect(page.getByRole("button", { name: "Lay it on the table" })).toBeDisabled();
  await typeDistances(page, piece);
  await expect(page.locator("[data-foretold]")).toHaveText(
    /A line traced here will be out by \d(?:\.\d)?.mm at the most/u,
  );
  await lay(page);
  await find(page);
  const count = await points(page).count();
  const first = await point(page, 0).getAttribute("aria-label");
  await point(page, 0).focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await expect(point(page, 0)).not.toHaveAttribute("aria-label", first ?? "");
  await undoTo(page, "point 1 moved");
  await expect(point(page, 0)).toHaveAttribute("aria-label", first ?? "");
  await undoTo(page, "outline found");
  await expect(points(page)).toHaveCount(0);
  await page
    .getByRole("button", { name: /^Redo: outline found/u })
    .first()
    .click();
  await expect(points(page)).toHaveCount(count);
  await undoTo(page, "outline found");
  for (const { from, to } of [...piece.distances].reverse()) {
    await undoTo(page, `distance ${from}–${to}`);
  }
  await undoTo(page, "picture front.png");
  await expect(page.getByRole("button", { name: "Choose a picture" })).toBeVisible();
});

test("by keyboard alone: a mark nudged, the line found, points moved, added, turned and taken away", async ({
  page,
}) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  // The page hands the focus to its heading when it opens; a key pressed before that goes nowhere.
  await expect(async () => {
    const waits = page.waitForEvent("filechooser", { timeout: 2000 });
    await page.getByRole("button", { name: "Choose a picture" }).press("Enter");
    await (await waits).setFiles({ name: "front.png", mimeType: "image/png", buffer: piece.png });
  }).toPass();
  await expect(mark(page, "A")).toBeVisible();
  await distance(page, "A-B").focus();
  for (const { length } of piece.distances) {
    await page.keyboard.type(String(length));
    await page.keyboard.press("Tab");
  }
  await expect(page.locator("[data-foretold]")).toBeVisible();
  const was = await mark(page, "A").getAttribute("aria-label");
  await mark(page, "A").focus();
  await expect(page.getByRole("img", { name: "Magnifier at mark A" })).toBeVisible();
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Shift+ArrowUp");
  await expect(mark(page, "A")).not.toHaveAttribute("aria-label", was ?? "");
  await undoTo(page, "mark A moved");
  await expect(mark(page, "A")).toHaveAttribute("aria-label", was ?? "");
  await expect(page.getByRole("button", { name: "Lay it on the table" })).toBeEnabled();
  await page.getByRole("button", { name: "Lay it on the table" }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Find the outline" })).toBeEnabled();
  await page.getByRole("button", { name: "Find the outline" }).focus();
  await page.keyboard.press("Enter");
  await expect(point(page, 0)).toBeVisible();
  const count = await points(page).count();
  await point(page, 0).focus();
  await page.keyboard.press("a");
  await expect(points(page)).toHaveCount(count + 1);
  await expect(point(page, 1)).toBeFocused();
  await expect(point(page, 1)).toHaveAttribute("aria-label", /smooth/u);
  await page.keyboard.press("c");
  await expect(point(page, 1)).toHaveAttribute("aria-label", /corner/u);
  await page.keyboard.press("b");
  await page.keyboard.press("Delete");
  await expect(points(page)).toHaveCount(count);
  await point(page, 0).focus();
  await page.keyboard.press("Tab");
  const next = await page.evaluate(() => document.activeElement?.getAttribute("data-grip"));
  expect(next).toMatch(/^point\./u);
  await page.getByText("Keys", { exact: true }).first().click();
  await expect(page.getByText(/^Point: Tab to the next/u)).toBeVisible();
});

/** Where a place of the table, given by its share of the board, lies on the screen. */
const boardBox = async (page: Page) => {
  const box = await page.locator(".photoBoard svg").first().boundingBox();
  if (!box) throw new Error("no board");
  return box;
};

const screenOf = async (grip: Locator) => {
  const box = await grip.boundingBox();
  if (!box) throw new Error("no grip");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

test("the line followed between taps has its corners where the lines cross", async ({ page }) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await place(page, piece);
  await lay(page);
  await find(page);
  const corners = [];
  for (let i = 0; i < (await points(page).count()); i++) {
    const label = await point(page, i).getAttribute("aria-label");
    if (label?.includes("corner")) corners.push(await screenOf(point(page, i)));
  }
  expect(corners).toHaveLength(5);
  await page.getByRole("button", { name: "Draw it anew" }).click();
  await page.locator('[data-tool="follow"]').click();
  for (const [i, { x, y }] of [...corners, ...corners.slice(0, 1)].entries()) {
    await page.mouse.click(x + (i === 0 ? 0 : 1), y - 1);
    await expect(page.locator(".busy")).toBeHidden();
    const isLast = i === corners.length;
    if (!isLast && i > 0) await expect(page.getByText(/points so far/u)).toBeVisible();
  }
  await expect(page.getByText(/5 corners, mended by hand/u)).toBeVisible();
  await page.getByRole("button", { name: "Take this outline" }).click();
  await expect.poll(async () => (await handedOn(page, "front")).length).toBe(5);
  const [is, was] = [sorted(await handedOn(page, "front")), sorted(piece.edges)];
  for (const [i, length] of was.entries())
    expect(Math.abs((is[i] ?? 0) / length - 1)).toBeLessThan(0.01);
});

test("drawn by hand: taps make corners, a pull bends the line, the crosshair does it by keys", async ({
  page,
}) => {
  await openPhotos(page);
  await place(page, laidPiece("front"));
  await lay(page);
  await page.locator('[data-tool="draw"]').click();
  const { x, y, width, height } = await boardBox(page);
  const at = (u: number, v: number) => [x + width * u, y + height * v] as const;
  await page.mouse.click(...at(0.4, 0.3));
  await page.mouse.click(...at(0.6, 0.3));
  await page.mouse.move(...at(0.62, 0.5));
  await page.mouse.down();
  await page.mouse.move(...at(0.6, 0.6), { steps: 6 });
  await page.mouse.up();
  await expect(points(page)).toHaveCount(3);
  await expect(point(page, 2)).toHaveAttribute("aria-label", /smooth/u);
  await undoTo(page, "point drawn");
  await expect(points(page)).toHaveCount(2);
  await page.locator("[data-crosshair]").focus();
  for (let i = 0; i < 12; i++) await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await expect(points(page)).toHaveCount(3);
  await page.getByRole("button", { name: "Close the line" }).click();
  await expect(page.getByText(/3 points, 3 corners, mended by hand/u)).toBeVisible();
  await undoTo(page, "line closed");
  await expect(page.getByText(/3 points so far/u)).toBeVisible();
});

const grey = (value: (k: number) => number) =>
  greyPng({
    grey: Uint8Array.from({ length: 480_000 }, (_, k) => value(k)),
    width: 800,
    height: 600,
  });

/** The head of a PNG of 200 megapixels; nothing of it need be there to be decoded. */
const huge = (): Buffer => {
  const bytes = Buffer.from(grey(() => 128));
  bytes.writeUInt32BE(20_000, 16);
  bytes.writeUInt32BE(10_000, 20);
  return bytes;
};

test("bad pictures are told in one sentence each, and nothing is lost", async ({ page }) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await place(page, piece, "front.png");
  const bad = [
    ["cut.png", piece.png.subarray(0, 40_000), /ends early, after 40000 bytes/u],
    ["huge.png", huge(), /The picture has 200 megapixels; the limit is 120\./u],
    ["words.png", Buffer.from("no picture at all"), /The file is no picture that can be read/u],
    ["empty.png", Buffer.alloc(0), /The file is empty/u],
  ] as const;
  for (const [name, bytes, sentence] of bad) {
    await choose(page, name, Buffer.from(bytes));
    await expect(fault(page)).toHaveText(sentence);
    await expect(mark(page, "D")).toBeVisible();
    await expect(page.locator("[data-foretold]")).toBeVisible();
  }
  const shown = [
    ["black.png", grey(() => 3), /The picture is all black: its greys span 0 of 255\./u],
    ["mirrored.png", partOf(piece.picture, { isMirrored: true }), /The picture is mirrored/u],
    ["bare.png", grey((k) => (Math.floor(k / 3000) % 200) + 20), /No printed mark was found/u],
  ] as const;
  for (const [name, bytes, sentence] of shown) {
    await choose(page, name, bytes);
    await expect(fault(page)).toHaveText(sentence);
    await undoTo(page, `picture ${name}`);
    await expect(mark(page, "D")).toBeVisible();
  }
  // Cut off through the marks on its right: what is half outside is not taken for a mark.
  await choose(page, "half.png", partOf(piece.picture, { share: 0.72 }));
  await expect(page.getByText(/^half\.png/u)).toBeVisible();
  await expect(page.getByText("Four marks are needed.")).toBeVisible();
  await undoTo(page, "picture half.png");
  await expect(page.locator("[data-foretold]")).toBeVisible();
});

test("work on 48 megapixels can be stopped, and the next picture is taken as ever", async ({
  page,
}) => {
  await openPhotos(page);
  const [width, height] = [8000, 6000];
  const large = {
    width,
    height,
    grey: new Uint8Array(width * height).map((_, k) => (k >> 13) & 255),
  };
  await choose(page, "large.png", greyPng(large));
  await page.getByRole("button", { name: "Stop" }).click();
  await expect(fault(page)).toHaveText(/was stopped; nothing was changed/u);
  await expect(page.locator(".busy")).toBeHidden();
  await expect(page.getByRole("button", { name: "Choose a picture" })).toBeVisible();
  await place(page, laidPiece("front"));
});

test("a distance read wrong is named, and mended in place", async ({ page }) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await place(page, piece);
  const right = piece.distances.find(({ from, to }) => from === "A" && to === "C")?.length ?? 0;
  await distance(page, "A-C").fill(String(right + 20));
  await distance(page, "A-C").press("Enter");
  await expect(fault(page)).toHaveText(/contradict each other, A–C most likely/u);
  await expect(page.getByRole("button", { name: "Lay it on the table" })).toBeDisabled();
  await distance(page, "A-C").fill("9");
  await distance(page, "A-C").press("Enter");
  await expect(page.getByText(/9 is refused\. It must be 50.mm to 5000.mm/u)).toBeVisible();
  await distance(page, "A-C").fill(String(right));
  await distance(page, "A-C").press("Enter");
  await expect(page.locator("[data-foretold]")).toBeVisible();
});

test("paper in waves, a straight edge for the lens, and the same distances for the next piece", async ({
  page,
}) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await place(page, piece);
  const flat = await page.locator("[data-foretold]").textContent();
  await page.locator('[data-mm="waves"]').fill("2");
  await page.locator('[data-mm="waves"]').press("Enter");
  await expect(page.locator("[data-foretold]")).toHaveText(/out by 2\.\d.mm at the most/u);
  await undoTo(page, "waves of the paper");
  await expect(page.locator("[data-foretold]")).toHaveText(flat ?? "");
  await page.locator('[data-choice="bends"]').selectOption("yes");
  await expect(fault(page)).toHaveText(/bending cannot be told from 4 marks and no straight edge/u);
  await page.getByRole("button", { name: "Mark a straight edge" }).click();
  const { x, y } = await boardBox(page);
  await page.mouse.click(x + 20, y + 100);
  await expect(page.getByText("Now tap its other end.")).toBeVisible();
  await page.mouse.click(x + 60, y + 140);
  await expect(page.getByText("1 straight edge marked.")).toBeVisible();
  await page.getByRole("button", { name: "Take them away" }).click();
  await page.locator('[data-choice="bends"]').selectOption("no");
  await page.locator('[data-piece-tab="back"]').click();
  await choose(page, "back.png", laidPiece("back").png);
  await expect(mark(page, "D")).toBeVisible();
  await page.getByRole("button", { name: "The same as for the front" }).click();
  await expect(distance(page, "A-B")).toHaveValue(
    String(piece.distances.find(({ from, to }) => from === "A" && to === "B")?.length),
  );
});

test("two pictures of one piece are joined by the marks that both show", async ({ page }) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  await place(page, piece, "left.png");
  await page
    .locator("input[data-file='picture']")
    .nth(1)
    .setInputFiles({ name: "right.png", mimeType: "image/png", buffer: secondPicture() });
  await expect(page.getByText(/^right\.png, 1200 by 1600 pixels/u)).toBeVisible();
  await expect(page.locator("[data-foretold]")).toBeVisible();
  await page.getByRole("button", { name: "Look at left.png" }).click();
  await expect(page.getByRole("button", { name: "Look at right.png" })).toBeVisible();
  await lay(page);
  await find(page);
  await page.getByRole("button", { name: "Take this outline" }).click();
  await expect.poll(async () => (await handedOn(page, "front")).length).toBe(5);
  const [is, was] = [sorted(await handedOn(page, "front")), sorted(piece.edges)];
  for (const [i, length] of was.entries())
    expect(Math.abs((is[i] ?? 0) / length - 1)).toBeLessThan(0.005);
});

test("a picture dropped anywhere on the page is taken, and nothing is left over it", async ({
  page,
}) => {
  await openPhotos(page);
  const file = await page.evaluateHandle(
    (bytes) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([Uint8Array.from(bytes)], "dropped.png", { type: "image/png" }));
      return transfer;
    },
    [...laidPiece("front").png],
  );
  await page.dispatchEvent("main", "dragover", { dataTransfer: file });
  await expect(page.locator(".dropHere")).toBeVisible();
  await page.dispatchEvent("main", "drop", { dataTransfer: file });
  await expect(mark(page, "D")).toBeVisible();
  await expect(page.locator(".dropHere")).toBeHidden();
});

test("on a narrow screen the page folds away from the picture, and comes back for the next step", async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openPhotos(page);
  await place(page, laidPiece("front"));
  const high = (await boardBox(page)).height;
  await page.getByRole("button", { name: "Fold the page away" }).click();
  await expect(page.locator("main")).toBeHidden();
  expect((await boardBox(page)).height).toBeGreaterThan(2 * high);
  await page.getByRole("button", { name: "Way in" }).click();
  await expect(page.locator("main")).toBeVisible();
});

test("a tap on the picture moves nothing until a mark is to be set", async ({ page }) => {
  await openPhotos(page);
  await place(page, laidPiece("front"));
  const { x, y, width, height } = await boardBox(page);
  await page.mouse.click(x + width / 2, y + height / 2);
  await expect(mark(page, "E")).toBeHidden();
  await page.getByRole("button", { name: "Set a mark" }).click();
  await page.mouse.click(x + width / 2, y + height / 2);
  await expect(mark(page, "E")).toBeVisible();
  await expect(page.getByText("The distances between the marks are needed.")).toBeVisible();
  await mark(page, "E").click();
  await page.getByRole("button", { name: "Take it away" }).click();
  await expect(mark(page, "E")).toBeHidden();
  await expect(page.locator("[data-foretold]")).toBeVisible();
});

/** The same picture as a JPEG of a camera held on its side: EXIF says how to turn it. */
const turnedJpeg = async (page: Page, png: Buffer): Promise<Buffer> => {
  const plain = await page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(new Blob([Uint8Array.from(bytes)]));
      const canvas = new OffscreenCanvas(bitmap.height, bitmap.width);
      const context = canvas.getContext("2d");
      // Turned a quarter to the left: orientation 6 turns it back to the right.
      context?.setTransform(0, -1, 1, 0, 0, bitmap.width);
      context?.drawImage(bitmap, 0, 0);
      const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.95 });
      return [...new Uint8Array(await blob.arrayBuffer())];
    },
    [...png],
  );
  const exif = Buffer.from(
    "ffe1002245786966000049492a000800000001001201030001000000060000000000000000000000",
    "hex",
  );
  exif.writeUInt16BE(exif.length - 2, 2);
  return Buffer.concat([Buffer.from(plain.slice(0, 2)), exif, Buffer.from(plain.slice(2))]);
};

test("a JPEG that EXIF turns is turned, and one that is cut off is told", async ({ page }) => {
  const piece = laidPiece("front");
  await openPhotos(page);
  const jpeg = await turnedJpeg(page, piece.png);
  await choose(page, "turned.jpg", jpeg, "image/jpeg");
  await expect(mark(page, "D")).toBeVisible();
  await expect(
    page.getByText(`turned.jpg, ${piece.width} by ${piece.height} pixels`),
  ).toBeVisible();
  await typeDistances(page, piece);
  await expect(page.locator("[data-foretold]")).toBeVisible();
  await choose(page, "cut.jpg", jpeg.subarray(0, jpeg.length - 5000), "image/jpeg");
  await expect(fault(page)).toHaveText(/The picture file ends early/u);
});

test("the corners of a sheet, or a known length alone, with its warning", async ({ page }) => {
  await openPhotos(page);
  await choose(page, "front.png", laidPiece("front").png);
  await expect(mark(page, "A")).toBeVisible();
  const by = page.locator('[data-choice="by"]');
  await by.selectOption("sheet");
  await expect(mark(page, "A")).toBeHidden();
  const { x, y, width, height } = await boardBox(page);
  const corners = [
    [0.42, 0.32],
    [0.58, 0.32],
    [0.59, 0.62],
    [0.41, 0.62],
  ] as const;
  for (const [u, v] of corners) await page.mouse.click(x + width * u, y + height * v);
  await expect(mark(page, "D")).toBeVisible();
  await by.selectOption("scale");
  await expect(page.getByText(/A card gives scale, never the slant/u)).toBeVisible();
  await page.mouse.click(x + width * 0.4, y + height * 0.5);
  await page.mouse.click(x + width * 0.6, y + height * 0.5);
  await page.locator('[data-mm="length.0"]').fill("400");
  await page.locator('[data-mm="length.0"]').press("Enter");
  await expect(page.locator("[data-foretold]")).toHaveText(
    "The scale is known. No error can be foretold.",
  );
});

test("the marks are printed from the page", async ({ page }) => {
  await openPhotos(page);
  const waits = page.waitForEvent("download");
  await page.getByRole("button", { name: "Print the marks" }).click();
  const file = await waits;
  expect(file.suggestedFilename()).toBe("ribwright-marks.pdf");
  expect(
    readFileSync(await file.path())
      .subarray(0, 5)
      .toString(),
  ).toBe("%PDF-");
});

test("a reload comes back to the picture, its marks and its line", async ({ page }) => {
  await openPhotos(page);
  await place(page, laidPiece("front"));
  await lay(page);
  await find(page);
  const count = await points(page).count();
  await page.waitForTimeout(600);
  await page.reload();
  await expect(mark(page, "D")).toBeVisible();
  await expect(page.locator("[data-foretold]")).toBeVisible();
  await page.locator('[data-stage="trace"]').click();
  await expect(points(page)).toHaveCount(count);
});

for (const theme of ["light", "dark", "projector"] as const) {
  test(`axe finds nothing on the photo page, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ reducedMotion: "reduce" });
    await openDoors(page);
    await page.getByLabel("Ground").first().selectOption(theme);
    await page.getByRole("button", { name: "Bring a block" }).click();
    await page.locator('[data-way="photo"]').click();
    await expect(page.getByRole("button", { name: "Choose a picture" })).toBeVisible();
    expect(await findings(page), "no picture").toEqual([]);
    await place(page, laidPiece("front"));
    await mark(page, "A").focus();
    expect(await findings(page), "marks").toEqual([]);
    await lay(page);
    await find(page);
    await point(page, 1).focus();
    expect(await findings(page), "line").toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await findings(page), "narrow").toEqual([]);
  });
}

test("in German the photo page and its faults speak German", async ({ page }) => {
  await openDoors(page);
  await page.getByLabel("Language").first().selectOption("de");
  await page
    .getByRole("button", { name: /Grundschnitt/u })
    .first()
    .click();
  await page.locator('[data-way="photo"]').click();
  await expect(page.getByRole("button", { name: "Ein Bild wählen" })).toBeVisible();
  await choose(page, "words.png", Buffer.from("kein Bild"));
  await expect(fault(page)).toHaveText(/Die Datei ist kein Bild, das sich lesen lässt/u);
});

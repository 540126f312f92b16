import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { cpus, loadavg, tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { type Browser, chromium, type Page } from "@playwright/test";
import { benchPhoto } from "./bench/studioPhoto.ts";

/**
 * How fast the studio is, on a served build in a real browser without a graphics card.
 * Run with: npm run bench:studio, or npm run bench:studio -- map for a part. Exits 1 where a limit of issue 5 is passed.
 */
const PORT = process.env["BENCH_PORT"] ?? "4199";
const HOME = `http://localhost:${PORT}/`;
const DRAG_MS = 5000;
const EDITS = 1000;

type Row = {
  readonly what: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
};

const rows: Row[] = [];
const tell = (what: string, value: number, limit: number, unit: string): void => {
  rows.push({ what, value, limit, unit });
  const mark = value <= limit ? "ok  " : "OVER";
  console.log(`${mark} ${what}: ${value.toFixed(1)} ${unit} (limit ${limit})`);
};

const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
};

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

const serve = async (folder: string): Promise<ChildProcess> => {
  const args = ["vite", "preview", "--outDir", folder, "--port", PORT, "--strictPort"];
  const server = spawn("npx", args, { stdio: "ignore", detached: true });
  for (let tries = 0; tries < 100; tries++) {
    const answer = await fetch(HOME).catch(() => null);
    if (answer?.ok) return server;
    await pause(100);
  }
  throw new Error("The build is not served.");
};

/** Every script that comes before the first page can be used, as it would be sent: gzipped. */
const firstLoad = async (browser: Browser): Promise<void> => {
  const page = await browser.newPage();
  const bodies: Promise<Buffer>[] = [];
  page.on("response", (answer) => {
    if (answer.url().endsWith(".js") && !answer.url().endsWith("sw.js")) bodies.push(answer.body());
  });
  await page.goto(HOME);
  await page.getByRole("button", { name: "Open the choir" }).waitFor();
  const sizes = (await Promise.all(bodies)).map((body) => gzipSync(body, { level: 9 }).length);
  tell("first load, scripts", sizes.reduce((a, b) => a + b, 0) / 1000, 200, "kB gz");
  await page.close();
};

/** From the start of the navigation until what is asked for stands on the page and has been painted. */
const timeTo = (page: Page, selector: string): Promise<number> =>
  // As text: what runs in the page knows nothing of the program that tsx makes of this file.
  page.evaluate<number>(`new Promise((done) => {
    const look = () => document.querySelector(${JSON.stringify(selector)})
      ? requestAnimationFrame(() => setTimeout(() => done(performance.now())))
      : requestAnimationFrame(look);
    look();
  })`);

const coldStart = async (browser: Browser): Promise<void> => {
  const first: number[] = [];
  const again: number[] = [];
  for (let i = 0; i < 5; i++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(HOME, { waitUntil: "commit" });
    first.push(await timeTo(page, ".door .go"));
    await page.getByRole("button", { name: "Open the choir" }).click();
    await page.locator('[data-piece="sleeve"]').waitFor();
    await pause(500);
    const back = await context.newPage();
    await back.goto(HOME, { waitUntil: "commit" });
    again.push(await timeTo(back, '.chapter[aria-current="page"]'));
    await context.close();
  }
  tell("cold start to the first page, median of 5", quantile(first, 0.5), 1500, "ms");
  tell("start with kept work, median of 5", quantile(again, 0.5), 1500, "ms");
};

/**
 * Input to drawn frame: from a pointer event's own time stamp (set where the browser receives it)
 * until the task after the frame in which it was drawn. Drawing on the screen itself follows.
 */
const watchFrames = (page: Page): Promise<void> =>
  page.evaluate(`
    globalThis.frameTimes = [];
    globalThis.workTimes = [];
    addEventListener("pointermove", ({ timeStamp }) => {
      const began = performance.now();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          frameTimes.push(performance.now() - timeStamp);
          workTimes.push(performance.now() - began);
        };
        port2.postMessage(null);
      });
    }, { capture: true });
  `);

/** What else the machine does meanwhile: other work makes every wait longer, not our own work. */
const load = (): string => `load ${(loadavg()[0] ?? 0).toFixed(1)} on ${cpus().length} cores`;

/** Processor time of the page's own thread so far, in ms: waiting for a core is not in it. */
const processorTime = async (page: Page): Promise<() => Promise<number>> => {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  return async () => {
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? 0);
  };
};

const drag = async (browser: Browser): Promise<void> => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(HOME);
  await page.getByRole("button", { name: "Open the choir" }).click();
  const head = await page.locator('[data-pin="moveSideSeams.by"] .pinHead').boundingBox();
  if (!head) throw new Error("There is no pin.");
  const [x, y] = [head.x + head.width / 2, head.y + head.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 4, y, { steps: 20 });
  await watchFrames(page);
  const spent = await processorTime(page);
  const before = await spent();
  const began = Date.now();
  for (let i = 0; Date.now() - began < DRAG_MS; i++) {
    await page.mouse.move(x + 12 + 14 * Math.sin(i / 14), y);
  }
  const own = (await spent()) - before;
  await page.mouse.up();
  const times = await page.evaluate<number[]>("frameTimes");
  const work = await page.evaluate<number[]>("workTimes");
  console.log(`     our own part of it, median ${quantile(work, 0.5).toFixed(1)} ms`);
  console.log(`     ${times.length} moves drawn in ${DRAG_MS / 1000} s, ${load()}`);
  tell("underarm dragged, processor time a move, script to paint", own / times.length, 16, "ms");
  tell("underarm dragged, input to frame, median", quantile(times, 0.5), 16, "ms");
  tell("underarm dragged, input to frame, 99 in 100", quantile(times, 0.99), 33, "ms");
  tell("underarm dragged, input to frame, worst", Math.max(...times), 33, "ms");
  await page.close();
};

/** Between two frames of a page that draws at 50 a second, in ms. */
const FRAME_AT_50 = 20;

/** A piece dragged about on the page map: sheets and their count follow every move. */
const dragPiece = async (browser: Browser): Promise<void> => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(HOME);
  await page.getByRole("button", { name: "Open the choir" }).click();
  await page
    .getByRole("navigation", { name: "Chapters" })
    .getByRole("button", { name: "Paper", exact: true })
    .click();
  const box = await page.locator('[data-map-piece="sleeve"]').boundingBox();
  if (!box) throw new Error("There is no sleeve on the map.");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 8, y, { steps: 20 });
  await watchFrames(page);
  const spent = await processorTime(page);
  const before = await spent();
  const began = Date.now();
  for (let i = 0; Date.now() - began < DRAG_MS; i++) {
    await page.mouse.move(x + 60 + 50 * Math.sin(i / 14), y + 40 + 30 * Math.cos(i / 9));
  }
  const own = (await spent()) - before;
  await page.mouse.up();
  const times = await page.evaluate<number[]>("frameTimes");
  console.log(`     ${times.length} moves drawn in ${DRAG_MS / 1000} s, ${load()}`);
  tell("piece dragged on the map, processor time a move", own / times.length, FRAME_AT_50, "ms");
  tell("piece dragged on the map, input to frame, median", quantile(times, 0.5), FRAME_AT_50, "ms");
  tell("piece dragged on the map, input to frame, worst", Math.max(...times), 50, "ms");
  await page.close();
};

const heap = async (page: Page): Promise<number> => {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.enable");
  await session.send("HeapProfiler.collectGarbage");
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  return usedSize / 1e6;
};

/** Arrow keys in a number, each a step of its own: the focus leaves it now and then. */
const edit = async (page: Page, times: number): Promise<void> => {
  const field = page.locator('main [data-field="raiseHem.by"]');
  for (let i = 0; i < times; i++) {
    await field.focus();
    await page.keyboard.press(i % 2 === 0 ? "ArrowUp" : "ArrowDown");
    await field.blur();
  }
};

const memory = async (browser: Browser): Promise<void> => {
  const page = await browser.newPage();
  await page.goto(HOME);
  await page.getByRole("button", { name: "Open the choir" }).click();
  // The list of steps to undo is full after this, and no longer grows.
  await edit(page, EDITS);
  const before = await heap(page);
  await edit(page, EDITS);
  const after = await heap(page);
  console.log(`     ${before.toFixed(1)} MB before, ${after.toFixed(1)} MB after`);
  tell(`memory grown over ${EDITS} edits`, after - before, 1, "MB");
  await page.close();
};

const photo = (browser: Browser): Promise<void> => benchPhoto(browser, HOME, tell);

/** Named on the command line, only these are measured. */
const PARTS = { load: firstLoad, start: coldStart, drag, map: dragPiece, memory, photo } as const;

const run = async (wanted: readonly string[]): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), "ribwright-bench-"));
  execFileSync("npx", ["vite", "build", "--outDir", folder, "--emptyOutDir"], { stdio: "ignore" });
  execFileSync("npx", ["tsx", "scripts/budget.ts", folder], { stdio: "ignore" });
  const server = await serve(folder);
  const executablePath =
    process.env["CHROMIUM"] ?? execFileSync("which", ["chromium"], { encoding: "utf8" }).trim();
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  console.log(`     ${load()}`);
  try {
    for (const [name, part] of Object.entries(PARTS)) {
      if (wanted.length === 0 || wanted.includes(name)) await part(browser);
    }
  } finally {
    await browser.close();
    if (server.pid !== undefined) process.kill(-server.pid);
    rmSync(folder, { recursive: true, force: true });
  }
  if (rows.some(({ value, limit }) => value > limit)) process.exitCode = 1;
};

await run(process.argv.slice(2));

import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished, vi } from "vitest";

/** Each test starts processes, on a machine that may have other things to do. In ms. */
vi.setConfig({ testTimeout: 60_000 });

/** The launcher, as `npm run -s ribwright` starts it. */
const LAUNCHER = fileURLToPath(new URL("../../bin/ribwright.mjs", import.meta.url));
const COMMAND = [process.execPath, LAUNCHER] as const;

export type Ended = { readonly status: number | null; readonly out: string; readonly err: string };

/** Runs the command line in a process of its own, as a maker does. */
export const ribwright = (...words: readonly string[]): Ended => {
  const [node, ...rest] = COMMAND;
  const { status, stdout, stderr } = spawnSync(node, [...rest, ...words], { encoding: "utf8" });
  return { status, out: stdout, err: stderr };
};

/** The same where no file may grow beyond so many kB: a disk that is full, without a disk. */
export const ribwrightOnFullDisk = (kB: number, ...words: readonly string[]): Ended => {
  ribwright("--version"); // puts the program together first, where its sources are newer
  const script = `ulimit -f ${kB} && exec "$@"`;
  const { status, stdout, stderr } = spawnSync(
    "bash",
    ["-c", script, "bash", ...COMMAND, ...words],
    { encoding: "utf8" },
  );
  return { status, out: stdout, err: stderr };
};

/** Starts the command line and gives back the process and how it ends. */
export const startRibwright = (...words: readonly string[]) => {
  const [node, ...rest] = COMMAND;
  const child = spawn(node, [...rest, ...words], { stdio: ["ignore", "pipe", "pipe"] });
  const ended = new Promise<{ code: number | null; signal: NodeJS.Signals | null }>((resolve) => {
    child.on("close", (code, signal) => resolve({ code, signal }));
  });
  return { child, ended };
};

/** A folder of the test's own, gone when the test is over. */
export const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), "ribwright-test-"));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return made;
};

/** Writes a file into a folder of its own and gives back its path. */
export const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder(), name);
  writeFileSync(path, content);
  return path;
};

export const json = (path: string): unknown => JSON.parse(readFileSync(path, "utf8"));

/** Everything in a folder, hidden things too, in order. */
export const listing = (path: string): readonly string[] =>
  readdirSync(path, { recursive: true, encoding: "utf8" }).sort();

/** A table of so many bodies, each a little larger than the one before. */
export const tableOf = (count: number): string =>
  [
    "id,height,chest,hip",
    ...Array.from({ length: count }, (_, i) => `b${i},${1600 + (i % 200)},${900 + i / 10},1010`),
  ].join("\n");

const BODY = { id: "ada", measures: { chest: 960, height: 1660 } };
export const bodyFile = (): string => file("body.json", JSON.stringify(BODY));

/** What no maker may ever be shown. */
export const STACK = /\n\s+at |node:internal|Error:|file:\/\/|\.ts:\d|\.mjs:\d/u;

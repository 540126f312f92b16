// Starts the command line: builds it where its sources are newer than what was built, then runs it.
import { readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const bundle = join(root, "dist-cli", "main.mjs");
const parts = [
  "geometry",
  "drafting",
  "bands",
  "checks",
  "trace",
  "lay",
  "guide",
  "export",
  "project",
  "cli",
];

/** When the file or folder was last changed; 0 where it is not there. */
const changed = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** When anything in a folder was last changed; a file taken away changes its folder. */
const newestIn = (folder) => {
  const entries = readdirSync(folder, { withFileTypes: true });
  const inside = entries.map((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? newestIn(path) : changed(path);
  });
  return Math.max(changed(folder), ...inside);
};

const isStale = () => {
  const built = changed(bundle);
  if (built === 0) return true;
  const sources = parts.map((part) => join(root, "src", part)).filter((path) => changed(path) > 0);
  const others = ["bin/build.mjs", "package-lock.json"].map((path) => changed(join(root, path)));
  return Math.max(...sources.map(newestIn), ...others) > built;
};

try {
  if (isStale()) {
    const { buildBundle } = await import("./build.mjs");
    await buildBundle();
  }
} catch (error) {
  const what = String(error instanceof Error ? error.message : error)
    .split("\n", 2)
    .join(" ");
  process.stderr.write(`The program could not be put together (${what}). Run npm ci again.\n`);
  process.exit(1);
}
await import(pathToFileURL(bundle).href);

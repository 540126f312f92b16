// Puts the command line together: one file, so that it starts at once and its threads share it.
import { randomBytes } from "node:crypto";
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
export const BUNDLE = join(ROOT, "dist-cli", "main.mjs");

// Modules made for `require` find Node's own modules by this.
const REQUIRE =
  'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);';

/** Built aside and renamed when whole: several may start, and build, at the same time. */
export const buildBundle = async () => {
  mkdirSync(dirname(BUNDLE), { recursive: true });
  const aside = `${BUNDLE}.${process.pid}-${randomBytes(4).toString("hex")}.tmp`;
  try {
    await build({
      absWorkingDir: ROOT,
      entryPoints: ["src/cli/main.ts"],
      outfile: aside,
      bundle: true,
      platform: "node",
      target: "node20",
      format: "esm",
      banner: { js: REQUIRE },
      // jsPDF is loaded when the first PDF is drawn, pdfjs-dist when one is read; from their folders.
      external: ["jspdf", "pdfjs-dist"],
      logLevel: "silent",
    });
    renameSync(aside, BUNDLE);
  } finally {
    rmSync(aside, { force: true });
  }
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) await buildBundle();

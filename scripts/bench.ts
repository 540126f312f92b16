import { cpus, loadavg } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { buildSync } from "esbuild";

/**
 * Measures the goals and prints them with what was met. `npm run bench -- drafts batches` runs
 * only these parts. Never a part of verify: times depend on what else the machine does.
 *
 * It is built as the command line is before it runs: running TypeScript as it stands wraps every
 * function to keep its name, which doubles the time of small ones.
 */
const outfile = join(process.cwd(), "dist-cli", "bench.mjs");
buildSync({
  entryPoints: ["scripts/bench/parts.ts"],
  outfile,
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  packages: "external",
  logLevel: "silent",
});
const [load = 0] = loadavg();
console.log(
  `Node ${process.version}, ${cpus().length} cores, ${cpus()[0]?.model ?? ""}; load ${load.toFixed(1)}`,
);
if (load > 1) console.log("Other work is going on: ratios hold, times come out too long.");
const { runParts } = await import(pathToFileURL(outfile).href);
await runParts(process.argv.slice(2));

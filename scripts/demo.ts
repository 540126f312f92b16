/**
 * Drafts the choir of public/demo into out/ and says what came of it and where to look.
 * Run with: npm run demo
 */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import Papa from "papaparse";

const BODIES = "public/demo/choir.csv";
const OUT = "out";

/** What the table shows of a line of `summary.csv`: heading, column, and decimals of a length. */
const SHOWN = [
  { heading: "singer", column: "id", decimals: null },
  { heading: "verdict", column: "verdict", decimals: null },
  { heading: "neckband", column: "neckband_cut_length", decimals: 1 },
  { heading: "cuff", column: "cuff_cut_length", decimals: 1 },
  { heading: "hem band", column: "hem_band_cut_length", decimals: 1 },
  { heading: "sheets", column: "sheets", decimals: 0 },
] as const;

const drafted = spawnSync(
  process.execPath,
  ["bin/ribwright.mjs", "batch", "--bodies", BODIES, "--out", OUT],
  { stdio: "inherit" },
);
if (drafted.status !== 0) process.exit(drafted.status ?? 1);

const { data } = Papa.parse<Record<string, string>>(readFileSync(`${OUT}/summary.csv`, "utf8"), {
  header: true,
  skipEmptyLines: true,
});
const rows = [
  SHOWN.map(({ heading }) => heading),
  ...data.map((body) =>
    SHOWN.map(({ column, decimals }) => {
      const text = body[column] ?? "";
      return decimals === null ? text : Number(text).toFixed(decimals);
    }),
  ),
];
const widths = SHOWN.map((_, place) => Math.max(...rows.map((row) => row[place]?.length ?? 0)));
/** Words stand to the left, numbers to the right. */
const line = (row: readonly string[]): string =>
  row
    .map((text, place) => {
      const width = widths[place] ?? 0;
      return SHOWN[place]?.decimals === null ? text.padEnd(width) : text.padStart(width);
    })
    .join("  ");

const first = data[0]?.["id"] ?? "";
const places = [
  [`${OUT}/${first}/pattern.pdf`, "the sheets: print at 100 %, then measure the test square"],
  [`${OUT}/${first}/pattern.svg`, "all pieces as one drawing; pattern.dxf is for a cutter"],
  [`${OUT}/${first}/report.json`, "every line, seam, band and check"],
  [`${OUT}/summary.csv`, "this table, and more of it"],
] as const;
const wide = Math.max(...places.map(([path]) => path.length));

console.log(`
${rows.map(line).join("\n")}

Bands: the length to cut, in mm. "attend": look at the checks of report.json before cutting.
Each singer has a folder; of the first:
${places.map(([path, what]) => `  ${path.padEnd(wide)}  ${what}`).join("\n")}

The studio: npm start, then open the address that it names.`);

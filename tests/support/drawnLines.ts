import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A line as poppler reads it from a page, in the page's own millimetres. */
export type DrawnLine = {
  readonly points: readonly (readonly [number, number])[];
  readonly length: number;
  /** Of the pen. */
  readonly width: number;
};

const PATH = /<path style="fill:none;stroke-width:([\d.]+)[^"]*" d="([^"]*)"/gu;
const STEP = /([ML]) ([-\d.]+) ([-\d.]+)/gu;

const linesOf = (width: number, data: string): readonly DrawnLine[] => {
  const runs: [number, number][][] = [];
  for (const [, mark, x, y] of data.matchAll(STEP)) {
    if (mark === "M") runs.push([]);
    runs[runs.length - 1]?.push([Number(x), Number(y)]);
  }
  return runs.map((points) => {
    const length = points.reduce((sum, [x, y], i) => {
      const before = points[i - 1];
      return before ? sum + Math.hypot(x - before[0], y - before[1]) : sum;
    }, 0);
    return { points, length, width };
  });
};

/** Every run of straights that poppler finds stroked on a page of a PDF. */
export const drawnLines = (pdf: Uint8Array, page: number): readonly DrawnLine[] => {
  const folder = mkdtempSync(join(tmpdir(), "lines-"));
  try {
    const [from, to] = [join(folder, "in.pdf"), join(folder, "out.svg")];
    writeFileSync(from, pdf);
    const args = ["-svg", "-f", String(page), "-l", String(page), from, to];
    execFileSync("pdftocairo", args);
    const svg = readFileSync(to, "utf8");
    return [...svg.matchAll(PATH)].flatMap(([, width, data = ""]) => linesOf(Number(width), data));
  } finally {
    rmSync(folder, { recursive: true });
  }
};

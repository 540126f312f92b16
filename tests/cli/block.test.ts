import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { toPdf } from "../../src/export/pdf.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { joined, mapPath } from "../../src/geometry/path.ts";
import { readPathData, toPathData } from "../../src/geometry/pathData.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { FONT, laidOn } from "../support/sheetSubjects.ts";
import { drafted, halfRing, sleeveRing } from "../trace/edges/shapes.ts";
import { file, folder, json, ribwright, STACK } from "./ribwright.ts";

const block = drafted();

const outline = (ring: readonly Path[], by: number, more = "", taller = 1): string => {
  const [first, ...rest] = ring.map((run) =>
    mapPath(run, ({ x, y }) => ({ x: x + by, y: y * taller })),
  );
  return first ? `<path ${more} d="${toPathData(joined(first, ...rest))}Z"/>` : "";
};

const svg = (inner: string): string =>
  file(
    "own.svg",
    `<svg xmlns="http://www.w3.org/2000/svg" width="2000mm" height="1000mm" viewBox="-300 -100 2000 1000">${inner}</svg>`,
  );

const all = (taller = 1): string =>
  outline(halfRing(block.front), 0, 'id="a"', taller) +
  outline(halfRing(block.back), 400, 'id="b"') +
  outline(sleeveRing(block), 1100, 'id="c"');

type BlockJson = {
  readonly pieces: Readonly<Record<string, { readonly edges: Readonly<Record<string, string>> }>>;
};

const edgeLength = (path: string, piece: string, edge: string): number => {
  const { pieces } = json(path) as BlockJson;
  const read = readPathData(pieces[piece]?.edges[edge] ?? "");
  return "path" in read ? lengthOf(read.path) : Number.NaN;
};

const TAPE = {
  unit: "cm",
  halfWidth: 27.5,
  neckHalfWidth: 7.4,
  frontNeckDepth: 10,
  backNeckDepth: 2.2,
  raglanDepth: 25,
  sideLength: 33,
  hemHalfWidth: 27.2,
  sleeveWidth: 41.5,
  wristWidth: 22,
  underarmLength: 42,
};

describe("block", () => {
  test("takes a drawing's outlines by their shapes, writes the block, and draft takes it", () => {
    const out = join(folder(), "own.json");
    const done = ribwright("block", "--drawing", svg(all()), "--out", out);
    expect(done).toMatchObject({ status: 0, out: "" });
    expect(done.err).toMatch(/own\.json: all seams of the block meet\.\n$/u);
    expect(edgeLength(out, "front", "raglan")).toBeCloseTo(lengthOf(block.front.raglan), 2);
    const sheets = ribwright("draft", "--size", "W90", "--block", out, "--out", folder());
    expect(sheets.status).toBe(0);
  });

  test("prints what does not meet, one seam a line, and has done all the same", () => {
    const out = join(folder(), "own.json");
    const done = ribwright("block", "--drawing", svg(all(1.02)), "--out", out);
    expect(done.status).toBe(0);
    for (const line of done.out.trim().split("\n"))
      expect(line).toMatch(/^[\w-]+: (?:stop|attend): /u);
    expect(done.out).toMatch(/^side-match: stop: The front's side is .+\smm apart/mu);
    expect(existsSync(out)).toBe(true);
  });

  test("is told by names which line is which, and takes drawn turnings away", () => {
    const names = file("names.json", '{ "front": "a", "back": "b", "sleeve": "c" }');
    const widths = { raglan: 10, side: 10, underarm: 10, hem: 30, neckline: 10 };
    const turnings = file("turnings.json", JSON.stringify(widths));
    const out = join(folder(), "own.json");
    const words = ["--drawing", svg(all()), "--names", names, "--allowances", turnings];
    expect(ribwright("block", ...words, "--out", out).status).toBe(0);
    expect(edgeLength(out, "front", "hem")).toBeCloseTo(lengthOf(block.front.hem) - 10, 0);
  });

  test("reads the tool's own sheets back, put together by their marks", async () => {
    const { subject, sheets } = laidOn("a3");
    const bytes = await toPdf(subject, sheets, { font: FONT });
    const out = join(folder(), "own.json");
    const done = ribwright("block", "--drawing", file("own.pdf", bytes), "--out", out);
    expect(done.status).toBe(0);
    const sleeve = subject.garment.pieces.find(({ name }) => name === "sleeve");
    const truth = sleeve?.edges.find(({ name }) => name === "raglanFront")?.length ?? Number.NaN;
    expect(Math.abs(edgeLength(out, "sleeve", "raglanFront") - truth)).toBeLessThan(0.05);
  });

  test("solves a block from a tape's lengths, in their unit, and says what was assumed", () => {
    const out = join(folder(), "own.json");
    const done = ribwright("block", "--tape", file("t.json", JSON.stringify(TAPE)), "--out", out);
    expect(done).toMatchObject({ status: 0, out: "" });
    expect(done.err).toMatch(/^assumed: The nape was taken/mu);
    expect(edgeLength(out, "back", "side")).toBeCloseTo(330, 3);
    expect(edgeLength(out, "sleeve", "underarmFront")).toBeCloseTo(420, 3);
  });

  const REFUSED: readonly (readonly [string, () => readonly string[], RegExp])[] = [
    ["a script", () => ["--drawing", svg(`<script/>${all()}`)], /holds a <script>/u],
    [
      "no sleeve",
      () => ["--drawing", svg(outline(halfRing(block.back), 0))],
      /no line that can be taken for the front/u,
    ],
    [
      "a name that is not there",
      () => ["--drawing", svg(all()), "--names", file("n.json", '{"front":"zz"}')],
      /front is to be "zz", and no line/u,
    ],
    [
      "an edge that is none",
      () => ["--drawing", svg(all()), "--names", file("n.json", '{"front.top":"a"}')],
      /"front\.top" is no piece and no edge/u,
    ],
    [
      "a tape that cannot stand",
      () => ["--tape", file("t.json", JSON.stringify({ ...TAPE, hemHalfWidth: 59 }))],
      /the side would lie nearly flat/u,
    ],
    [
      "a tape without a length",
      () => ["--tape", file("t.json", '{"unit":"mm"}')],
      /halfWidth is missing/u,
    ],
    ["a file that is not there", () => ["--drawing", "nowhere.svg"], /is not there/u],
    ["a PDF that is none", () => ["--drawing", file("a.pdf", "hello")], /no PDF that can be read/u],
    ["both ways", () => ["--drawing", "a", "--tape", "b"], /one of them is enough/u],
    ["neither way", () => [], /--drawing FILE\.svg is missing/u],
  ];

  test.each(REFUSED)("refuses %s in words, writes nothing, and ends with 2", (_, words, says) => {
    const out = join(folder(), "own.json");
    const done = ribwright("block", ...words(), "--out", out);
    expect(done.status).toBe(2);
    expect(done.err).toMatch(says);
    expect(done.err).not.toMatch(STACK);
    expect(existsSync(out)).toBe(false);
  });
});

import { describe, expect, test } from "vitest";
import { mapPath } from "../../src/geometry/path.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { inWords } from "../../src/studio/ownBlock/inWords.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { examine } from "../../src/trace/doctor/examine.ts";
import { pieceByEdges } from "../../src/trace/edges/assignEdges.ts";
import { proposeNames } from "../../src/trace/edges/proposeNames.ts";
import { soundOutline } from "../../src/trace/edges/soundOutline.ts";
import { toBlock } from "../../src/trace/edges/toBlock.ts";
import { readSvg } from "../../src/trace/files/svgIn.ts";
import { blockByTape } from "../../src/trace/tape/blockByTape.ts";
import type { TapeMeasures } from "../../src/trace/tape/tapeMeasures.ts";
import type { Told } from "../../src/trace/told.ts";
import { drafted, halfRing, sleeveRing, wholeRing } from "../trace/edges/shapes.ts";

const de = printIn("mm", "de");
const inches = printIn("in", "de");

/** Words that a German sentence has none of. */
const ENGLISH = /\b(?:the|is|its|and|of|to|that|with|as|or|it)\b/iu;

const wordsOf = (told: Told<unknown>): readonly string[] =>
  "fault" in told ? [told.fault.reason, told.fault.do] : [];

const svg = (inner: string, head = ""): Told<unknown> =>
  readSvg(`${head}<svg xmlns="http://www.w3.org/2000/svg">${inner}</svg>`);

const BLOCK = drafted();
const TAPE: TapeMeasures = {
  halfWidth: 275,
  neckHalfWidth: 74,
  frontNeckDepth: 100,
  backNeckDepth: 22,
  raglanDepth: 250,
  frontOffsets: null,
  backOffsets: null,
  sideLength: 330,
  hemHalfWidth: 272,
  sleeveWidth: 415,
  wristWidth: 220,
  underarmLength: 420,
};

const leaning = (runs: readonly Path[]): readonly Path[] =>
  runs.map((run) =>
    mapPath(run, ({ x, y }) => ({ x: x * 1.02 + y * 0.06, y: y * 0.97 + x * 0.08 })),
  );

const outline = (runs: readonly Path[]) => {
  const [named] = proposeNames(runs);
  if (!named) throw new Error("no proposal");
  return named;
};

const FRONT = outline(halfRing(BLOCK.front));
const BACK = outline(halfRing(BLOCK.back));
const SLEEVE = outline(sleeveRing(BLOCK));

/** A block in which the doctor finds all that can be found. */
const crooked = () => {
  const [neckline, raglanFront, underarmFront, wrist, underarmBack, raglanBack] = leaning(
    sleeveRing(BLOCK),
  );
  const half = (runs: readonly Path[], by: number) => {
    const [neck, raglan, side, hem, centre] = runs.map((run) =>
      mapPath(run, ({ x, y }) => ({ x, y: y + by * x * y * 0.0006 + x * 0.12 * by })),
    );
    return { neckline: neck, raglan, side, hem, centre };
  };
  return {
    front: half(halfRing(BLOCK.front), 1),
    back: half(halfRing(BLOCK.back), -1.4),
    sleeve: { neckline, raglanFront, underarmFront, wrist, underarmBack, raglanBack },
  } as typeof BLOCK;
};

const toldBlock = (changed: Partial<Parameters<typeof toBlock>[0]>) =>
  toBlock({ front: FRONT, back: BACK, sleeve: SLEEVE, allowances: null, ...changed });

const assumedOf = (told: Told<{ readonly assumed: readonly string[] }>): readonly string[] =>
  "found" in told ? told.found.assumed : [];

const CASES: readonly (readonly [what: string, sentences: () => readonly string[]])[] = [
  ["a script", () => wordsOf(svg("<script/>"))],
  ["an event handler", () => wordsOf(svg('<path d="M0 0h9" onclick="x()"/>'))],
  ["a reference outside", () => wordsOf(svg('<use href="http://x/y"/>'))],
  ["an address in a style", () => wordsOf(svg('<path d="M0 0h9" style="fill:url(http://x)"/>'))],
  ["a style sheet that reaches out", () => wordsOf(svg("<style>@import 'x';</style>"))],
  ["entities", () => wordsOf(svg("", '<!DOCTYPE svg [<!ENTITY a "b">]>'))],
  ["another file", () => wordsOf(readSvg("<html></html>"))],
  ["broken XML", () => wordsOf(readSvg("<svg><path"))],
  ["no line", () => wordsOf(svg(""))],
  ["a line that cannot be read", () => wordsOf(svg('<path id="a" d="M0 0 Q 1"/>'))],
  ["an outline that is open", () => wordsOf(soundOutline("front", halfRing(BLOCK.front).slice(1)))],
  ["edges that are missing", () => wordsOf(pieceByEdges("front", new Map()))],
  ["front and back exchanged", () => wordsOf(toldBlock({ front: BACK, back: FRONT }))],
  ["what was assumed", () => assumedOf(toldBlock({ front: outline(wholeRing(BLOCK.front)) }))],
  ["a figure out of range", () => wordsOf(blockByTape({ ...TAPE, sideLength: 5 }))],
  ["a flat side", () => wordsOf(blockByTape({ ...TAPE, hemHalfWidth: 590 }))],
  ["a wide neck", () => wordsOf(blockByTape({ ...TAPE, neckHalfWidth: 190 }))],
  [
    "a level raglan",
    () => wordsOf(blockByTape({ ...TAPE, raglanDepth: 125, frontNeckDepth: 160 })),
  ],
  ["rough offsets", () => wordsOf(blockByTape({ ...TAPE, frontOffsets: [30, -30, 30] }))],
  ["what a tape assumes", () => assumedOf(blockByTape(TAPE))],
  [
    "all findings of the doctor, sound or not",
    () => [BLOCK, crooked()].flatMap((block) => examine(block).map(({ message }) => message)),
  ],
  [
    "all remedies",
    () => examine(crooked()).flatMap(({ remedies }) => remedies.map(({ words }) => words)),
  ],
];

describe("what the core says of one's own block, in German", () => {
  test.each(CASES)("%s", (_, sentences) => {
    const all = sentences();
    expect(all.length).toBeGreaterThan(0);
    for (const sentence of all) {
      const said = inWords(sentence, de);
      expect(said, sentence).not.toMatch(ENGLISH);
      expect(said).not.toMatch(/\d\.\d+\u00a0mm/u);
    }
  });

  test("every kind of finding is met by these cases", () => {
    const ids = examine(crooked())
      .filter(({ verdict }) => verdict !== "sound")
      .map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(9);
  });

  test("lengths stand in the maker's unit", () => {
    expect(inWords("Leave both and ease 12.7\u00a0mm in while sewing.", inches)).toBe(
      "Beide lassen und ½\u00a0Zoll beim Nähen einhalten.",
    );
  });
});

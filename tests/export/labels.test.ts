import { describe, expect, test } from "vitest";
import { anyCrosses } from "../../src/export/clip.ts";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { PIECE_TITLES } from "../../src/export/data/pieceWords.ts";
import { drawLayout, windowsOf } from "../../src/export/drawing.ts";
import { boxOf, grown, isWithin, meets, type Word } from "../../src/export/word.ts";
import { pointsAlong } from "../support/samples.ts";
import { laidOn, SUBJECTS } from "../support/sheetSubjects.ts";

/** A word may stand as near to a line as this, in mm. */
const CLEAR = 0.3;

describe.each(SUBJECTS)("the words on the pieces of %s", (_, subject) => {
  test.each(PAPER_NAMES)("cross no line and no other word on %s", (paper) => {
    const { sheets } = laidOn(paper, subject);
    const { pieces } = drawLayout(subject, sheets);
    const lines = pieces.flatMap(({ strokes }) => strokes.map(({ path }) => pointsAlong(path, 80)));
    const words = pieces.flatMap((piece) => piece.words);
    for (const word of words) {
      expect(anyCrosses(lines, grown(boxOf(word), CLEAR)), `“${word.text}” on ${paper}`).toBe(
        false,
      );
    }
    words.forEach((word, i) => {
      for (const other of words.slice(i + 1)) expect(meets(boxOf(word), boxOf(other))).toBe(false);
    });
  });

  test.each(PAPER_NAMES)(
    "name every piece on %s, with its cut count, on a printed sheet",
    (paper) => {
      const { sheets } = laidOn(paper, subject);
      const windows = windowsOf(sheets);
      const isPrinted = (word: Word): boolean =>
        windows.some((window) => isWithin(boxOf(word), window));
      const { pieces } = drawLayout(subject, sheets);
      for (const [i, { name, cut }] of subject.garment.pieces.entries()) {
        const words = pieces[i]?.words ?? [];
        const title = words.find(({ text }) => text.startsWith(PIECE_TITLES[name].title));
        const count = words.find(({ text }) => text.includes(`Cut ${cut} from`));
        expect(title && isPrinted(title), `${name} on ${paper}`).toBe(true);
        expect(count && isPrinted(count), `${name} on ${paper}`).toBe(true);
      }
    },
  );
});

describe.each(SUBJECTS)("the words along the grain and the fold of %s", (_, subject) => {
  // Where a line runs beside a joint, a word close to it would lie over the joint and its scale.
  test.each(["a4", "letter"] as const)("keep off the joints of %s", (paper) => {
    const { sheets } = laidOn(paper, subject);
    const inner = windowsOf(sheets).map((window) => grown(window, -sheets.grid.overlap));
    const along = drawLayout(subject, sheets)
      .pieces.flatMap(({ words }) => words)
      .filter(({ text }) => text === "grain" || text === "place on the fold");
    expect(along.length).toBeGreaterThan(5);
    for (const word of along) {
      const isWhole = inner.some((window) => isWithin(boxOf(word), window));
      expect(isWhole, `“${word.text}” at ${word.x}, ${word.y}`).toBe(true);
    }
  });
});

describe("the words on a piece", () => {
  const { subject, sheets } = laidOn("a4");
  const { pieces } = drawLayout(subject, sheets);
  const textsOf = (name: string): readonly string[] =>
    pieces.find(({ piece }) => piece === name)?.words.map(({ text }) => text) ?? [];

  test("tell a sleeve's front from its back", () => {
    expect(textsOf("sleeve")).toEqual(expect.arrayContaining(["front", "back", "shoulder"]));
  });

  test("tell what each mark of a band meets", () => {
    const neck = ["centre back", "raglan, back", "half way", "raglan, front", "centre front"];
    const marksOf = (name: string, words: readonly string[]): readonly string[] =>
      textsOf(name).filter((text) => words.includes(text));
    expect(marksOf("neckband", neck)).toEqual([...neck, ...neck.slice(1, 4).reverse()]);
    expect(marksOf("hemBand", ["side", "centre front", "centre back"])).toEqual([
      "side",
      "centre front",
      "side",
      "centre back",
    ]);
    expect(marksOf("cuff", ["underarm seam", "quarter", "half"])).toHaveLength(4);
  });

  test("say the finished size of a band beside its cut size", () => {
    expect(textsOf("hemBand").join(" ")).toContain("finished");
  });

  test("say where the fold and the grain run", () => {
    expect(textsOf("front")).toEqual(expect.arrayContaining(["place on the fold", "grain"]));
  });

  test("are the same however often they are set", () => {
    const again = drawLayout(subject, { ...sheets }).pieces;
    expect(again.map(({ words }) => words)).toEqual(pieces.map(({ words }) => words));
  });
});

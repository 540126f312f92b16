import { describe, expect, test } from "vitest";
import { anyCrosses } from "../../src/export/clip.ts";
import { PAPER_NAMES, type PaperName, TEST_SQUARE } from "../../src/export/data/paper.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { cornerMarks } from "../../src/export/joints.ts";
import type { Run } from "../../src/export/pageArt.ts";
import { type SheetScene, sheetArt } from "../../src/export/sheetArt.ts";
import type { SheetSubject } from "../../src/export/subject.ts";
import { gridOf, sheetName, windowOf } from "../../src/export/tiles.ts";
import { boxOf, grown, isWithin, meets } from "../../src/export/word.ts";
import { pointsAlong } from "../support/samples.ts";
import { laidOn, SUBJECTS } from "../support/sheetSubjects.ts";

const scenesOf = (paper: PaperName, subject?: SheetSubject): readonly SheetScene[] => {
  const laid = laidOn(paper, subject);
  const drawing = drawLayout(laid.subject, laid.sheets);
  const marks = cornerMarks(laid.sheets);
  return laid.sheets.pages.map((page) => ({ ...laid, drawing, marks, page }));
};

const windowFor = ({ sheets, page }: SheetScene) =>
  windowOf(gridOf(sheets.width, sheets.height), page.row, page.column);

/** Boxes 50 mm wide and high. */
const isSquare = ({ points }: Run): boolean => {
  const [a, b, c] = points;
  return (
    points.length === 4 &&
    !!a &&
    !!b &&
    !!c &&
    b.x - a.x === TEST_SQUARE &&
    c.y - b.y === TEST_SQUARE
  );
};

describe.each(SUBJECTS)("what helps to print and join the sheets of %s", (_, subject) => {
  test.each(PAPER_NAMES)("stays inside the margins of %s", (paper) => {
    for (const scene of scenesOf(paper, subject)) {
      const room = grown(windowFor(scene), 0.01);
      const { shapes, words } = sheetArt(scene);
      for (const word of words) expect(isWithin(boxOf(word), room), word.text).toBe(true);
      for (const { x, y } of shapes.flatMap(({ runs }) => runs.flatMap(({ points }) => points))) {
        expect(isWithin({ left: x, top: y, right: x, bottom: y }, room)).toBe(true);
      }
    }
  });

  test.each(PAPER_NAMES)("names each sheet of %s, its number and the body", (paper) => {
    const scenes = scenesOf(paper, subject);
    scenes.forEach((scene, i) => {
      const texts = sheetArt(scene).words.map(({ text }) => text);
      expect(texts).toContain(sheetName(scene.page.row, scene.page.column));
      expect(texts.join(" ")).toContain(`sheet ${i + 1} of ${scenes.length}, `);
    });
  });

  test.each(PAPER_NAMES)("has a test square on each sheet of %s that no line crosses", (paper) => {
    for (const scene of scenesOf(paper, subject)) {
      const squares = sheetArt(scene).shapes.flatMap(({ runs }) => runs.filter(isSquare));
      expect(squares).toHaveLength(1);
      const [corner] = squares[0]?.points ?? [];
      if (!corner) throw new Error("no square");
      const box = {
        left: corner.x,
        top: corner.y,
        right: corner.x + TEST_SQUARE,
        bottom: corner.y + TEST_SQUARE,
      };
      const lines = scene.drawing.pieces.flatMap(({ strokes }) =>
        strokes.map(({ path }) => pointsAlong(path, 80)),
      );
      expect(anyCrosses(lines, box), sheetName(scene.page.row, scene.page.column)).toBe(false);
      const words = scene.drawing.pieces.flatMap((piece) => piece.words);
      expect(words.some((word) => meets(boxOf(word), box))).toBe(false);
    }
  });
});

describe("joints", () => {
  const scenes = scenesOf("a4");

  test("carry the same marks on every sheet that meets there", () => {
    for (const { at, letter } of scenes[0]?.marks ?? []) {
      const seen = scenes.filter((scene) => {
        const { left, top, right, bottom } = windowFor(scene);
        return at.x > left && at.x < right && at.y > top && at.y < bottom;
      });
      for (const scene of seen) {
        const there = sheetArt(scene).words.find(({ text, x }) => text === letter && x === at.x);
        expect(there?.y).toBeCloseTo(at.y, -1);
      }
    }
  });

  test("say on which sheet to lay, and only where that sheet is printed", () => {
    const names = scenes.map(({ page }) => sheetName(page.row, page.column));
    const said = scenes.flatMap((scene) =>
      sheetArt(scene).words.flatMap(({ text }) => /lay on (\w+)$/.exec(text)?.[1] ?? []),
    );
    expect(said.length).toBeGreaterThan(10);
    for (const name of said) expect(names).toContain(name);
  });
});

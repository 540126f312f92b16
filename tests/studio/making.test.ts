import { describe, expect, test } from "vitest";
import { makingUp } from "../../src/guide/makingUp.ts";
import { voiceOf } from "../../src/guide/words/tell.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import { homePaper, isHome } from "../../src/studio/files/exportJob.ts";
import { drawnPicture, PICTURE_LETTERS } from "../../src/studio/guide/pictureShapes.ts";
import { isForChild, isSewn, withForChild, withSewn } from "../../src/studio/guide/sewn.ts";
import { voiceFor } from "../../src/studio/guide/voice.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { garmentOf } from "../support/garments.ts";

describe("what is sewn", () => {
  const work = choirWork();
  const held = (marks: readonly string[]) => ({
    ...work,
    sewn: { [work.bodies[work.held]?.id ?? ""]: marks },
  });

  test("is ticked off for the held body and for no other", () => {
    const done = withSewn(work, "cuffs", true);
    expect(isSewn(done, "cuffs")).toBe(true);
    expect(isSewn({ ...done, held: (work.held + 1) % work.bodies.length }, "cuffs")).toBe(false);
    expect(isSewn(withSewn(done, "cuffs", false), "cuffs")).toBe(false);
  });
  test("twice ticked is kept once", () => {
    const twice = withSewn(withSewn(work, "press", true), "press", true);
    expect(Object.values(twice.sewn)).toEqual([["press"]]);
  });
  test("a handbook with numbered steps keeps what was ticked", () => {
    expect(isSewn(held(["1", "8"]), "stay-v")).toBe(true);
    expect(isSewn(held(["1", "8"]), "hem-band")).toBe(true);
    expect(isSewn(held(["1", "8"]), "cuffs")).toBe(false);
  });
  test("for a child stands beside the steps", () => {
    const child = withForChild(withSewn(work, "press", true), true);
    expect([isForChild(child), isSewn(child, "press")]).toEqual([true, true]);
    expect(isForChild(withForChild(child, false))).toBe(false);
  });
});

describe("the voice of the studio", () => {
  test("in millimetres it is the guide's own", () => {
    expect(voiceFor(printIn("mm", "de"))).toBe(voiceOf("de"));
  });
  test("in inches it prints lengths as the studio does", () => {
    expect(voiceFor(printIn("in", "en")).length(25.4, 1)).toBe(printIn("in", "en").full(25.4));
  });
});

describe("guide and handout", () => {
  test("go on a home printer's paper", () => {
    expect([homePaper("letter"), homePaper("a0"), homePaper("a4")]).toEqual(["letter", "a4", "a4"]);
  });
  test("are no pattern", () => {
    expect((["pdf", "svg", "dxf", "report"] as const).some(isHome)).toBe(false);
    expect((["guide", "handout", "answers"] as const).every(isHome)).toBe(true);
  });
});

describe("a picture on the screen", () => {
  const pictures = makingUp(garmentOf()).flatMap((step) => step.pictures);
  const most = { width: 340, height: 200 };
  const drawn = pictures.map((picture) => drawnPicture(picture, most, voiceOf("en")));

  test("fits its room and fills it one way", () => {
    expect(drawn.length).toBeGreaterThan(8);
    for (const { width, height } of drawn) {
      expect(width).toBeLessThanOrEqual(most.width + 1e-9);
      expect(height).toBeLessThanOrEqual(most.height + 1e-9);
      expect(Math.max(width / most.width, height / most.height)).toBeCloseTo(1, 9);
    }
  });
  test("has every kind of stroke that its picture has in view, and its words", () => {
    pictures.forEach((picture, i) => {
      const kinds = new Set(picture.strokes.map(({ kind }) => kind));
      const shown = new Set(drawn[i]?.shapes.map(({ kind }) => kind));
      if (kinds.has("stitching")) expect(shown).toContain("stitching");
      if (kinds.has("wrong")) expect(shown).toContain("hatch");
      expect(drawn[i]?.words).toHaveLength(picture.words.length);
    });
  });
  test("keeps its lines and words within", () => {
    for (const { width, height, shapes, words } of drawn) {
      for (const { d } of shapes.filter(({ kind }) => kind !== "stop")) {
        const numbers = [...d.matchAll(/-?\d+(?:\.\d+)?/gu)].map(([text]) => Number(text));
        numbers.forEach((value, i) => {
          expect(value).toBeGreaterThanOrEqual(-0.1);
          expect(value).toBeLessThanOrEqual((i % 2 === 0 ? width : height) + 0.1);
        });
      }
      for (const { x, y } of words) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(PICTURE_LETTERS);
        expect(y).toBeLessThanOrEqual(height);
      }
    }
  });
});

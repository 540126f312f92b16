import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { PieceName } from "../../src/drafting/piece.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { apart } from "../../src/geometry/point.ts";
import { lineBetween } from "../../src/guide/lesson/lines.ts";
import type { LessonId, LessonStep } from "../../src/guide/lesson/step.ts";
import { lesson } from "../../src/guide/lesson.ts";
import { edgeOf, pieceOf } from "../../src/guide/shapes.ts";
import { tell, tellBlank, voiceOf } from "../../src/guide/words/tell.ts";
import { CUT_AWAY, choicesWith, garmentOf, SHRINKING, WITHOUT_V } from "../support/garments.ts";

const english = voiceOf("en");
const stepOf = (garment: Garment, id: LessonId): LessonStep => {
  const step = lesson(garment).find((one) => one.id === id);
  if (!step) throw new Error(id);
  return step;
};
const answers = (garment: Garment, id: LessonId): readonly number[] =>
  stepOf(garment, id).questions.map(({ answer }) => answer);
const workings = (garment: Garment, id: LessonId): readonly string[] =>
  stepOf(garment, id).questions.map(({ working }) => tell(english, working));

const NECKLINE = {
  alterations: { neckline: { on: true, lowerFront: 20, lowerBack: 5, widen: 10 } },
};

describe("the steps of a lesson", () => {
  const ids = (garment: Garment) => lesson(garment).map(({ id }) => id);

  test("are block, sides, hem, sleeve end, V, bands, turnings; the neckline where it is on", () => {
    const usual = ["block", "side-seams", "hem", "sleeve-end", "v-insert", "bands", "turnings"];
    expect(ids(garmentOf())).toEqual(usual);
    expect(ids(garmentOf(NECKLINE))).toEqual(["block", "neckline", ...usual.slice(1)]);
  });

  test("leave out what is off", () => {
    const { moveSideSeams, endSleeve } = choicesWith({}).alterations;
    const garment = garmentOf({
      alterations: {
        ...WITHOUT_V.alterations,
        moveSideSeams: { ...moveSideSeams, on: false },
        endSleeve: { ...endSleeve, on: false },
      },
    });
    expect(ids(garment)).toEqual(["block", "hem", "bands", "turnings"]);
  });

  test("start each from the result of the one before", () => {
    const steps = lesson(garmentOf(NECKLINE)).filter(
      ({ id }) => id !== "bands" && id !== "turnings",
    );
    const lines = new Map<PieceName, string>();
    const data = (piece: LessonStep["after"][number]): string =>
      piece.lines.map(({ path }) => toPathData(path)).join();
    for (const { before, after } of steps) {
      for (const piece of before) expect(data(piece)).toBe(lines.get(piece.piece));
      for (const piece of after) lines.set(piece.piece, data(piece));
    }
    // And they end at the garment's own pieces.
    const garment = garmentOf(NECKLINE);
    for (const name of ["front", "back", "sleeve", "vInsert"] as const) {
      const piece = pieceOf(garment, name);
      const own = piece.edges.map(({ path }) => toPathData(path)).sort();
      expect((lines.get(name) ?? "").split(/,(?=M)/u).sort()).toEqual(own);
    }
  });

  test("show only the pieces that they change", () => {
    const changed = (id: LessonId) => stepOf(garmentOf(), id).after.map(({ piece }) => piece);
    expect(changed("hem")).toEqual(["front", "back"]);
    expect(changed("sleeve-end")).toEqual(["sleeve"]);
    expect(changed("v-insert")).toEqual(["front", "vInsert"]);
    expect(changed("side-seams")).toEqual(["front", "back", "sleeve"]);
  });
});

test("an alteration of nothing shows the pieces as they are, for a class to change", () => {
  const neckline = { on: true, lowerFront: 0, lowerBack: 0, widen: 0 };
  const step = stepOf(garmentOf({ alterations: { neckline } }), "neckline");
  expect(step.before).toEqual([]);
  expect(step.after.map(({ piece }) => piece)).toEqual(["front", "back", "sleeve"]);
  expect(step.numbers.length).toBeGreaterThan(3);
});

describe("questions", () => {
  const garment = garmentOf();

  test("have the answers of the method's worked example", () => {
    expect(answers(garment, "block")[0]).toBeCloseTo(140, 6);
    expect(answers(garment, "block")[1]).toBeCloseTo(302.3914, 3);
    expect(answers(garment, "side-seams")[0]).toBeCloseTo(287.7, 6);
    expect(answers(garment, "side-seams")[1]).toBeCloseTo(572 - 247.0586, 3);
    expect(answers(garment, "hem")).toEqual([
      expect.closeTo(274.1414, 3),
      expect.closeTo(76.2 - 50.8, 6),
    ]);
    expect(answers(garment, "sleeve-end")[0]).toBeCloseTo(369.4517, 3);
    expect(answers(garment, "v-insert")).toEqual([
      expect.closeTo(60.6464, 3),
      expect.closeTo(70.6941, 3),
    ]);
    expect(answers(garment, "bands").map((n) => Number(n.toFixed(1)))).toEqual([
      167.7, 50.8, 1022.7, 106.7,
    ]);
    expect(answers(garment, "turnings")[0]).toBeCloseTo(287.7 + 9.525, 3);
  });

  test("have sums that a class can follow", () => {
    expect(workings(garment, "hem")[0]).toBe("324.94\u00a0mm − 50.8\u00a0mm = 274.14\u00a0mm");
    expect(workings(garment, "bands")[0]).toBe(
      "155\u00a0mm + 0\u00a0mm + 2 × 6.35\u00a0mm = 167.7\u00a0mm",
    );
  });

  /** What a line of sums comes to: brackets, then × and ÷, then + and −. */
  const worked = (line: string): number => {
    const flat = line.replace(/\(([^()]+)\)/gu, (_, inner: string) => String(worked(inner)));
    return flat
      .replaceAll(" − ", " + −")
      .split(" + ")
      .map((part) =>
        part.split(/ (?=[×÷])/u).reduce((value, factor) => {
          const number = Number(factor.replace(/^[×÷] /u, "").replace("−", "-"));
          if (factor.startsWith("×")) return value * number;
          return factor.startsWith("÷") ? value / number : number;
        }, 1),
      )
      .reduce((a, b) => a + b, 0);
  };

  test("have sums that come out, to the last digit that is shown", () => {
    for (const changes of [{}, NECKLINE, WITHOUT_V, CUT_AWAY, SHRINKING]) {
      for (const { questions } of lesson(garmentOf(changes))) {
        for (const { working, answer } of questions) {
          const shown = working.slots["answer"];
          const told = shown?.kind === "mm" ? shown.value : Number.NaN;
          expect(Math.abs(told - answer)).toBeLessThan(0.025);
          // As a class works it out: with the numbers that stand there, and nothing finer.
          const text = tell(english, working).replaceAll("\u00a0mm", "");
          const [left = "", right = ""] = text.split(" = ");
          if (!/^[\d.+−×÷() ]+$/u.test(left) || text.split(" = ").length > 2) continue;
          if (working.key === "lesson.v.sideSum" || working.key === "lesson.sleeve.underarmSum")
            continue;
          expect(worked(left), text).toBeCloseTo(Number(right), 6);
        }
      }
    }
  });

  test("of a line that is not straight say that it was measured", () => {
    const moveSideSeams = { ...DEFAULT_CHOICES.alterations.moveSideSeams, on: false };
    const body = garmentOf({ alterations: { moveSideSeams } });
    const shaped = workings(
      garmentOf({ alterations: { moveSideSeams } }, { ...body.measures, hip: 1250 }),
      "hem",
    );
    expect(shaped[0]).toMatch(/^(Measured along the line|[\d.]+)/u);
  });

  test("of a cut-away V ask by how much the insert is short", () => {
    expect(answers(garmentOf(CUT_AWAY), "v-insert")[2]).toBeCloseTo(21.633, 2);
  });

  test("are blank before they are answered, and choices are told", () => {
    const [question] = stepOf(garment, "hem").questions;
    const text = question ? tellBlank(english, question.working) : "";
    expect(text).toBe("324.94\u00a0mm − 50.8\u00a0mm = ________");
    expect(tellBlank(english, stepOf(garment, "hem").sentence)).toBe(
      "Raise the hem by 50.8\u00a0mm.",
    );
  });
});

describe("numbers beside the lines", () => {
  test("are the lengths of the lines that are new", () => {
    const { numbers, after } = stepOf(garmentOf(), "sleeve-end");
    expect(numbers.map(({ edge }) => edge)).toEqual(
      expect.arrayContaining(["underarmFront", "wrist", "underarmBack"]),
    );
    for (const { piece, edge, value } of numbers) {
      const path = after
        .find((one) => one.piece === piece)
        ?.lines.find(({ name }) => name === edge)?.path;
      expect(path ? lengthOf(path) : Number.NaN).toBeCloseTo(value, 9);
    }
  });
});

describe("a line on its way from old to new", () => {
  const side = edgeOf(garmentOf().block.front, "side").path;
  const moved = edgeOf(pieceOf(garmentOf(), "front"), "side").path;

  test("is the old one at first and the new one at last", () => {
    for (const [share, wanted] of [
      [0, side],
      [1, moved],
    ] as const) {
      const line = lineBetween(side, moved, share);
      expect(apart(startOf(line), startOf(wanted))).toBeLessThan(1e-6);
      expect(apart(endOf(line), endOf(wanted))).toBeLessThan(1e-6);
      expect(lengthOf(line)).toBeCloseTo(lengthOf(wanted), 1);
    }
  });
});

test("every sentence is whole, in both languages", () => {
  for (const language of ["en", "de"] as const) {
    for (const changes of [{}, NECKLINE, CUT_AWAY, SHRINKING]) {
      for (const step of lesson(garmentOf(changes))) {
        const told = [step.title, step.sentence, step.why, ...(step.atScale ? [step.atScale] : [])];
        const asked = step.questions.flatMap(({ ask, working }) => [ask, working]);
        for (const sentence of [...told, ...asked]) {
          expect(tell(voiceOf(language), sentence)).not.toMatch(/[{}]|NaN/u);
        }
      }
    }
  }
});

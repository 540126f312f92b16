import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Check } from "../../src/checks/check.ts";
import { checkGarment } from "../../src/checks/checkGarment.ts";
import type { Body, MeasureId } from "../../src/drafting/measures.ts";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { type Made, make } from "../../src/project/make.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { sentenceIn } from "../../src/studio/tape/sentences.ts";
import { CHECK_IDS, isCheckId } from "../../src/studio/words/checkSentences.ts";
import { de, deSentences } from "../../src/studio/words/de.ts";
import type { Say } from "../../src/studio/words/say.ts";
import { filled } from "../../src/studio/words/sentence.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { anyChoices, anyMeasures } from "../laws/someWork.ts";
import { choicesOf } from "../support/choices.ts";

const say: Say = (key, slots) => filled(de[key], slots ?? {});
const GERMAN = { sentences: deSentences, say, print: printIn("mm", "de") };

type Met = { readonly check: Check; readonly german: string };

const spoken = ({ garment }: Made, body: Body, checks: readonly Check[]): readonly Met[] =>
  checks.map((check) => ({ check, german: sentenceIn(GERMAN, { garment, body, check }) }));

const meet = (body: Body, choices = choicesOf({})): readonly Met[] => {
  const made = make(body, choices, null);
  return spoken(made, body, made.checks);
};

const bodyWith = (measures: Partial<Record<MeasureId, number>>): Body => ({
  id: "b",
  measures: { ...WORKED_EXAMPLE, ...measures },
});

/** The two rails and one verdict that no body and choice within the ranges meet, told by hand. */
const forced = (): readonly Met[] => {
  const body = bodyWith({});
  const made = make(body, choicesOf({}), null);
  const rail = (id: `rail-${string}`, used: number, message: string) =>
    ({ id, wanted: 35.5, used, unit: "mm", stops: true, message }) as const;
  const ways = [
    rail("rail-sleeve-neck", 20.5, "It is 35.5\u00a0mm and 20.5\u00a0mm. Mend it."),
    rail("rail-v-cut", 20.5, "It is 35.5\u00a0mm and 20.5\u00a0mm. Mend it."),
    rail("rail-v-cut", 0, "It is 35.5\u00a0mm and 0\u00a0mm. Mend it."),
  ];
  return ways.flatMap((one) =>
    spoken(made, body, checkGarment({ ...made.garment, rails: [one] }, [])),
  );
};

/** Bodies and choices anywhere in their ranges, and those that are known to meet a rail. */
const everything = (): readonly Met[] => {
  const some = fc.sample(fc.tuple(anyMeasures, anyChoices), { numRuns: 250, seed: 5 });
  return [
    ...meet(bodyWith({})),
    ...meet(bodyWith({ waist: 1100, hip: 800 })),
    ...meet({ id: "few", measures: { height: 1700, chest: 960, waist: 1300, hip: 1000 } }),
    ...meet({ id: "few", measures: { height: 1700, chest: 960, waist: 800, hip: 1600 } }),
    ...meet({ id: "three", measures: { height: 1700, chest: 960, waist: 1500 } }),
    ...meet(bodyWith({ neckBase: 250 }), choicesOf({ neckband: { finishedDepth: 40 } })),
    ...meet(
      bodyWith({ neckBase: 250 }),
      choicesOf({ neckline: { on: true, lowerBack: -20 }, neckband: { finishedDepth: 40 } }),
    ),
    ...meet(
      bodyWith({ chest: 700, scyeDepth: 100 }),
      choicesOf({ neckline: { on: true, widen: 80 } }),
    ),
    ...meet(
      bodyWith({}),
      choicesOf({ neckline: { on: true, lowerFront: 200, lowerBack: 200 }, raiseHem: { by: 300 } }),
    ),
    ...meet(
      bodyWith({ wrist: 60, hip: 62 }),
      choicesOf({ cuff: { ease: -60 }, hemBand: { ease: -60 } }),
    ),
    ...meet({ id: "short", measures: { height: 800, chest: 2000, upperArm: 2000, wrist: 2000 } }),
    ...forced(),
    ...some.flatMap(([measures, choices]) => meet({ id: "any", measures }, choices)),
  ];
};

const MET = everything();

type Figure = { readonly size: number; readonly unit: string };

/** The numbers of a sentence with their units; a stop or comma that ends it is none of theirs. */
const figuresIn = (text: string): readonly Figure[] =>
  [...text.matchAll(/([−-]?\d+(?:[.,]\d+)?)(\u00a0[a-zA-Z%]+|°)/gu)].map(
    ([, size = "", unit = ""]) => ({
      size: Number(size.replace("−", "-").replace(",", ".")),
      unit,
    }),
  );

/** Per cent have a tenth on the page and none in the report; a half may be rounded either way. */
const sameFigure = (a: Figure, b: Figure): boolean =>
  a.unit === b.unit && Math.abs(a.size - b.size) <= (a.unit.endsWith("%") ? 0.51 : 0.101);

const ENGLISH =
  /\b(?:the|and|is|it|its|limit|measure|make|give|round|apart|must|stretch|range|again|wide|than|less|more)\b/iu;

describe("in German what the checks say", () => {
  test("is met for every check there is", () => {
    const met = new Set(MET.map(({ check }) => check.id));
    expect(CHECK_IDS.filter((id) => !met.has(id))).toEqual([]);
    const doubted = MEASURE_IDS.filter((id) => met.has(`measure-${id}`));
    expect(doubted).toEqual(MEASURE_IDS.filter((id) => id !== "height"));
  });

  test("is met for no check without a sentence", () => {
    const ids = new Set(MET.map(({ check }) => check.id));
    const known = (id: string) => isCheckId(id) || id.startsWith("measure-");
    expect([...ids].filter((id) => !known(id))).toEqual([]);
  });

  test("stands for every rail that the core can hold", () => {
    const files = ["src/drafting", "src/bands"].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts"))
        .map((file) => readFileSync(`${folder}/${file}`, "utf8")),
    );
    const rails = new Set(files.join("\n").match(/(?<=")rail-[a-z-]+(?=")/gu));
    expect([...rails].sort()).toEqual(CHECK_IDS.filter((id) => id.startsWith("rail-")).sort());
  });

  test("holds no English, no core's message, no empty slot", () => {
    for (const { check, german } of MET) {
      expect(german, check.id).not.toMatch(ENGLISH);
      expect(german, check.id).not.toBe(check.message);
      expect(german, check.id).not.toMatch(/[{}]|undefined|NaN/u);
      expect(german, check.id).toMatch(/\.$/u);
    }
  });

  test("holds the very numbers of the report's sentence", () => {
    for (const { check, german } of MET) {
      const [en, own] = [figuresIn(check.message), figuresIn(german)];
      expect(own.length, `${check.message}\n${german}`).toBe(en.length);
      const missing = en.filter((figure) => !own.some((mine) => sameFigure(mine, figure)));
      expect(missing, `${check.message}\n${german}`).toEqual([]);
    }
  });

  test("tells what to change where something is to be changed, and only there", () => {
    for (const { check, german } of MET) {
      const cured = (text: string) => text.split(/[.] /u).length > 1;
      expect(cured(german), `${check.message}\n${german}`).toBe(cured(check.message));
    }
  });
});

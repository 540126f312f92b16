import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { layOut } from "../../src/export/layout.ts";
import { lesson } from "../../src/guide/lesson.ts";
import { makingUp } from "../../src/guide/makingUp.ts";
import type { GuideStep } from "../../src/guide/step.ts";
import { tell } from "../../src/guide/words/tell.ts";
import type { GuideKey } from "../../src/guide/words/told.ts";
import { readBodies } from "../../src/project/bodiesCsv.ts";
import { type Made, make } from "../../src/project/make.ts";
import { plainFractions } from "../../src/studio/classroom/classVoice.ts";
import { voiceFor } from "../../src/studio/guide/voice.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { reportText } from "../support/reportText.ts";
import { referenceText } from "./table.ts";

/** Source of the bodies: ANSUR II, 40 of them (data/sample-bodies.csv). The report is the contract's. */
type Seam = { readonly id: string; readonly lengthA: number };
type Band = {
  readonly opening: number;
  readonly finishedLength: number;
  readonly cutLength: number;
  readonly finishedDepth: number;
  readonly stretchToSew: number;
  readonly quarterMarks: readonly number[];
};
type Report = {
  readonly seams: readonly Seam[];
  readonly bands: {
    readonly neckband: Band & { readonly marks: readonly { readonly at: number }[] };
    readonly cuff: Band;
    readonly hemBand: Band & { readonly holdsBlouseFrom: number };
  };
  readonly pieces: Readonly<
    Record<string, { readonly edges: Readonly<Record<string, { readonly length: number }>> }>
  >;
};

const read = readBodies(referenceText("sample-bodies.csv"), "sample-bodies.csv");
const bodies = "rows" in read ? read.rows.flatMap((row) => ("read" in row ? [row.read] : [])) : [];

const reportOf = (made: Made): Report => {
  const text = reportText(made, layOut(made.garment.pieces, "a0"));
  const report: Report = JSON.parse(text);
  return report;
};

const stepOf = (steps: readonly GuideStep[], id: GuideStep["id"]): GuideStep => {
  const step = steps.find((one) => one.id === id);
  if (!step) throw new Error(id);
  return step;
};

const numberIn = (step: GuideStep, key: GuideKey, slot: string): number => {
  const found = step.sentences.find((sentence) => sentence.key === key)?.slots[slot];
  return found && "value" in found ? found.value : Number.NaN;
};

/** The report has six decimals. */
const near = (value: number, wanted: number): void =>
  expect(Math.abs(value - wanted), `${value} for ${wanted}`).toBeLessThan(2e-6);

describe("the forty sample bodies", () => {
  test("are forty", () => {
    expect(bodies.length).toBe(40);
  });

  test.each(bodies.map((body) => ({ id: body.id, body })))(
    "$id: the guide's numbers are the report's",
    ({ body }) => {
      const made = make(body, DEFAULT_CHOICES, null);
      const report = reportOf(made);
      const steps = makingUp(made.garment);
      const seam = (id: string): number =>
        report.seams.find((one) => one.id === id)?.lengthA ?? Number.NaN;
      near(numberIn(stepOf(steps, "raglan-front"), "raglan.sew", "length"), seam("raglan-front"));
      near(numberIn(stepOf(steps, "raglan-back"), "raglan.sew", "length"), seam("raglan-back"));
      const side = stepOf(steps, "underarm-and-side");
      near(numberIn(side, "side.sew", "side"), seam("side"));
      near(numberIn(side, "side.sew", "underarm"), seam("underarm"));
      near(numberIn(side, "side.sew", "whole"), seam("side") + seam("underarm"));
      near(numberIn(stepOf(steps, "v-insert"), "v.sew", "length"), seam("v-left"));
      for (const [id, band] of [
        ["neckband", report.bands.neckband],
        ["cuffs", report.bands.cuff],
        ["hem-band", report.bands.hemBand],
      ] as const) {
        const step = stepOf(steps, id);
        near(numberIn(step, "band.ring", "length"), band.finishedLength);
        near(numberIn(step, "band.fold", "depth"), band.finishedDepth);
        // A hem band longer than the hem is eased in.
        if (band.opening > band.finishedLength) {
          near(numberIn(step, "band.stretch", "by"), band.opening - band.finishedLength);
          near(numberIn(step, "band.stretch", "stretch"), band.stretchToSew);
        } else near(numberIn(step, "band.ease", "by"), band.finishedLength - band.opening);
        near(step.marks?.openingLength ?? Number.NaN, band.opening);
        const at = step.marks?.rows.map(({ onBand }) => onBand) ?? [];
        const wanted =
          id === "neckband"
            ? report.bands.neckband.marks.map((mark) => mark.at)
            : band.quarterMarks;
        expect(at.length).toBe(wanted.length);
        wanted.forEach((mark, i) => {
          near(at[i] ?? Number.NaN, mark);
        });
      }
      const [, ...marks] = stepOf(steps, "neckband").marks?.rows ?? [];
      const neckline = (piece: string): number =>
        report.pieces[piece]?.edges["neckline"]?.length ?? Number.NaN;
      near(marks[0]?.onOpening ?? Number.NaN, neckline("back"));
      near(marks[2]?.onOpening ?? Number.NaN, neckline("back") + neckline("sleeve"));
      near(marks[3]?.onOpening ?? Number.NaN, report.bands.neckband.opening / 2);
      near(
        numberIn(
          stepOf(steps, "hem-band"),
          report.bands.hemBand.finishedLength > report.bands.hemBand.holdsBlouseFrom
            ? "hemBand.hangs"
            : "hemBand.holds",
          "holds",
        ),
        report.bands.hemBand.holdsBlouseFrom,
      );
    },
  );

  test.each(bodies.map((body) => ({ id: body.id, body })))(
    "$id: the lesson's answers are the report's",
    ({ body }) => {
      const made = make(body, DEFAULT_CHOICES, null);
      const report = reportOf(made);
      const answers = new Map(
        lesson(made.garment).map(({ id, questions }) => [id, questions.map((q) => q.answer)]),
      );
      const of = (id: Parameters<typeof answers.get>[0], i: number): number =>
        answers.get(id)?.[i] ?? Number.NaN;
      const edge = (piece: string, name: string): number =>
        report.pieces[piece]?.edges[name]?.length ?? Number.NaN;
      near(of("hem", 0), edge("front", "side"));
      near(of("sleeve-end", 0), edge("sleeve", "underarmFront"));
      near(of("v-insert", 0), edge("front", "v"));
      near(of("v-insert", 1), edge("front", "neckline"));
      near(of("bands", 0), report.bands.cuff.cutLength);
      near(of("bands", 1), report.bands.cuff.finishedDepth);
      near(of("bands", 2), report.bands.hemBand.cutLength);
      const { opening, finishedLength } = report.bands.neckband;
      near(of("bands", 3), opening - finishedLength);
    },
  );

  /** A length in inches as makers write it: to a sixteenth, in lowest terms. */
  const inches = (mm: number): string => {
    let [over, under] = [Math.round((mm / 25.4) * 16), 16];
    while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
    const [whole, rest] = [Math.floor(over / under), over % under];
    const part = rest === 0 ? [] : [`${rest}/${under}`];
    return [...(whole === 0 ? [] : [`${whole}`]), ...part].join(" ");
  };
  /** What a sentence says, with plain spaces and fractions. */
  const plain = (text: string): string => plainFractions(text).replaceAll("\u00a0", " ");

  test.each(bodies.map((body) => ({ id: body.id, body })))(
    "$id: in inches and German the guide says the report's lengths",
    ({ body }) => {
      const made = make(body, DEFAULT_CHOICES, null);
      const report = reportOf(made);
      const steps = makingUp(made.garment);
      const said = (id: GuideStep["id"], key: GuideKey, language: "en" | "de"): string => {
        const sentence = stepOf(steps, id).sentences.find((one) => one.key === key);
        if (!sentence) throw new Error(key);
        return plain(tell(voiceFor(printIn("in", language)), sentence));
      };
      const seam = (id: string): number =>
        report.seams.find((one) => one.id === id)?.lengthA ?? Number.NaN;
      for (const [language, unit] of [
        ["en", "in"],
        ["de", "Zoll"],
      ] as const) {
        const raglan = said("raglan-front", "raglan.sew", language);
        expect(raglan).toContain(` ${inches(seam("raglan-front"))} ${unit}`);
        const side = said("underarm-and-side", "side.sew", language);
        for (const length of [seam("side"), seam("underarm"), seam("side") + seam("underarm")])
          expect(side).toContain(`${inches(length)} ${unit}`);
        for (const [id, band] of [
          ["neckband", report.bands.neckband],
          ["cuffs", report.bands.cuff],
          ["hem-band", report.bands.hemBand],
        ] as const)
          expect(said(id, "band.ring", language)).toContain(
            `${inches(band.finishedLength)} ${unit}`,
          );
      }
    },
  );
});

import { describe, expect, test } from "vitest";
import { readOwnBlock } from "../../src/drafting/ownBlock.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { make } from "../../src/project/make.ts";
import { exampleBody } from "../drafting/bodies.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { type Changes, choicesOf } from "../support/choices.ts";
import {
  expectBands,
  expectLines,
  expectNotches,
  expectNumbers,
} from "../support/independent/expectReport.ts";
import { readReport } from "../support/independent/report.ts";
import { holdsFor } from "../support/law.ts";
import { fileOf, OWN_BLOCKS, someOwnBlock } from "../support/ownBlocks.ts";
import { reportText } from "../support/reportText.ts";

/**
 * Blocks of the maker's own, with lines that the draft never makes, read from their files, altered
 * in every way and written; the text is measured afresh by code that shares nothing with the program.
 */
const NO_SHEETS = bareSheets();

const TRIED: readonly (readonly [string, Changes])[] = [
  ["the default choices", {}],
  [
    "every alteration, and cloth that shrinks",
    {
      neckline: { on: true, lowerFront: 20, lowerBack: 6, widen: 10 },
      raiseHem: { by: 90 },
      endSleeve: { aboveWrist: 120 },
      body: { shrinkLength: 0.06, shrinkWidth: 0.03 },
    },
  ],
  [
    "the sides kept and the V cut away",
    { moveSideSeams: { on: false }, vInsert: { method: "cut-away" } },
  ],
];

const readOf = (block: Block, unit: "mm" | "cm" | "in"): Block => {
  const read = readOwnBlock(fileOf(block, unit));
  if ("fault" in read) throw new Error(read.fault.reason);
  return read.block;
};

const expectMade = (block: Block, changes: Changes): void => {
  const made = make(exampleBody(), choicesOf(changes), block);
  const text = reportText(made, NO_SHEETS);
  expectNumbers(text);
  const report = readReport(text);
  expectLines(report);
  expectBands(report);
  expectNotches(report);
};

describe.each(TRIED)("own blocks with %s", (_, changes) => {
  test.each(OWN_BLOCKS)("%s", (_name, block) => {
    for (const unit of ["mm", "cm", "in"] as const) expectMade(readOf(block, unit), changes);
  });

  test("any block whose edges are redrawn at random, where its file is sound", () => {
    let sound = 0;
    holdsFor(
      8101,
      someOwnBlock,
      (block) => {
        const read = readOwnBlock(fileOf(block));
        if ("fault" in read) return;
        sound += 1;
        expectMade(read.block, changes);
      },
      25,
    );
    expect(sound).toBeGreaterThan(10);
  });
});

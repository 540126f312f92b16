import { describe, expect, test } from "vitest";
import { makeGarment } from "../../src/bands/makeGarment.ts";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import { someMeasures, WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { choicesOf, onlyChoices } from "../support/choices.ts";
import { near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import { someOwnBlock } from "../support/ownBlocks.ts";
import { garmentOf } from "../support/workedGarment.ts";

describe("a whole garment", () => {
  test("has bands that meet the openings of its own pieces, on any block", () => {
    holdsFor(
      6301,
      someOwnBlock,
      (block) => {
        const { finished, bands } = garmentOf({}, { block });
        const { front, back, sleeve, vInsert } = finished;
        near(bands.hemBand.opening, 2 * (front.hem.length + back.hem.length), 1e-9);
        near(bands.cuff.opening, sleeve.wrist.length, 1e-9);
        const half = front.neckline.length + sleeve.neckline.length + back.neckline.length;
        near(bands.neckband.opening, 2 * half + (vInsert?.top.length ?? NaN), 1e-9);
      },
      50,
    );
  });

  test("without any alteration is the block itself with bands on", () => {
    const choices = onlyChoices();
    const drafted = draftRaglanBlock(WORKED_EXAMPLE, choices.fit);
    const { finished } = makeGarment(drafted, WORKED_EXAMPLE, choices);
    expect(finished.front.raglan.path).toEqual(drafted.block.front.raglan);
    expect(finished.sleeve.wrist.path).toEqual(drafted.block.sleeve.wrist);
  });

  test("tells what was held in the draft, then in the alterations, then in the bands", () => {
    const ids = garmentOf(
      { raiseHem: { by: 300 }, neckband: { finishedDepth: 60 }, fit: { chestEase: 400 } },
      { measures: { hip: 1700 } },
    ).rails.map(({ id }) => id);
    expect(ids[0]).toBe("rail-hem-width");
    expect(ids).toContain("rail-raise-hem");
  });

  test("is the same made twice", () => {
    holdsFor(
      6302,
      someMeasures,
      (measures) => {
        const choices = choicesOf();
        const make = () => makeGarment(draftRaglanBlock(measures, choices.fit), measures, choices);
        expect(make()).toEqual(make());
      },
      20,
    );
  });
});

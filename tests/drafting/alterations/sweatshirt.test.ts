import { describe, expect, test } from "vitest";
import { toSweatshirt } from "../../../src/drafting/alterations/sweatshirt.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, startOf } from "../../../src/geometry/path.ts";
import { choicesOf, onlyChoices } from "../../support/choices.ts";
import { edgesOfBody, edgesOfSleeve, expectChained, near } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { OWN_BLOCKS, someOwnBlock } from "../../support/ownBlocks.ts";
import { DRAFTED, given } from "../../support/workedGarment.ts";

const { alterations: ALL } = choicesOf({ neckline: { on: true, lowerFront: 10, widen: 5 } });
const { alterations: NONE } = onlyChoices();

describe("a block with nothing altered", () => {
  test.each(OWN_BLOCKS)("is %s as it was, the sleeve in its frame", (_, block) => {
    const shirt = toSweatshirt(block, NONE);
    expect(shirt.block.front).toEqual(block.front);
    expect(shirt.block.back).toEqual(block.back);
    expect(shirt.block.sleeve).toEqual(block.sleeve);
    expect([shirt.insert, shirt.sideSlope, shirt.rails]).toEqual([null, null, []]);
  });
});

describe("a block with everything altered", () => {
  test.each(OWN_BLOCKS)("%s still closes on all three pieces", (_, block) => {
    const { front, back, sleeve } = toSweatshirt(block, ALL).block;
    expectChained(edgesOfBody(front), 1e-9);
    expectChained(edgesOfBody(back), 1e-9);
    expectChained(edgesOfSleeve(sleeve), 1e-9);
    near(startOf(sleeve.underarmFront).y, 0, 1e-9);
  });

  test("keeps what the raglans of body and sleeve differ by, on any block", () => {
    holdsFor(4601, someOwnBlock, (block) => {
      const after = toSweatshirt(block, ALL).block;
      const differences = ({ front, back, sleeve }: typeof after) => [
        lengthOf(front.raglan) - lengthOf(sleeve.raglanFront),
        lengthOf(back.raglan) - lengthOf(sleeve.raglanBack),
      ];
      const before = differences(block);
      differences(after).forEach((difference, i) => {
        near(difference, before[i] ?? NaN, 1e-6);
      });
      near(lengthOf(after.front.side), lengthOf(after.back.side), 0.1);
      near(lengthOf(after.sleeve.underarmFront), lengthOf(after.sleeve.underarmBack), 1e-6);
    });
  });

  test("works the neckline first: the V is cut into the lowered one", () => {
    const { block, wholeFrontNeckline, insert } = toSweatshirt(DRAFTED, ALL);
    near(startOf(wholeFrontNeckline).y, startOf(DRAFTED.front.neckline).y + 10, 1e-9);
    near(startOf(given(block.front.v)).y, 84.75 + 10 + 50.8, 1e-9);
    near(lengthOf(wholeFrontNeckline), lengthOf(block.front.neckline) + 25.4, 1e-8);
    expect(insert).not.toBeNull();
  });

  test("moves the sides before it raises the hem: the hem is as wide as the moved underarm", () => {
    const { front } = toSweatshirt(DRAFTED, ALL).block;
    near(startOf(front.hem).x, endOf(front.raglan).x, 1e-9);
  });
});

describe("what the steps leave behind for those that follow", () => {
  test("the slope of the raglans before the sides were moved", () => {
    near(toSweatshirt(DRAFTED, ALL).sideSlope ?? NaN, 0.2644, 0.01);
    expect(toSweatshirt(DRAFTED, NONE).sideSlope).toBeNull();
  });

  test("the allowance that the V took, or what was asked for where there is none", () => {
    expect(toSweatshirt(DRAFTED, ALL).vAllowance).toBe(6.35);
    expect(toSweatshirt(DRAFTED, NONE).vAllowance).toBe(6.35);
    const { alterations } = choicesOf({ vInsert: { halfWidth: 5, allowance: 15 } });
    expect(toSweatshirt(DRAFTED, alterations).vAllowance).toBeLessThan(3);
  });

  test("what was held, in the order of the steps", () => {
    const { alterations } = choicesOf({
      raiseHem: { by: 300 },
      endSleeve: { aboveWrist: 400 },
      vInsert: { halfWidth: 80, depth: 250 },
    });
    const ids = toSweatshirt(DRAFTED, alterations).rails.map(({ id }) => id);
    expect(ids).toEqual(["rail-raise-hem", "rail-end-sleeve", "rail-v-width", "rail-v-depth"]);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cornerOf } from "../../../src/drafting/block/neckEdge.ts";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { sleeveRails } from "../../../src/drafting/block/sleeveRails.ts";
import type { Measures } from "../../../src/drafting/measures.ts";
import type { Rail } from "../../../src/drafting/rail.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, endTangent, startOf, startTangent } from "../../../src/geometry/path.ts";
import { dot } from "../../../src/geometry/point.ts";
import { degrees } from "../../../src/geometry/units.ts";
import { choicesOf } from "../../support/choices.ts";
import { edgesOfSleeve, expectChained, near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { someMeasures, WORKED_EXAMPLE } from "../bodies.ts";

const drafted = (measures: Partial<Measures> = {}) =>
  draftRaglanBlock({ ...WORKED_EXAMPLE, ...measures }, choicesOf().fit);

const railOf = (id: Rail["id"], measures: Partial<Measures>): Rail => {
  const found = drafted(measures).rails.find((rail) => rail.id === id);
  if (!found) throw new Error(`No ${id} was held.`);
  return found;
};

/** Any body, and how much ease its upper arm is given. */
const someDraft = fc
  .tuple(someMeasures, fc.integer({ min: -20, max: 300 }), fc.integer({ min: -60, max: 400 }))
  .map(([measures, upperArmEase, chestEase]) => ({
    measures,
    block: draftRaglanBlock(measures, choicesOf({ fit: { upperArmEase, chestEase } }).fit).block,
  }));

describe("the sleeve, on every body and with every ease", () => {
  test("has raglans exactly as long as the body's, to the ten-millionth of a millimetre", () => {
    holdsFor(3501, someDraft, ({ block: { front, back, sleeve } }) => {
      near(lengthOf(sleeve.raglanFront), lengthOf(front.raglan), 1e-7);
      near(lengthOf(sleeve.raglanBack), lengthOf(back.raglan), 1e-7);
    });
  });

  // Method 2.5, 18: S = (0.055 + 0.125) of the neck base.
  test("has a top exactly as long as the neckline that it takes the place of", () => {
    holdsFor(3502, someDraft, ({ measures, block: { sleeve } }) => {
      near(lengthOf(sleeve.neckline), 0.18 * measures.neckBase, 1e-7);
    });
  });

  test("has underarms of one length, mirror images of each other", () => {
    holdsFor(3503, someDraft, ({ block: { sleeve } }) => {
      near(lengthOf(sleeve.underarmFront), lengthOf(sleeve.underarmBack), 1e-9);
      near(startOf(sleeve.underarmFront).x, -endOf(sleeve.underarmBack).x, 1e-9);
      near(endOf(sleeve.wrist).x, -startOf(sleeve.wrist).x, 1e-9);
    });
  });

  test("has its raglans square to its underarm seams", () => {
    holdsFor(3504, someDraft, ({ block: { sleeve } }) => {
      near(dot(endTangent(sleeve.raglanFront), startTangent(sleeve.underarmFront)), 0, 1e-9);
      near(dot(endTangent(sleeve.underarmBack), startTangent(sleeve.raglanBack)), 0, 1e-9);
    });
  });

  test("closes, its underarm points on y = 0", () => {
    holdsFor(3505, someDraft, ({ block: { sleeve } }) => {
      expectChained(edgesOfSleeve(sleeve));
      near(startOf(sleeve.underarmFront).y, 0, 1e-9);
      near(endOf(sleeve.underarmBack).y, 0, 1e-9);
    });
  });

  test("is as long from its top to the wrist as shoulder and arm less what the neck was widened by", () => {
    holdsFor(3506, someMeasures, (measures) => {
      const { sleeve } = drafted(measures).block;
      const heights = -(startOf(sleeve.raglanFront).y + endOf(sleeve.raglanBack).y) / 2;
      const wanted = measures.shoulder + measures.armLength - 30;
      near(startOf(sleeve.wrist).y + heights, wanted, 1e-6);
    });
  });
});

describe("the neckline over the raglan seams", () => {
  test("runs straight on: the corners of body and sleeve add to 180°", () => {
    holdsFor(3507, someMeasures, (measures) => {
      const { front, back, sleeve } = drafted(measures).block;
      const atFront =
        cornerOf(front.neckline, front.raglan) + cornerOf(sleeve.neckline, sleeve.raglanFront);
      const atBack =
        cornerOf(back.neckline, back.raglan) + cornerOf(sleeve.raglanBack, sleeve.neckline);
      near(degrees(atFront), 180, 1e-6);
      near(degrees(atBack), 180, 1e-6);
    });
  });
});

describe("the sleeve of the worked example (method 8, 14–20)", () => {
  const { sleeve } = drafted().block;

  test("is 207.5 and 107.5 wide to each side, at the underarm and at the wrist", () => {
    near(startOf(sleeve.underarmFront).x, 207.5, 1e-9);
    near(endOf(sleeve.underarmFront).x, 107.5, 1e-9);
    near(endOf(sleeve.underarmFront).y, 409.9402, 1e-4);
  });

  test("has its corners at QF and QB", () => {
    nearPoint(endOf(sleeve.neckline), [43.4615, -246.2109], 1e-4);
    nearPoint(startOf(sleeve.neckline), [-19.1231, -251.9087], 1e-4);
  });
});

describe("what is held on the sleeve", () => {
  test("a width beyond 0.88 of the shorter raglan", () => {
    const rail = railOf("rail-sleeve-width", { upperArm: 450 });
    near(rail.wanted, 280, 1e-9);
    near(rail.used, 0.88 * 302.3914, 1e-3);
    expect(rail.message).toBe(
      "Half the sleeve would be 280\u00a0mm wide; the raglan seams leave room for 266.1\u00a0mm. Give the upper arm less ease, or the chest more.",
    );
  });

  test("a wrist beyond 0.85 of the sleeve's width", () => {
    const rail = railOf("rail-wrist", { wrist: 300 });
    near(rail.wanted, 180, 1e-9);
    near(rail.used, 0.85 * 207.5, 1e-9);
    expect(rail.message).toBe(
      "Half the wrist would be 180\u00a0mm wide; the sleeve above leaves room for 176.4\u00a0mm. Measure wrist and hand again, or give the upper arm more ease.",
    );
  });

  test("a hand larger than the wrist, which is no fault: the hand and 15 goes before", () => {
    near(endOf(drafted({ hand: 230 }).block.sleeve.underarmFront).x, 122.5, 1e-9);
    expect(drafted({ hand: 230 }).rails).toEqual([]);
  });

  test("a sleeve shorter than 120 below the underarm", () => {
    const rail = railOf("rail-sleeve-length", { armLength: 200 });
    near(rail.used, 120, 1e-9);
    expect(rail.wanted).toBeLessThan(120);
    expect(rail.message).toMatch(
      /^The sleeve below the underarm would be [\d.]+\u00a0mm; the least is 120\u00a0mm\. Measure shoulder and arm length again\.$/,
    );
  });

  // No body that can be given was found to need this, so it is held to its words alone.
  test("a neck edge that no span gives its length, which stops", () => {
    const agreed = [100, 100] as const;
    const [rail, ...more] = sleeveRails({
      width: agreed,
      wrist: agreed,
      length: agreed,
      neck: [66.96, 58.2],
    });
    expect(more).toEqual([]);
    expect([rail?.id, rail?.stops, rail?.wanted, rail?.used]).toEqual([
      "rail-sleeve-neck",
      true,
      66.96,
      58.2,
    ]);
    expect(rail?.message).toBe(
      "The sleeve's neck edge should be 67\u00a0mm and can only be drawn 58.2\u00a0mm; it will not fit the neckline. Measure neck base, shoulder and upper arm again.",
    );
  });

  test("nothing where wanted and used agree", () => {
    const agreed = [100, 100] as const;
    expect(sleeveRails({ width: agreed, wrist: agreed, length: agreed, neck: null })).toEqual([]);
  });
});

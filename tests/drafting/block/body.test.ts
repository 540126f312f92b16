import { describe, expect, test } from "vitest";
import { drawBody, drawTrunk } from "../../../src/drafting/block/body.ts";
import { drawNecklines } from "../../../src/drafting/block/neckline.ts";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import type { Measures } from "../../../src/drafting/measures.ts";
import type { Rail } from "../../../src/drafting/rail.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, endTangent, startOf, startTangent } from "../../../src/geometry/path.ts";
import { toPathData } from "../../../src/geometry/pathData.ts";
import { apart, dot, minus, unit } from "../../../src/geometry/point.ts";
import { type Changes, choicesOf } from "../../support/choices.ts";
import { edgesOfBody, expectChained, near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { someMeasures, WORKED_EXAMPLE } from "../bodies.ts";

const drafted = (measures: Partial<Measures> = {}, fit: Changes["fit"] = {}) =>
  draftRaglanBlock({ ...WORKED_EXAMPLE, ...measures }, choicesOf({ fit }).fit);

const railOf = (id: Rail["id"], measures: Partial<Measures>, fit: Changes["fit"] = {}): Rail => {
  const found = drafted(measures, fit).rails.find((rail) => rail.id === id);
  if (!found) throw new Error(`No ${id} was held.`);
  return found;
};

describe("the front and back of the worked example", () => {
  const { front, back } = drafted().block;

  test("have the underarm at (275, 247) and the hem's end at (273.5, 572) (method 8, 7–9)", () => {
    for (const half of [front, back]) {
      nearPoint(endOf(half.raglan), [275, 247], 1e-9);
      nearPoint(endOf(half.side), [273.5, 572], 1e-9);
    }
  });

  test("have a side with the handles of method 8, 10", () => {
    expect(toPathData(front.side)).toBe(
      "M275.000000 247.000000 C274.500000 355.333333 273.500000 463.666667 273.500000 572.000000",
    );
  });

  test("have raglans of 302.3914 and 320.6045 (method 8, 12–13)", () => {
    near(lengthOf(front.raglan), 302.3914, 1e-4);
    near(lengthOf(back.raglan), 320.6045, 1e-4);
  });
});

describe("a front or back, on every body", () => {
  test("closes, edge by edge, with the centre on the fold", () => {
    holdsFor(3401, someMeasures, (measures) => {
      const { front, back } = drafted(measures).block;
      for (const half of [front, back]) {
        expectChained(edgesOfBody(half));
        expect([startOf(half.centre).x, endOf(half.centre).x]).toEqual([0, 0]);
      }
    });
  });

  test("has its raglan square to its side at the underarm", () => {
    holdsFor(3402, someMeasures, (measures) => {
      const { front, back } = drafted(measures).block;
      for (const half of [front, back]) {
        near(dot(endTangent(half.raglan), startTangent(half.side)), 0, 1e-9);
      }
    });
  });

  test("has a side that leaves along its chord and meets the level hem square", () => {
    holdsFor(3403, someMeasures, (measures) => {
      const { side, hem } = drafted(measures).block.front;
      const chord = unit(minus(endOf(side), startOf(side)));
      expect(apart(startTangent(side), chord)).toBeLessThan(1e-9);
      expect(apart(endTangent(side), { x: 0, y: 1 })).toBeLessThan(1e-9);
      expect(apart(startTangent(hem), { x: -1, y: 0 })).toBeLessThan(1e-9);
    });
  });

  test("has the same side, front and back", () => {
    holdsFor(3404, someMeasures, (measures) => {
      const { front, back } = drafted(measures).block;
      expect(front.side).toEqual(back.side);
      expect(front.hem).toEqual(back.hem);
    });
  });

  test("is a quarter of the finished chest wide at the underarm", () => {
    holdsFor(3405, someMeasures, (measures) => {
      near(endOf(drafted(measures).block.front.raglan).x, (measures.chest + 140) / 4, 1e-9);
    });
  });
});

describe("what is held on front and back", () => {
  // Method 2.3, 7, with RF = (73.2743, 30.7953) and W = 275: from 131.66 to 434.25.
  test("an underarm too high for the neckline, at half the way across below its corner", () => {
    const rail = railOf("rail-scye", { scyeDepth: 60 });
    near(rail.wanted, 60 + 25 + 35, 1e-9);
    near(rail.used, 30.7953 + 0.5 * (275 - 73.2743), 1e-3);
    expect(rail.message).toBe(
      "The underarm would lie 120\u00a0mm below the nape; for this chest and neck it is held at 131.7\u00a0mm. Measure the scye depth again, or change the chest's ease.",
    );
  });

  test("an underarm too low for the chest, at twice the way across", () => {
    const rail = railOf("rail-scye", { scyeDepth: 400 });
    near(rail.wanted, 460, 1e-9);
    near(rail.used, 30.7953 + 2 * (275 - 73.2743), 1e-3);
  });

  test("a block shorter than 120 below the underarm", () => {
    const rail = railOf("rail-length", {}, { lengthBelowHip: -300 });
    near(rail.wanted, 272, 1e-9);
    near(rail.used, 367, 1e-9);
    expect(rail.message).toBe(
      "The block would end 272\u00a0mm below the nape; a side of 120\u00a0mm takes 367\u00a0mm. Measure nape to hip again, or make the length below the hip larger.",
    );
    near(lengthOf(drafted({}, { lengthBelowHip: -300 }).block.front.side), 120, 0.05);
  });

  test("a hem wider than the side may lean out", () => {
    const rail = railOf("rail-hem-width", { hip: 1400 });
    near(rail.wanted, (1400 + 84) / 4, 1e-9);
    near(rail.used, 275 + 0.085 * (572 - 247), 1e-9);
    expect(rail.message).toBe(
      "A quarter of the hem would be 371\u00a0mm; the side seam may lean out to 302.6\u00a0mm. Give the chest more ease, or make the block longer.",
    );
  });

  test("a hem narrower than the side may lean in, by design and without a word", () => {
    const { block, rails } = drafted({ hip: 700 });
    near(endOf(block.front.side).x, 275 - 0.04 * (572 - 247), 1e-9);
    expect(rails).toEqual([]);
  });

  test("nothing, on the worked example", () => {
    expect(drafted().rails).toEqual([]);
  });
});

describe("the trunk drawn by itself", () => {
  test("is what front and back are drawn on", () => {
    const necklines = drawNecklines(WORKED_EXAMPLE.neckBase, 275);
    const trunk = drawTrunk(WORKED_EXAMPLE, choicesOf().fit, 275, necklines);
    const front = drawBody(necklines.front, necklines.frontCorner, trunk);
    expect(front).toEqual(drafted().block.front);
  });
});

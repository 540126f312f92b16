import { describe, expect, test } from "vitest";
import { lengthOf } from "../../src/geometry/length.ts";
import { near } from "../support/expectations.ts";
import { UNEQUAL, UNEQUAL_BY } from "../support/ownBlocks.ts";
import { garmentOf } from "../support/workedGarment.ts";

describe("the seams of a garment", () => {
  test("of the worked example are as long as method 8 has them, both sides agreeing", () => {
    const wanted = {
      "raglan-front": 315.0916,
      "raglan-back": 333.3046,
      side: 274.1414,
      underarm: 369.4517,
      "v-left": 60.6464,
    };
    const { seams } = garmentOf();
    expect(seams.map(({ id }) => id)).toEqual(Object.keys(wanted));
    for (const { id, lengthA, lengthB, difference, ease } of seams) {
      near(lengthA, wanted[id], 1e-4, id);
      near(lengthB, wanted[id], 1e-4, id);
      near(difference, 0, 1e-9, id);
      expect(ease).toBeCloseTo(0, 12);
    }
  });

  test("name the edges that are sewn together", () => {
    const { seams } = garmentOf();
    expect(seams.map(({ a, b }) => [a, b])).toEqual([
      [[["front", "raglan"]], [["sleeve", "raglanFront"]]],
      [[["back", "raglan"]], [["sleeve", "raglanBack"]]],
      [[["front", "side"]], [["back", "side"]]],
      [[["sleeve", "underarmFront"]], [["sleeve", "underarmBack"]]],
      [[["front", "v"]], [["vInsert", "left"]]],
    ]);
  });

  test("have none of a V where there is no V", () => {
    const { seams } = garmentOf({ vInsert: { on: false } });
    expect(seams.map(({ id }) => id)).not.toContain("v-left");
  });

  test("by cut-away differ by what the V is short: 21.633 a side", () => {
    const { seams } = garmentOf({ vInsert: { method: "cut-away" } });
    near(seams.find(({ id }) => id === "v-left")?.difference ?? NaN, 21.633, 1e-3);
  });

  test("tell the difference that a maker's own block brings", () => {
    const { seams } = garmentOf({ moveSideSeams: { on: false } }, { block: UNEQUAL });
    const side = seams.find(({ id }) => id === "side");
    near(side?.difference ?? NaN, -UNEQUAL_BY, 0.1);
  });

  test("are as long as the edges that are drawn, enlarged for the wash", () => {
    const garment = garmentOf({ body: { shrinkLength: 0.1, shrinkWidth: 0.05 } });
    for (const { a, lengthA } of garment.seams) {
      const [[piece, edge] = ["front", "side"]] = a;
      const drawn = garment.pieces
        .find(({ name }) => name === piece)
        ?.edges.find(({ name }) => name === edge);
      near(lengthA, drawn ? lengthOf(drawn.path) : NaN, 1e-9);
    }
  });
});

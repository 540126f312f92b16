import { describe, expect, test } from "vitest";
import { cutLineOffFold } from "../../src/drafting/fold.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { pieceOf } from "../../src/guide/shapes.ts";
import { garmentOf, WITHOUT_V } from "../support/garments.ts";

describe("the line to cut without the fold", () => {
  test.each(["front", "back"] as const)("of the %s runs from fold to fold", (name) => {
    for (const garment of [garmentOf(), garmentOf(WITHOUT_V)]) {
      const piece = pieceOf(garment, name);
      const edge = cutLineOffFold(piece);
      const [top, foot] = [startOf(edge), endOf(edge)];
      expect(Math.abs(top.x)).toBeLessThan(1e-9);
      expect(Math.abs(foot.x)).toBeLessThan(1e-9);
      expect(foot.y).toBeGreaterThan(top.y);
      // What is left out is the fold, straight down, and nothing else.
      expect(lengthOf(piece.cutLine) - lengthOf(edge)).toBeCloseTo(foot.y - top.y, 9);
    }
  });

  test("of a sleeve is the whole line", () => {
    const sleeve = pieceOf(garmentOf(), "sleeve");
    expect(cutLineOffFold(sleeve)).toBe(sleeve.cutLine);
  });
});

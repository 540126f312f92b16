import { describe, expect, test } from "vitest";
import { withWaves } from "../../../src/trace/photo/foretell.ts";
import { outcomeOf } from "../../support/photo/truth.ts";
import { drafted, halfRing, sampleBodies, sleeveRing } from "../../trace/edges/shapes.ts";

/**
 * Ground truth that no one drew: pieces of sample bodies drawn on paper or cut out, photographed by
 * program (slant, lens, grain, uneven light, a JPEG's loss) and brought back by the photo path.
 * `npx tsx scripts/ownBlockFigures.ts` does it on ten bodies and writes docs/own-block.md.
 */
const block = (i: number) => drafted(sampleBodies()[i]);
const PIXELS = 1800;

describe("a photographed piece comes back", () => {
  const pieces = [
    { name: "a front drawn with a pen", edges: halfRing(block(3).front), drawnAs: "line", seed: 1 },
    { name: "a sleeve drawn with a pen", edges: sleeveRing(block(12)), drawnAs: "line", seed: 2 },
    { name: "a back cut out", edges: halfRing(block(25).back), drawnAs: "edge", seed: 3 },
  ] as const;

  test.each(pieces)(
    "$name: 95 in 100 points within 1.0 mm, every length within half a per cent",
    ({ edges, drawnAs, seed }) => {
      const outcome = outcomeOf(edges, { seed, drawnAs, pixels: PIXELS, wrinkle: 0 });
      expect(outcome.within95).toBeLessThan(1);
      expect(outcome.length).toBeLessThan(0.005);
      expect(outcome.fit).toBeLessThan(0.5);
    },
  );

  test("on paper that lies in waves of 2 mm: 95 in 100 points within what is foretold of waves", () => {
    const take = { seed: 4, drawnAs: "line", pixels: PIXELS, wrinkle: 2 } as const;
    const outcome = outcomeOf(halfRing(block(8).front), take);
    expect(outcome.within95).toBeLessThan(2);
    const flat = { worst: outcome.foretold, usual: outcome.foretold };
    expect(outcome.within95).toBeGreaterThan(flat.worst);
    expect(outcome.within95).toBeLessThan(withWaves(flat, 2).worst);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { grown, growthOf } from "../../src/drafting/shrinkage.ts";
import { areaOf } from "../../src/geometry/outline.ts";
import { aPath, somePath } from "../support/curves.ts";
import { near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import { edgeIn, garmentOf, pieceIn } from "../support/workedGarment.ts";

const cloth = (shrinkLength: number, shrinkWidth: number, turned = false) =>
  growthOf({ stretch: 0.25, shrinkLength, shrinkWidth, turned });

describe("the growth of cloth that will shrink", () => {
  // What is left of 1 after 5 % is 0.95, so 1/0.95 must be cut.
  test("is one over what is left: 5 % down and 3 % across", () => {
    expect(cloth(0.05, 0.03)).toEqual({ across: 1 / 0.97, down: 1 / 0.95 });
  });

  test("changes places where the cloth is turned", () => {
    expect(cloth(0.05, 0.03, true)).toEqual({ across: 1 / 0.95, down: 1 / 0.97 });
  });

  test("is less than one where the cloth grows in the wash", () => {
    expect(cloth(-0.1, 0).down).toBeCloseTo(1 / 1.1, 12);
  });

  test("leaves a path alone where there is none", () => {
    const path = aPath("M0 0 L10 20");
    expect(grown(path, cloth(0, 0))).toBe(path);
  });

  test("and the wash after it give back what was drawn", () => {
    const shares = fc.tuple(
      fc.integer({ min: -100, max: 200 }).map((n) => n / 1000),
      fc.integer({ min: -100, max: 200 }).map((n) => n / 1000),
    );
    holdsFor(4701, fc.tuple(somePath(), shares), ([path, [length, width]]) => {
      const cut = grown(path, cloth(length, width));
      cut.forEach((segment, i) => {
        const was = path[i] ?? path[0];
        near(segment.end.x * (1 - width), was.end.x, 1e-9);
        near(segment.end.y * (1 - length), was.end.y, 1e-9);
      });
      const area = areaOf(path) / ((1 - width) * (1 - length));
      near(areaOf(cut), area, 1e-6 * (1 + Math.abs(area)));
    });
  });
});

describe("a garment of cloth that shrinks by 5 % down and 3 % across", () => {
  const plain = garmentOf();
  const shrinking = garmentOf({ body: { shrinkLength: 0.05, shrinkWidth: 0.03 } });

  test("is drawn larger and finished the same", () => {
    const side = edgeIn(pieceIn(shrinking, "front"), "side");
    near(side.length, 274.1414 / 0.95, 1e-3);
    near(shrinking.finished.front.side.length, plain.finished.front.side.length, 1e-9);
    const hem = edgeIn(pieceIn(shrinking, "front"), "hem");
    near(hem.length, 287.7 / 0.97, 1e-4);
  });

  test("has what the growth adds as ease, and no difference on the finished lines", () => {
    for (const seam of shrinking.seams) {
      near(seam.difference, 0, 1e-8);
      near(seam.lengthA - seam.lengthB - seam.ease, seam.difference, 1e-9);
    }
    // The raglan of the sleeve stands steeper than the body's, so down counts for more in it.
    const raglan = shrinking.seams.find(({ id }) => id === "raglan-front");
    expect(Math.abs(raglan?.ease ?? 0)).toBeGreaterThan(0.1);
  });

  test("is cut to bands of the same length: rib is washed before", () => {
    expect(shrinking.bands).toEqual(plain.bands);
    expect(pieceIn(shrinking, "cuff")).toEqual(pieceIn(plain, "cuff"));
  });

  test("keeps its allowances as wide as they were", () => {
    const right = (g: typeof plain): number =>
      Math.max(...pieceIn(g, "front").cutLine.map(({ end }) => end.x));
    near(right(shrinking), 287.7 / 0.97 + 9.525, 1e-3);
    near(right(plain), 287.7 + 9.525, 1e-3);
  });

  test("turned has its grain across and the factors changed about", () => {
    const turned = garmentOf({ body: { shrinkLength: 0.05, shrinkWidth: 0.03, turned: true } });
    near(edgeIn(pieceIn(turned, "front"), "hem").length, 287.7 / 0.95, 1e-4);
    const { from, to } = pieceIn(turned, "front").grain;
    expect(from.y).toBe(to.y);
    expect(pieceIn(plain, "front").grain.from.x).toBe(pieceIn(plain, "front").grain.to.x);
  });
});

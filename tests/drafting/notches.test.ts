import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import { measurePieces } from "../../src/drafting/finishedPieces.ts";
import { BACK_NOTCHES_APART, seamNotches } from "../../src/drafting/notches.ts";
import type { Block, EdgeName, PieceName } from "../../src/drafting/piece.ts";
import { pointAlong } from "../../src/geometry/split.ts";
import type { Changes } from "../support/choices.ts";
import { aPath } from "../support/curves.ts";
import { near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import { OWN_BLOCKS, someOwnBlock } from "../support/ownBlocks.ts";
import { DRAFTED, edgeIn, garmentOf, pieceIn } from "../support/workedGarment.ts";

const placesOf = (garment: Garment, piece: PieceName, edge: EdgeName, seam: string) =>
  pieceIn(garment, piece)
    .notches.filter((notch) => notch.edge === edge && notch.seam === seam)
    .map(({ at }) => at);

/** The two edges of each seam, and whether the other runs the other way. */
const SEAMS = [
  ["raglan-front", "front", "raglan", "sleeve", "raglanFront", false],
  ["raglan-back", "back", "raglan", "sleeve", "raglanBack", true],
  ["side", "front", "side", "back", "side", false],
  ["underarm", "sleeve", "underarmFront", "sleeve", "underarmBack", true],
] as const;

/** Shares of both edges at which notches stand, from the same end. */
const sharesOf = (garment: Garment, [seam, a, edgeA, b, edgeB, turned]: (typeof SEAMS)[number]) => {
  const [longA, longB] = [
    edgeIn(pieceIn(garment, a), edgeA).length,
    edgeIn(pieceIn(garment, b), edgeB).length,
  ];
  const one = placesOf(garment, a, edgeA, seam).map((at) => at / longA);
  const other = placesOf(garment, b, edgeB, seam).map((at) =>
    turned ? 1 - at / longB : at / longB,
  );
  return { one, other };
};

const TRIED: readonly (readonly [string, Changes])[] = [
  ["the default choices", {}],
  ["nothing moved", { moveSideSeams: { on: false }, endSleeve: { on: false } }],
  ["a lowered, widened neckline", { neckline: { on: true, lowerFront: 30, widen: 25 } }],
];

describe("notches of edges that are sewn together", () => {
  test.each(TRIED)("stand at equal distances from the same end, with %s", (_, changes) => {
    const garment = garmentOf(changes);
    for (const seam of SEAMS) {
      const { one, other } = sharesOf(garment, seam);
      expect(one.length).toBeGreaterThan(0);
      const long = edgeIn(pieceIn(garment, seam[1]), seam[2]).length;
      expect(other).toHaveLength(one.length);
      one.forEach((share, i) => {
        near(share * long, (other[i] ?? NaN) * long, 1e-6, seam[0]);
      });
    }
  });

  test.each(OWN_BLOCKS)("stand at the same part of both, on %s", (_, block) => {
    const garment = garmentOf({ moveSideSeams: { on: false } }, { block });
    for (const seam of SEAMS) {
      const { one, other } = sharesOf(garment, seam);
      one.forEach((share, i) => {
        near(share, other[i] ?? NaN, 1e-9, seam[0]);
      });
    }
  });

  test("lie on their edges, on any block and with cloth that shrinks", () => {
    const shrinking = { shrinkLength: 0.07, shrinkWidth: -0.02 };
    const beyond = (block: Block): readonly number[] =>
      garmentOf({ body: shrinking }, { block }).pieces.flatMap((piece) =>
        piece.notches
          .map(({ edge, at }) => Math.max(-at, at - edgeIn(piece, edge).length))
          .filter((over) => !(over <= 1e-9)),
      );
    holdsFor(5201, someOwnBlock, (block) => expect(beyond(block)).toEqual([]), 50);
  });
});

describe("where notches stand", () => {
  const garment = garmentOf();

  test("one in front, half way; two behind, the second 12.7 further from the neck", () => {
    const [front] = placesOf(garment, "front", "raglan", "raglan-front");
    near(front ?? NaN, 315.0916 / 2, 1e-4);
    const [first = NaN, second = NaN, ...more] = placesOf(garment, "back", "raglan", "raglan-back");
    near(first, 333.3046 / 2, 1e-4);
    near(second - first, BACK_NOTCHES_APART, 1e-9);
    expect([more, BACK_NOTCHES_APART]).toEqual([[], 12.7]);
  });

  test("half way down side and underarm", () => {
    near(placesOf(garment, "front", "side", "side")[0] ?? NaN, 274.1414 / 2, 1e-4);
    near(placesOf(garment, "sleeve", "underarmFront", "underarm")[0] ?? NaN, 369.4517 / 2, 1e-4);
  });

  test("on the sleeve's top where its centre line is", () => {
    const [at = NaN] = placesOf(garment, "sleeve", "neckline", "shoulder");
    near(pointAlong(edgeIn(pieceIn(garment, "sleeve"), "neckline").path, at).x, 0, 1e-9);
  });

  test("in the middle of the sleeve's top where the centre line misses it", () => {
    const aside = { ...DRAFTED.sleeve, neckline: aPath("M10 -250 C20 -240 30 -240 40 -246") };
    const finished = measurePieces({ ...DRAFTED, sleeve: aside }, null);
    const [shoulder] = seamNotches(finished).sleeve;
    near(shoulder?.at ?? NaN, finished.sleeve.neckline.length / 2, 1e-9);
  });

  test("moved with their edge where the cloth shrinks", () => {
    const shrinking = garmentOf({ body: { shrinkLength: 0.1, shrinkWidth: 0.02 } });
    const { length } = edgeIn(pieceIn(shrinking, "front"), "raglan");
    near(placesOf(shrinking, "front", "raglan", "raglan-front")[0] ?? NaN, length / 2, 1e-9);
    expect(length).toBeGreaterThan(315.0916 * 1.02);
  });
});

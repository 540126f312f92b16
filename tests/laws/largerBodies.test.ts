import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import type { MeasureId, Measures } from "../../src/drafting/measures.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { areaOf, boundsOf } from "../../src/geometry/outline.ts";
import { endOf, joined, startOf } from "../../src/geometry/path.ts";
import { make } from "../../src/project/make.ts";
import { someMeasures } from "../drafting/bodies.ts";
import { choicesOf } from "../support/choices.ts";
import { edgesOfBody, edgesOfSleeve } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";

/** A body, and the same with one measure larger by up to a tenth. */
const grownBy = (id: MeasureId): fc.Arbitrary<readonly [Measures, Measures]> =>
  fc
    .tuple(someMeasures, fc.integer({ min: 1, max: 100 }))
    .map(([measures, n]) => [measures, { ...measures, [id]: measures[id] * (1 + n / 1000) }]);

const blockOf = (measures: Measures): Block => draftRaglanBlock(measures, choicesOf().fit).block;

/** A size of the block that must not shrink where a measure grows. */
type Size = (block: Block) => number;

const frontWidth: Size = ({ front }) => startOf(front.side).x;
const backWidth: Size = ({ back }) => startOf(back.side).x;
const hemWidth: Size = ({ front }) => startOf(front.hem).x;
const hemLevel: Size = ({ front }) => endOf(front.side).y;
const underarmLevel: Size = ({ front }) => startOf(front.side).y;
const neckWidth: Size = ({ back }) => endOf(back.neckline).x;
const armWidth: Size = ({ sleeve }) => startOf(sleeve.underarmFront).x;
const wristWidth: Size = ({ sleeve }) => startOf(sleeve.wrist).x;
const sleeveLength: Size = ({ sleeve }) => startOf(sleeve.wrist).y;

describe("a larger measure never draws a smaller piece", () => {
  test.each([
    ["chest", "front", frontWidth],
    ["chest", "back", backWidth],
    ["hip", "hem", hemWidth],
    ["napeToHip", "body's length", hemLevel],
    ["scyeDepth", "underarm's depth", underarmLevel],
    ["neckBase", "neckline's width", neckWidth],
    ["upperArm", "sleeve", armWidth],
    ["wrist", "wrist", wristWidth],
    ["hand", "wrist", wristWidth],
    ["armLength", "sleeve's length", sleeveLength],
    ["shoulder", "sleeve's length", sleeveLength],
  ] as const)("%s and the %s", (id, _, size) => {
    holdsFor(7401, grownBy(id), ([body, larger]) => {
      expect(size(blockOf(larger))).toBeGreaterThanOrEqual(size(blockOf(body)) - 1e-9);
    });
  });

  test("a body larger in everything has larger pieces, by area and by bounds", () => {
    const all = fc.tuple(someMeasures, fc.integer({ min: 5, max: 200 })).map(([measures, n]) => {
      const by = 1 + n / 1000;
      const larger = Object.fromEntries(
        Object.entries(measures).map(([id, value]) => [id, value * by]),
      );
      return [measures, { ...measures, ...larger }] as const;
    });
    const outlines = ({ front, back, sleeve }: Block) =>
      [edgesOfBody(front), edgesOfBody(back), edgesOfSleeve(sleeve)].map(([first, ...rest]) => {
        if (!first) throw new Error("A piece has edges.");
        return joined(first, ...rest);
      });
    holdsFor(7402, all, ([body, larger]) => {
      const [small, large] = [outlines(blockOf(body)), outlines(blockOf(larger))];
      small.forEach((outline, i) => {
        const other = large[i] ?? outline;
        expect(areaOf(other)).toBeGreaterThan(areaOf(outline));
        expect(boundsOf(other).right).toBeGreaterThan(boundsOf(outline).right);
      });
    });
  });
});

describe("a band", () => {
  test("is never cut shorter for a larger wrist or hip", () => {
    const lengths = (measures: Measures) => {
      const { bands } = make({ id: "a", measures }, choicesOf(), null).garment;
      return [bands.cuff.cutLength, bands.hemBand.cutLength];
    };
    const drawn = fc.tuple(grownBy("wrist"), grownBy("hip"));
    holdsFor(
      7403,
      drawn,
      ([wrists, hips]) => {
        for (const [body, larger] of [wrists, hips]) {
          const before = lengths(body);
          lengths(larger).forEach((length, i) => {
            expect(length).toBeGreaterThanOrEqual((before[i] ?? Number.NaN) - 1e-9);
          });
        }
      },
      20,
    );
  });
});

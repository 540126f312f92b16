import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import type { SeamId } from "../../src/drafting/seams.ts";
import { near } from "../support/expectations.ts";
import { UNEQUAL } from "../support/ownBlocks.ts";
import { garmentOf, idsIn } from "../support/workedGarment.ts";
import { expectCheck } from "./expectCheck.ts";

/** The garment with one seam's first edge longer by so much. */
const outBy = (id: SeamId, by: number): Garment => {
  const garment = garmentOf();
  const seams = garment.seams.map((seam) =>
    seam.id === id ? { ...seam, lengthA: seam.lengthA + by, difference: by } : seam,
  );
  return { ...garment, seams };
};

const SEAMS = [
  ["raglan-front", "The front raglan is", "Correct the sleeve, or correct the body."],
  ["raglan-back", "The back raglan is", "Correct the sleeve, or correct the body."],
  ["side", "The front side seam is", "Redraw one of the two."],
  ["underarm", "The sleeve's front underarm is", "Redraw one of the two."],
] as const;

describe.each(SEAMS)("the check that the %s seam meets", (seam, says, cure) => {
  const id = `${seam}-match`;

  test("is sound on the draft and up to a tenth of a millimetre", () => {
    const { value } = expectCheck(garmentOf(), id, {
      verdict: "sound",
      says: [says, "0 mm apart", "the limit is 0.1 mm."],
      cure,
    });
    near(value, 0, 1e-8);
    expectCheck(outBy(seam, -0.1), id, { verdict: "sound", says: ["0.1 mm apart"], cure });
  });

  test("attends from there to 2 mm, whichever is the longer", () => {
    for (const by of [0.11, -1.2, 2]) {
      const words = `${Number(Math.abs(by).toFixed(1))} mm apart`;
      const check = expectCheck(outBy(seam, by), id, { verdict: "attend", says: [words], cure });
      near(check.value, Math.abs(by), 1e-12);
    }
  });

  test("stops beyond 2 mm", () => {
    expectCheck(outBy(seam, 2.1), id, {
      verdict: "stop",
      says: ["2.1 mm apart", "the limit is 0.1 mm."],
      cure,
    });
  });
});

describe("the seams of a maker's own block", () => {
  test("stop where its sides differ by 8 and are kept, and are sound where they are evened", () => {
    const kept = garmentOf({ moveSideSeams: { on: false } }, { block: UNEQUAL });
    expectCheck(kept, "side-match", {
      verdict: "stop",
      says: ["8 mm apart"],
      cure: "Redraw one of the two.",
    });
    const moved = garmentOf({}, { block: UNEQUAL });
    expectCheck(moved, "side-match", { verdict: "sound", says: ["0 mm apart"], cure: "Redraw" });
  });

  test("count on the finished lines: what shrinkage adds is no difference", () => {
    const shrinking = garmentOf({ body: { shrinkLength: 0.2 } });
    expect(Math.abs(shrinking.seams[0]?.ease ?? 0)).toBeGreaterThan(1);
    const { message } = expectCheck(shrinking, "raglan-front-match", {
      verdict: "sound",
      says: ["0 mm apart"],
      cure: "Correct",
    });
    const [, one, other] =
      /is ([\d.]+)\u00a0mm and the sleeve's ([\d.]+)\u00a0mm/.exec(message) ?? [];
    expect(one).toBe(other);
    expect(Number(one)).toBeGreaterThan(300);
  });
});

describe("the check that the V's insert fits", () => {
  const cure = "Use the method “true”.";

  test("is sound by the true method", () => {
    expectCheck(garmentOf(), "v-insert-match", {
      verdict: "sound",
      says: ["60.6 mm a side", "0 mm apart", "the limit is 0.5 mm."],
      cure,
    });
  });

  // 82.279/60.646 - 1 = 36 %: more than a body cloth of 25 %, less than one of 40 %.
  test("stops by cut-away where the insert would stretch more than the cloth", () => {
    const { value, limit } = expectCheck(
      garmentOf({ vInsert: { method: "cut-away" } }),
      "v-insert-match",
      { verdict: "stop", says: ["82.3 mm a side", "21.6 mm apart", "stretch by 36 %"], cure },
    );
    near(value, 21.633, 1e-3);
    expect(limit).toBe(0.5);
  });

  test("attends by cut-away where the cloth stretches as much", () => {
    const stretchy = garmentOf({ vInsert: { method: "cut-away" }, body: { stretch: 0.4 } });
    expectCheck(stretchy, "v-insert-match", { verdict: "attend", says: ["36 %"], cure });
  });

  test("is not there without a V", () => {
    expect(idsIn(garmentOf({ vInsert: { on: false } }))).not.toContain("v-insert-match");
  });
});

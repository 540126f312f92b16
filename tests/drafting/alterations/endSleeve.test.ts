import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { endSleeve, framed } from "../../../src/drafting/alterations/endSleeve.ts";
import { moveSideSeams } from "../../../src/drafting/alterations/moveSideSeams.ts";
import type { Block, SleeveEdges } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, mapPath, reversed, startOf } from "../../../src/geometry/path.ts";
import { apart, point } from "../../../src/geometry/point.ts";
import { splitAt } from "../../../src/geometry/split.ts";
import { edgesOfSleeve, expectChained, near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { CURVED, OWN_BLOCKS, someOwnBlock } from "../../support/ownBlocks.ts";
import { DRAFTED } from "../../support/workedGarment.ts";

const kept = ({ sleeve }: Block, aboveWrist: number): SleeveEdges =>
  endSleeve(sleeve, { aboveWrist, sidesMoved: false }).altered;
const onMoved = (block: Block, aboveWrist: number): SleeveEdges =>
  endSleeve(moveSideSeams(block, { on: true, by: 12.7 }).sleeve, { aboveWrist, sidesMoved: true })
    .altered;

describe.each(OWN_BLOCKS)("ending the sleeve of %s", (_, block) => {
  test("leaves both underarms equally long, whether the sides were moved or not", () => {
    for (const sleeve of [kept(block, 50.8), onMoved(block, 50.8), onMoved(block, 0)]) {
      near(lengthOf(sleeve.underarmFront), lengthOf(sleeve.underarmBack), 1e-8);
    }
  });

  test("keeps the sleeve closed, with a straight wrist", () => {
    for (const sleeve of [kept(block, 50.8), onMoved(block, 50.8)]) {
      expectChained(edgesOfSleeve(sleeve));
      expect(sleeve.wrist.map(({ kind }) => kind)).toEqual(["line"]);
    }
  });

  test("ends it so far above the wrist, half way between what each underarm says", () => {
    const sleeve = kept(block, 50.8);
    const lift = (old: { y: number }, now: { y: number }): number => old.y - now.y;
    const front = lift(endOf(block.sleeve.underarmFront), endOf(sleeve.underarmFront));
    const back = lift(startOf(block.sleeve.underarmBack), startOf(sleeve.underarmBack));
    near((front + back) / 2, 50.8, 0.6);
  });

  test("keeps what is left of the underarms where the sides were kept", () => {
    const sleeve = kept(block, 50.8);
    const [first] = splitAt(block.sleeve.underarmFront, lengthOf(sleeve.underarmFront));
    const { x, y } = endOf(first);
    nearPoint(endOf(sleeve.underarmFront), [x, y], 1e-6);
  });

  test("draws the underarms straight where the sides were moved", () => {
    const sleeve = onMoved(block, 50.8);
    for (const underarm of [sleeve.underarmFront, sleeve.underarmBack]) {
      near(lengthOf(underarm), apart(startOf(underarm), endOf(underarm)), 1e-9);
    }
  });

  test("by nothing with the sides kept leaves it alone", () => {
    expect(kept(block, 0)).toBe(block.sleeve);
  });
});

describe("the worked example's sleeve, 50.8 above the wrist (method 8)", () => {
  const sleeve = framed(onMoved(DRAFTED, 50.8));

  test("has underarms of 369.4517 and a wrist of 243.0480 at y = 356.1304", () => {
    near(lengthOf(sleeve.underarmFront), 369.4517, 1e-4);
    near(lengthOf(sleeve.wrist), 243.048, 1e-4);
    near(endOf(sleeve.underarmFront).y, 356.1304, 1e-4);
  });
});

describe("the frame of a sleeve", () => {
  test("has the front underarm point on y = 0", () => {
    holdsFor(4301, someOwnBlock, (block) => {
      const sleeve = framed(onMoved(block, 50.8));
      near(startOf(sleeve.underarmFront).y, 0, 1e-9);
    });
  });

  test("is moved as a whole: every edge keeps its length and its place to the others", () => {
    const sleeve = onMoved(CURVED, 50.8);
    const moved = framed(sleeve);
    const down = startOf(sleeve.underarmFront).y;
    expect(Math.abs(down)).toBeGreaterThan(0.1);
    edgesOfSleeve(moved).forEach((edge, i) => {
      const old = edgesOfSleeve(sleeve)[i] ?? edge;
      expect(edge).toEqual(mapPath(old, ({ x, y }) => point(x, y - down)));
    });
  });

  test("is left alone where it is right", () => {
    expect(framed(DRAFTED.sleeve)).toBe(DRAFTED.sleeve);
  });
});

describe("the sleeve of any block of the maker's own", () => {
  test("has underarms of one length after it was ended, and closes", () => {
    const drawn = fc.tuple(someOwnBlock, fc.integer({ min: 1, max: 300 }), fc.boolean());
    holdsFor(4302, drawn, ([block, above, sidesMoved]) => {
      const sleeve = sidesMoved ? onMoved(block, above) : kept(block, above);
      near(lengthOf(sleeve.underarmFront), lengthOf(sleeve.underarmBack), 1e-7);
      expectChained(edgesOfSleeve(sleeve), 1e-7);
    });
  });

  test("takes the last place where a bent underarm crosses the level of the wrist", () => {
    // Down to 300, up again to 240, and down to 400: the level 280 is crossed three times.
    const zigzag = [[0, 0] as const, [10, 300] as const, [20, 240] as const, [30, 400] as const];
    const underarm = zigzag.slice(1).map(([x, y], i) => ({
      kind: "line" as const,
      start: point(200 - (zigzag[i]?.[0] ?? 0), zigzag[i]?.[1] ?? 0),
      end: point(200 - x, y),
    }));
    const [first, ...rest] = underarm;
    if (!first) throw new Error("The underarm has no part.");
    const mirror = ({ x, y }: { x: number; y: number }) => point(-x, y);
    const sleeve: SleeveEdges = {
      ...DRAFTED.sleeve,
      underarmFront: [first, ...rest],
      underarmBack: reversed(mapPath([first, ...rest], mirror)),
    };
    const ended = endSleeve(sleeve, { aboveWrist: 120, sidesMoved: false }).altered;
    near(endOf(ended.underarmFront).y, 280, 1e-9);
    near(endOf(ended.underarmFront).x, 200 - 22.5, 1e-9);
  });
});

describe("a sleeve ended above its room", () => {
  test("is held to 60 below the underarm, and says so", () => {
    const { altered, rails } = endSleeve(DRAFTED.sleeve, { aboveWrist: 400, sidesMoved: false });
    const [rail] = rails;
    near(rail?.used ?? NaN, 409.9402 - 60, 1e-4);
    near(endOf(altered.underarmFront).y, 60, 1e-9);
    expect(rail?.message).toBe(
      "The sleeve cannot end 400\u00a0mm above the wrist; its underarm leaves room for 349.9\u00a0mm. End it lower.",
    );
  });
});

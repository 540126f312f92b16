import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import { areaOf, boundsOf } from "../../src/geometry/outline.ts";
import { clothNeeded, type Needed } from "../../src/lay/clothNeeded.ts";
import { clothOutline, type Placement } from "../../src/lay/placed.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { CUT_AWAY, garmentOf, SHRINKING, WITHOUT_V } from "../support/garments.ts";

type Fits = Extract<Needed, { kind: "fits" }>;
const fitting = (all: readonly Needed[]): readonly Fits[] =>
  all.flatMap((needed) => (needed.kind === "fits" ? [needed] : []));

const boxOf = (garment: Garment, placement: Placement) => {
  const piece = garment.pieces.find(({ name }) => name === placement.piece);
  if (!piece) throw new Error(placement.piece);
  return boundsOf(clothOutline(piece, placement));
};

/** Pieces by their own cut lines where they lie: within the cloth, and clear of each other. */
const expectLaid = (garment: Garment, { width, laid, length, placements }: Fits): void => {
  const wide = laid === "folded" ? width / 2 : width;
  const boxes = placements.map((placement) => boxOf(garment, placement));
  for (const { left, right, top, bottom } of boxes) {
    expect(left).toBeGreaterThanOrEqual(-1e-6);
    expect(right).toBeLessThanOrEqual(wide + 1e-6);
    expect(top).toBeGreaterThanOrEqual(-1e-6);
    expect(bottom).toBeLessThanOrEqual(length + 1e-6);
  }
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) {
      const apart =
        a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      expect(apart).toBe(true);
    }
  }
};

const SMALL = { ...WORKED_EXAMPLE, chest: 720, hip: 760, upperArm: 230, height: 1480 };
const LARGE = { ...WORKED_EXAMPLE, chest: 1400, hip: 1480, upperArm: 470, height: 1900 };
const GARMENTS: readonly (readonly [string, Garment])[] = [
  ["of the worked example", garmentOf()],
  ["without a V", garmentOf(WITHOUT_V)],
  ["with a V cut away", garmentOf(CUT_AWAY)],
  ["of cloth that shrinks", garmentOf(SHRINKING)],
  ["of turned cloth", garmentOf({ body: { turned: true } })],
  ["of a small body", garmentOf({}, SMALL)],
  ["of a large body", garmentOf({}, LARGE)],
];

describe("pieces on the cloth", () => {
  test.each(GARMENTS)("%s lie on it and clear of each other", (_, garment) => {
    const { body, rib } = clothNeeded(garment);
    const laid = fitting([...body, ...rib]);
    expect(laid.length).toBeGreaterThan(2);
    for (const needed of laid) expectLaid(garment, needed);
  });

  test("are cut as often as their cut list says, halves opened out", () => {
    const garment = garmentOf();
    const [opened] = fitting(clothNeeded(garment).body);
    const count = (name: string) =>
      opened?.placements.filter(({ piece }) => piece === name).length ?? 0;
    expect(["front", "back", "sleeve", "vInsert"].map(count)).toEqual([1, 1, 2, 1]);
    expect(opened?.placements.find(({ piece }) => piece === "front")?.opened).toBe(true);
  });

  test("of a pair are each other's mirror image, and both face up or down, never turned inside out", () => {
    const garment = garmentOf();
    const sleeve = garment.pieces.find(({ name }) => name === "sleeve");
    const [opened] = fitting(clothNeeded(garment).body);
    const both = opened?.placements.filter(({ piece }) => piece === "sleeve") ?? [];
    const areas = both.map((placement) =>
      sleeve ? areaOf(clothOutline(sleeve, placement)) : Number.NaN,
    );
    // A line that ran clockwise runs the other way round when it is mirrored.
    expect(areas[0]).toBeCloseTo(-(areas[1] ?? 0), 6);
  });

  test("of turned cloth lie a quarter turned, not mirrored", () => {
    const garment = garmentOf({ body: { turned: true } });
    const back = garment.pieces.find(({ name }) => name === "back");
    const [opened] = fitting(clothNeeded(garment).body);
    const placement = opened?.placements.find(({ piece }) => piece === "back");
    if (!back || !placement) throw new Error("The back is missing.");
    const box = boundsOf(clothOutline(back, placement));
    const upright = boundsOf(back.cutLine);
    expect(box.right - box.left).toBeCloseTo(upright.bottom - upright.top, 6);
    expect(areaOf(clothOutline(back, placement))).toBeGreaterThan(0);
    // Turned cloth has no fold along the centre.
    expect(clothNeeded(garment).body.every(({ laid }) => laid === "opened")).toBe(true);
  });
});

describe("the length that is needed", () => {
  test("of a wider cloth is never more", () => {
    for (const [, garment] of GARMENTS) {
      for (const laid of ["opened", "folded"] as const) {
        const lengths = fitting(clothNeeded(garment).body)
          .filter((needed) => needed.laid === laid)
          .map(({ length }) => length);
        expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
      }
    }
  });

  test("is that of the rows: worked by hand for a cloth of 1500", () => {
    // The worked example's sleeves side by side, then front and back, by their cut lines; gaps of 10
    // before, between and after. Front and back opened out are 2 x 297.225 wide: 1189 + 10 + the
    // insert's 64 fits on 1500; two sleeves of 459 do so too.
    const garment = garmentOf();
    const high = (name: string): number => {
      const piece = garment.pieces.find((p) => p.name === name);
      if (!piece) throw new Error(name);
      const { top, bottom } = boundsOf(piece.cutLine);
      return bottom - top;
    };
    const needed = fitting(clothNeeded(garment, { body: [1500], rib: [1500] }).body)[0];
    expect(needed?.length).toBeCloseTo(
      30 + high("sleeve") + Math.max(high("front"), high("back")),
      6,
    );
    expect(needed?.buy).toBe(Math.ceil((needed?.length ?? 0) / 10) * 10);
  });

  test("uses no more cloth than there is", () => {
    for (const [, garment] of GARMENTS) {
      const { body, rib } = clothNeeded(garment);
      for (const { used } of fitting([...body, ...rib])) {
        expect(used).toBeGreaterThan(0.25);
        expect(used).toBeLessThan(1);
      }
    }
  });

  test("cannot be told where the back is wider than the cloth", () => {
    const [needed] = clothNeeded(garmentOf({}, LARGE), { body: [600], rib: [] }).body;
    expect(needed?.kind).toBe("too-narrow");
    if (needed?.kind === "too-narrow") expect(needed.needs).toBeGreaterThan(600);
  });
});

describe("a hem band longer than the rib is wide", () => {
  const garment = garmentOf();
  const { rib, assumed } = clothNeeded(garment, { body: [], rib: [700] });
  const parts = fitting(rib)[0]?.placements.filter(({ piece }) => piece === "hemBand") ?? [];

  test("is cut in two, parted at both sides, and told so", () => {
    expect(parts.length).toBe(2);
    expect(assumed).toContainEqual({ id: "in-parts", piece: "hemBand", width: 700, parts: 2 });
  });

  test("loses nothing: each part has two allowances of its own", () => {
    const { finishedLength } = garment.bands.hemBand;
    const allowance = garment.choices.allowances.bands;
    const sum = parts.reduce((total, { across }) => total + across, 0);
    expect(sum).toBeCloseTo(finishedLength + 4 * allowance, 6);
  });
});

import { describe, expect, test } from "vitest";
import { necklineRing } from "../../src/bands/necklineRing.ts";
import { near } from "../support/expectations.ts";
import { garmentOf } from "../support/workedGarment.ts";
import { flatRing } from "./flatRing.ts";

const ringOf = (radius: number, parts: Parameters<typeof flatRing>[1]) => {
  const { finished, wholeFront } = flatRing(radius, parts);
  return necklineRing(finished, wholeFront);
};

describe("the ring of a flat circular cape", () => {
  test.each([
    ["on the sleeve", { back: 0.9, front: 1.1 }],
    ["on the back", { back: 2, front: 0.6 }],
    ["on the front", { back: 0.5, front: 1.9 }],
  ])("turns by 2π and is 2πr round, its half-way mark %s", (_, parts) => {
    const ring = ringOf(80, parts);
    near(ring.opening, 2 * Math.PI * 80, 1e-4);
    near(ring.turning, 2 * Math.PI, 1e-5);
    near(ring.overFront, 0, 1e-5);
    near(ring.overBack, 0, 1e-5);
  });

  test.each([
    { back: 0.9, front: 1.1 },
    { back: 2, front: 0.6 },
    { back: 0.5, front: 1.9 },
  ])(
    "turns on the way to each mark as far as the way goes round: back $back, front $front",
    (parts) => {
      const { stations } = ringOf(80, parts);
      expect(stations.map(({ to }) => to)).toEqual([
        "centre-back",
        "raglan-back",
        "half-way",
        "raglan-front",
        "centre-front",
      ]);
      const angles = [0, parts.back, Math.PI / 2, Math.PI - parts.front, Math.PI];
      stations.forEach(({ way, turning }, i) => {
        near(way, 80 * (angles[i] ?? NaN), 1e-4);
        // An eighth of the last part cut may be counted or not: its turn is a five-hundredth.
        near(turning, angles[i] ?? NaN, 1e-4);
      });
    },
  );
});

describe("the ring of a cape whose sleeve is set askew", () => {
  // Each seam's own turn counts half on either side of it (method 5.2), the whole beyond it.
  test.each([
    ["on the sleeve", { back: 0.9, front: 1.1 }],
    ["on the back", { back: 2, front: 0.6 }],
    ["on the front", { back: 0.5, front: 1.9 }],
  ])("turns over its seams by as much, its half-way mark %s", (where, parts) => {
    const ring = ringOf(80, { ...parts, askew: { back: 0.2, front: 0.3 } });
    near(ring.overBack, 0.2, 1e-5);
    near(ring.overFront, 0.3, 1e-5);
    near(ring.turning, 2 * Math.PI - 2 * 0.5, 1e-5);
    const turned = ring.stations.map(({ turning }) => turning);
    near(turned[1] ?? NaN, parts.back - 0.1, 1e-4);
    near(turned[3] ?? NaN, Math.PI - parts.front - 0.2 - 0.15, 1e-4);
    near(turned[4] ?? NaN, Math.PI - 0.5, 1e-5);
    const before = { "on the back": 0, "on the sleeve": 0.2, "on the front": 0.5 }[where] ?? NaN;
    near(turned[2] ?? NaN, Math.PI / 2 - before, 1e-4);
  });
});

describe("the ring of the worked example (method 8, its marks)", () => {
  const { ring } = garmentOf();

  test("is 487.9222 round and turns by 5.735600, straight over both seams", () => {
    near(ring.opening, 487.9222, 1e-4);
    near(ring.turning, 5.7356, 1e-6);
    near(ring.overFront, 0, 1e-9);
    near(ring.overBack, 0, 1e-9);
  });

  test("has its marks and turnings where the table has them", () => {
    const wanted = [
      [0, 0],
      [80.907, 0.558026],
      [121.9806, 1.529749],
      [147.867, 1.788435],
      [243.9611, 2.8678],
    ];
    ring.stations.forEach(({ way, turning }, i) => {
      near(way, wanted[i]?.[0] ?? NaN, 1e-4);
      near(turning, wanted[i]?.[1] ?? NaN, 1e-6);
    });
  });

  test("is as long without the V: a true V changes nothing", () => {
    const plain = garmentOf({ vInsert: { on: false } }).ring;
    near(plain.opening, ring.opening, 1e-8);
    near(plain.turning, ring.turning, 1e-9);
  });

  test("cut away is shorter by twice the way along the neckline to the sewn V", () => {
    const cut = garmentOf({ vInsert: { method: "cut-away" } });
    const lost = ring.opening - cut.ring.opening;
    const left = garmentOf().finished.front.neckline.length;
    near(lost, 2 * (left - cut.finished.front.neckline.length), 1e-8);
    expect(lost).toBeGreaterThan(10);
    near(cut.ring.turning, ring.turning, 1e-9);
  });
});

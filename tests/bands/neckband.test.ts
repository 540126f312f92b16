import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutNeckband, foldRings, neckbandBounds } from "../../src/bands/neckband.ts";
import type { NecklineRing, Station } from "../../src/bands/necklineRing.ts";
import type { Measures } from "../../src/drafting/measures.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { type Changes, choicesOf } from "../support/choices.ts";
import { near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import { garmentOf } from "../support/workedGarment.ts";

/** Marks at these ways and turnings, from centre back. */
const ringOf = (
  opening: number,
  turning: number,
  marks: readonly (readonly [Station["to"], number, number])[],
): NecklineRing => ({
  opening,
  turning,
  overFront: 0,
  overBack: 0,
  stations: marks.map(([to, way, turned]) => ({ to, way, turning: turned })),
});

/** A ring that turns evenly: a circle on a plane where it turns by 2π. */
const evenRing = (opening: number, turning: number): NecklineRing =>
  ringOf(opening, turning, [
    ["centre-back", 0, 0],
    ["raglan-back", opening / 6, turning / 6],
    ["half-way", opening / 4, turning / 4],
    ["raglan-front", opening / 3, turning / 3],
    ["centre-front", opening / 2, turning / 2],
  ]);

const cut = (ring: NecklineRing, changes: Changes = {}, body: Partial<Measures> = {}) =>
  cutNeckband(ring, { ...WORKED_EXAMPLE, ...body }, choicesOf(changes));

describe("the rings under a neckband's fold", () => {
  test("on a table: 2π times the depth shorter, where the garment lies flat", () => {
    near(foldRings(evenRing(500, 2 * Math.PI), 20, 0).innerRing, 500 - 40 * Math.PI, 1e-9);
  });

  // Method 8: d = 4·115.9222/(3·5.7356) = 26.9480, L = 398.1546 at a depth of 19.
  test("on the worked example are 378.9458, 398.1546 and a gap of 26.9480", () => {
    const rings = foldRings({ opening: 487.9222, turning: 5.7356 }, 19, 372);
    near(rings.innerRing, 378.9458, 1e-4);
    near(rings.bodyRing, 398.1546, 1e-4);
    near(rings.neckGap ?? NaN, 26.948, 1e-4);
  });

  test("at the depth of the gap and beyond it are the neck base itself, without a step", () => {
    const ring = { opening: 487.9222, turning: 5.7356 };
    const gap = foldRings(ring, 19, 372).neckGap ?? NaN;
    near(foldRings(ring, gap - 1e-9, 372).bodyRing, 372, 1e-6);
    expect(foldRings(ring, gap, 372).bodyRing).toBe(372);
    expect(foldRings(ring, 60, 372).bodyRing).toBe(372);
  });

  test("have no gap where the neckline is no longer than the neck", () => {
    expect(foldRings({ opening: 372, turning: 5 }, 19, 372)).toEqual({
      innerRing: 372 - 95,
      bodyRing: 372,
      neckGap: 0,
    });
  });

  test("have no gap that can be told where the ring does not turn inward", () => {
    for (const turning of [0, -1]) {
      const { bodyRing, neckGap } = foldRings({ opening: 488, turning }, 19, 372);
      expect([bodyRing, neckGap]).toEqual([488, null]);
    }
  });
});

describe("what a neckband's length must satisfy", () => {
  test("on the worked example: 326.1628, 348.5159, 381.2016, 402.1571 (method 8)", () => {
    const bounds = neckbandBounds(487.9222, 398.1546, 561, { stretch: 0.8, recovery: 0.95 });
    near(bounds.forHead, 326.1628, 1e-4);
    near(bounds.forSewing, 348.5159, 1e-4);
    near(bounds.target, 381.2016, 1e-4);
    near(bounds.flat, 402.1571, 1e-4);
  });
});

describe("the finished length of a neckband", () => {
  const ring = evenRing(488, 5.7356);
  const boundsAt = (rib: { stretch: number; recovery: number }, depth = 19) =>
    neckbandBounds(488, foldRings(ring, depth, 372).bodyRing, 561, rib);
  const lengthOf = (changes: Changes) => cut(ring, changes).neckband.finishedLength;

  test("is aimed at where nothing forbids it", () => {
    near(lengthOf({}), boundsAt({ stretch: 0.8, recovery: 0.95 }).target, 1e-9);
  });

  test("is the least that the head and the sewing allow, where the aim is shorter", () => {
    const rib = { stretch: 0.5, recovery: 0.95 };
    const { forHead, forSewing, target, flat } = boundsAt(rib);
    const least = Math.max(forHead, forSewing);
    expect(target).toBeLessThan(least);
    expect(least).toBeLessThan(flat);
    near(lengthOf({ rib }), least, 1e-9);
  });

  test("goes beyond what lies flat where the limits cross: passing the head comes first", () => {
    const rib = { stretch: 0.3, recovery: 0.9 };
    const { forHead, forSewing, flat } = boundsAt(rib);
    const least = Math.max(forHead, forSewing);
    expect(least).toBeGreaterThan(flat);
    near(lengthOf({ rib }), least, 1e-9);
  });

  test("is never more than the opening", () => {
    expect(lengthOf({ rib: { stretch: 0.02, recovery: 0.5 } })).toBe(488);
  });

  test("is the maker's own ratio of the opening, where one is given", () => {
    near(lengthOf({ neckband: { ratio: 0.7 } }), 0.7 * 488, 1e-9);
    expect(lengthOf({ neckband: { ratio: 1 } })).toBe(488);
  });
});

describe("the neckband of the worked example (method 8)", () => {
  const { neckband } = garmentOf().bands;

  test("is 381.2016 round, ratio 0.7813, cut 393.9016 by 50.7, pressing with nothing", () => {
    near(neckband.finishedLength, 381.2016, 1e-4);
    near(neckband.ratio, 0.7813, 5e-5);
    near(neckband.cutLength, 393.9016, 1e-4);
    near(neckband.cutHeight, 50.7, 1e-9);
    expect(neckband.pressure).toBe(0);
  });

  test("has its eight marks where the ring has them", () => {
    const wanted = [0, 69.1003, 93.8641, 114.7721, 190.6008, 266.4294, 287.3374, 312.1012];
    neckband.marks.forEach(({ at }, i) => {
      near(at, wanted[i] ?? NaN, 2e-4);
    });
    expect(neckband.marks.map(({ to }) => to)).toEqual([
      "centre-back",
      "raglan-back",
      "half-way",
      "raglan-front",
      "centre-front",
      "raglan-front",
      "half-way",
      "raglan-back",
    ]);
  });

  test("has centre back, half way, centre front, half way as its quarter marks", () => {
    [0, 93.8641, 190.6008, 287.3374].forEach((at, i) => {
      near(neckband.quarterMarks[i] ?? NaN, at, 2e-4);
    });
  });

  test("shared evenly has its marks by the way along the opening", () => {
    const even = garmentOf({ neckband: { share: "even" } }).bands.neckband;
    [0, 63.2107, 95.3004, 115.5249, 190.6008].forEach((at, i) => {
      near(even.marks[i]?.at ?? NaN, at, 2e-4);
    });
    expect(even.finishedLength).toBe(neckband.finishedLength);
  });
});

describe("the marks of any neckband", () => {
  const drawn = fc.record({
    opening: fc.integer({ min: 380, max: 640 }),
    turning: fc.integer({ min: -10, max: 70 }).map((n) => n / 10),
    depth: fc.integer({ min: 6, max: 60 }),
    share: fc.constantFrom("ring" as const, "even" as const),
  });

  test("lie the same way from the seam on either side, in order, from nought to the front", () => {
    holdsFor(6201, drawn, ({ opening, turning, depth, share }) => {
      const { neckband } = cut(evenRing(opening, turning), {
        neckband: { finishedDepth: depth, share },
      });
      const at = neckband.marks.map((mark) => mark.at);
      expect(at).toHaveLength(8);
      near(at[0] ?? NaN, 0, 1e-9);
      near(at[4] ?? NaN, neckband.finishedLength / 2, 1e-6);
      for (const i of [1, 2, 3]) {
        near((at[i] ?? NaN) + (at[8 - i] ?? NaN), neckband.finishedLength, 1e-6);
      }
      expect(at).toEqual([...at].sort((a, b) => a - b));
    });
  });

  test("are even on a ring that turns evenly, by either share", () => {
    for (const share of ["ring", "even"] as const) {
      const { marks, finishedLength } = cut(evenRing(488, 2 * Math.PI), {
        neckband: { share },
      }).neckband;
      near(marks[1]?.at ?? NaN, finishedLength / 6, 1e-9);
      near(marks[2]?.at ?? NaN, finishedLength / 4, 1e-9);
    }
  });

  test("stand closer where the neckline turns more", () => {
    const ring = ringOf(488, 6, [
      ["centre-back", 0, 0],
      ["raglan-back", 80, 0.1],
      ["half-way", 122, 2.2],
      ["raglan-front", 150, 2.3],
      ["centre-front", 244, 3],
    ]);
    const { marks } = cut(ring).neckband;
    const even = cut(ring, { neckband: { share: "even" } }).neckband.marks;
    expect(marks[1]?.at).toBeGreaterThan(even[1]?.at ?? NaN);
    const between = (list: typeof marks) => (list[2]?.at ?? NaN) - (list[1]?.at ?? NaN);
    expect(between(marks)).toBeLessThan(between(even));
  });
});

describe("shares that would run backwards", () => {
  // All of the turning lies between two marks 10 apart, so the fold has less than nothing there.
  const tight = ringOf(488, 6, [
    ["centre-back", 0, 0],
    ["raglan-back", 80, 0],
    ["half-way", 90, 3],
    ["raglan-front", 150, 3],
    ["centre-front", 244, 3],
  ]);

  test("are given up for even ones, and the maker is told the shortest", () => {
    const { neckband, rails } = cut(tight);
    const even = cut(tight, { neckband: { share: "even" } });
    expect(neckband.marks).toEqual(even.neckband.marks);
    const [rail] = rails;
    expect([rail?.id, rail?.used, rail?.stops]).toEqual(["rail-share", 0, false]);
    const lost = (488 - neckband.bodyRing) / 6;
    near(rail?.wanted ?? NaN, 10 - 3 * lost, 1e-9);
    expect(rail?.message).toMatch(
      /^Between two marks of the neckband the fold would be -[\d.]+\u00a0mm long; it must be more than 0\u00a0mm, so the marks stand evenly\. Make the neckband less deep, or the neckline wider\.$/,
    );
  });

  test("are not told of where the maker chose even ones", () => {
    expect(cut(tight, { neckband: { share: "even" } }).rails).toEqual([]);
  });
});

describe("a neckband's pressure", () => {
  test("is on the neck, where the worn band is shorter than it", () => {
    const { neckband } = cut(evenRing(488, 5.7), { neckband: { ratio: 0.6 } });
    const worn = 0.95 * 0.6 * 488 + 0.05 * 561;
    near(neckband.pressure, (716 * (372 / worn - 1)) / (0.8 * 372), 1e-9);
  });
});

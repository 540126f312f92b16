import { describe, expect, test } from "vitest";
import { neckbandBounds } from "../../src/bands/neckband.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { degrees } from "../../src/geometry/units.ts";
import { make } from "../../src/project/make.ts";
import { exampleBody } from "../drafting/bodies.ts";
import { choicesOf } from "../support/choices.ts";
import { near, nearPoint } from "../support/expectations.ts";

/**
 * Section 8 of the method, its second table (the block stands in workedBlock.test.ts), to the
 * tolerances of section 10: seams and edges 0.05 mm, points 0.1 mm, angles 0.05°, ratios 0.0005,
 * bands and their marks 0.05 mm.
 */
const LENGTH = 0.05;
const RATIO = 0.0005;
const ANGLE = 0.05;

const { garment, checks } = make(exampleBody(), DEFAULT_CHOICES, null);
const { finished, bands, ring } = garment;

describe("the altered garment", () => {
  test("sides: 0.2644°, and the underarm points", () => {
    near(garment.sideSlope ?? NaN, 0.2644, ANGLE);
    nearPoint(startOf(finished.front.side.path), [287.7, 247.0586]);
    nearPoint(startOf(finished.back.side.path), [287.7, 247.0586]);
    near(finished.front.raglan.length - 302.3914, 12.70014, LENGTH);
    near(startOf(finished.sleeve.underarmFront.path).x, 219.8382, 0.1);
    nearPoint(startOf(finished.sleeve.underarmFront.path), [219.8382, 0]);
    // Set into its frame: 3.0098 lower before.
    near(-startOf(finished.sleeve.raglanFront.path).y, 246.2109 + 3.0098, LENGTH);
  });

  test("hem: y = 521.2, side 274.1414, hem 287.7", () => {
    for (const half of [finished.front, finished.back]) {
      near(endOf(half.hem.path).y, 521.2, LENGTH);
      near(half.side.length, 274.1414, LENGTH);
      near(half.hem.length, 287.7, LENGTH);
    }
  });

  test("sleeve end: 369.4517, and a wrist of 243.0480 at y = 356.1304", () => {
    near(finished.sleeve.underarmFront.length, 369.4517, LENGTH);
    near(finished.sleeve.underarmBack.length, 369.4517, LENGTH);
    near(finished.sleeve.wrist.length, 243.048, LENGTH);
    near(startOf(finished.sleeve.wrist.path).y, 356.1304, LENGTH);
  });

  test("V: T, P, 24.183°, sides of 60.6464, neckline left 70.6941", () => {
    const v = finished.front.v?.path;
    if (!v) throw new Error("The front has a V.");
    const [t, p] = [endOf(v), startOf(v)];
    nearPoint(t, [24.8436, 80.2257]);
    nearPoint(p, [0, 135.55]);
    near(degrees(Math.atan2(t.x, p.y - t.y)), 24.183, ANGLE);
    near(finished.front.v?.length ?? NaN, 60.6464, LENGTH);
    near(finished.front.neckline.length, 70.6941, LENGTH);
  });

  test("seams, every difference below 1e-9", () => {
    const wanted = {
      "raglan-front": 315.0916,
      "raglan-back": 333.3046,
      side: 274.1414,
      underarm: 369.4517,
      "v-left": 60.6464,
    };
    for (const { id, lengthA, lengthB, difference } of garment.seams) {
      near(lengthA, wanted[id], LENGTH, id);
      near(lengthB, wanted[id], LENGTH, id);
      near(difference, 0, 1e-9, id);
    }
    expect(garment.seams).toHaveLength(5);
  });

  test("by cut-away: front v 82.279, insert 60.646, short by 21.633 a side", () => {
    const cut = make(exampleBody(), choicesOf({ vInsert: { method: "cut-away" } }), null).garment;
    near(cut.finished.front.v?.length ?? NaN, 82.279, LENGTH);
    near(cut.finished.vInsert?.left.length ?? NaN, 60.646, LENGTH);
    const seam = cut.seams.find(({ id }) => id === "v-left");
    near(seam?.difference ?? NaN, 21.633, LENGTH);
  });
});

describe("the neckband", () => {
  const { neckband } = bands;

  test("its ring: h, O, Θ, I, d and L", () => {
    near(finished.sleeve.neckline.length, 66.96, LENGTH);
    near(finished.back.neckline.length, 80.907, LENGTH);
    near(ring.opening / 2, 243.9611, LENGTH);
    near(neckband.opening, 487.9222, LENGTH);
    near(ring.turning, 5.7356, 0.0005);
    near(neckband.innerRing, 378.9458, LENGTH);
    near(neckband.neckGap ?? NaN, 26.948, LENGTH);
    near(neckband.bodyRing, 398.1546, LENGTH);
  });

  test("its length: FH, FS, FT, FF, F, ratio and cut", () => {
    const bounds = neckbandBounds(
      neckband.opening,
      neckband.bodyRing,
      561,
      DEFAULT_CHOICES.cloth.rib,
    );
    near(bounds.forHead, 326.1628, LENGTH);
    near(bounds.forSewing, 348.5159, LENGTH);
    near(bounds.target, 381.2016, LENGTH);
    near(bounds.flat, 402.1571, LENGTH);
    near(neckband.finishedLength, 381.2016, LENGTH);
    near(neckband.ratio, 0.7813, RATIO);
    near(neckband.cutLength, 393.9016, LENGTH);
    near(neckband.cutHeight, 50.7, LENGTH);
    near(0.95 * neckband.finishedLength + 0.05 * 561, 390.1915, LENGTH);
    near(neckband.pressure, 0, 0.005);
  });

  test("its marks on the ring: q and T of the table", () => {
    const wanted = [
      [0, 0],
      [80.907, 0.558026],
      [121.9806, 1.529749],
      [147.867, 1.788435],
      [243.9611, 2.8678],
    ] as const;
    near(degrees(ring.overFront), 0, ANGLE);
    near(degrees(ring.overBack), 0, ANGLE);
    ring.stations.forEach(({ way, turning }, i) => {
      near(way, wanted[i]?.[0] ?? NaN, LENGTH);
      near(turning, wanted[i]?.[1] ?? NaN, 0.0005);
    });
  });

  test("its inner lengths i, by what is lost to a radian, 15.650957", () => {
    const lost = (neckband.opening - neckband.bodyRing) / ring.turning;
    near(lost, 15.650957, 0.001);
    [0, 72.1734, 98.0385, 119.8763, 199.0773].forEach((inner, i) => {
      const { way, turning } = ring.stations[i] ?? { way: NaN, turning: NaN };
      near(way - turning * lost, inner, LENGTH);
    });
  });

  test("its marks and quarter marks", () => {
    const wanted = [0, 69.1003, 93.8641, 114.7721, 190.6008, 266.4294, 287.3374, 312.1012];
    expect(neckband.marks).toHaveLength(8);
    neckband.marks.forEach(({ at }, i) => {
      near(at, wanted[i] ?? NaN, LENGTH);
    });
    [0, 93.8641, 190.6008, 287.3374].forEach((at, i) => {
      near(neckband.quarterMarks[i] ?? NaN, at, LENGTH);
    });
  });

  test("its marks shared evenly", () => {
    const even = make(exampleBody(), choicesOf({ neckband: { share: "even" } }), null).garment;
    [0, 63.2107, 95.3004, 115.5249, 190.6008].forEach((at, i) => {
      near(even.bands.neckband.marks[i]?.at ?? NaN, at, LENGTH);
    });
  });

  test("its half-way mark on the garment, on the sleeve 41.0736 from the back corner", () => {
    const sleeve = garment.pieces.find(({ name }) => name === "sleeve");
    const mark = sleeve?.notches.find(({ seam }) => seam === "neckband");
    expect(mark?.edge).toBe("neckline");
    near(mark?.at ?? NaN, 41.0736, LENGTH);
  });
});

describe("cuff and hem band", () => {
  test("the cuff", () => {
    const { cuff } = bands;
    near(cuff.finishedLength, 155, LENGTH);
    near(cuff.cutLength, 167.7, LENGTH);
    near(cuff.cutHeight, 114.3, LENGTH);
    near(cuff.opening, 243.048, LENGTH);
    near(cuff.stretchToSew, 0.5681, RATIO);
    near(cuff.stretchToPass, 0.2065, RATIO);
    near(cuff.pressure, 0, 0.005);
  });

  test("the hem band", () => {
    const { hemBand } = bands;
    near(hemBand.finishedLength, 1010, LENGTH);
    near(hemBand.cutLength, 1022.7, LENGTH);
    near(hemBand.cutHeight, 165.1, LENGTH);
    near(hemBand.opening, 1150.8, LENGTH);
    near(hemBand.stretchToSew, 0.1394, RATIO);
    near(hemBand.pressure, 0, 0.005);
    near(hemBand.holdsBlouseFrom, 961.52, LENGTH);
  });
});

describe("the checks", () => {
  test("are all sound", () => {
    expect(checks.filter(({ verdict }) => verdict !== "sound")).toEqual([]);
  });

  test.each([
    ["neckline-turn", 0, ANGLE],
    ["underarm-turn", 3.4479, ANGLE],
    ["hem-turn", 0, ANGLE],
    ["wrist-turn", 30.866, ANGLE],
    ["chest-ease", 190.8, LENGTH],
    ["hip-ease", 140.8, LENGTH],
    ["upper-arm-ease", 134.677, LENGTH],
    ["head-passes", 0.4717, RATIO],
    ["neckline-passes", 0.1498, RATIO],
    ["neckband-lies-flat", -7.9631, LENGTH],
    ["neckband-sews", 0.28, RATIO],
    ["cuff-pressure", 0, 0.005],
    ["hem-band-pressure", 0, 0.005],
  ])("%s is %s", (id, value, within) => {
    near(checks.find((check) => check.id === id)?.value ?? NaN, value, within, id);
  });

  test("neckband-lies-flat has its limit at 11.9446", () => {
    near(checks.find(({ id }) => id === "neckband-lies-flat")?.limit ?? NaN, 11.9446, LENGTH);
  });
});

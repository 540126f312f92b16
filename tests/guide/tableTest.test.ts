import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { pointAt } from "../../src/geometry/curve.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { nearestOnPath } from "../../src/geometry/nearest.ts";
import { apart, type Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { printedArc } from "../../src/guide/arc.ts";
import { bandsForRib } from "../../src/guide/bandsFound.ts";
import { type Readings, readTableTest } from "../../src/guide/readings.ts";
import { loadOn, stretchOfUse, tableTest } from "../../src/guide/tableTest.ts";
import { tell, voiceOf } from "../../src/guide/words/tell.ts";
import { garmentOf } from "../support/garments.ts";

/** Source: reference on rib bands, section 7, and the method's worked example (section 8). */
const garment = garmentOf();
const READ: Readings = {
  loaded: 180,
  stretched: 147.2,
  afterMinute: 108,
  afterHour: 102.36,
  flatAt: 125,
};

const found = (readings: Partial<Readings>) => readTableTest({ ...READ, ...readings }, garment);
const ribOf = (readings: Partial<Readings>) => {
  const read = found(readings);
  if ("fault" in read) throw new Error(read.fault.reason);
  return read.rib;
};

describe("the load", () => {
  test("is 0.34 kg on a folded width of 19 and 0.9 kg on 50, 18 g for each millimetre", () => {
    expect(loadOn(19)).toBeCloseTo(339, 0);
    expect(Math.round(loadOn(50) / 100)).toBe(9);
    expect(Math.round(loadOn(1))).toBe(18);
  });
});

describe("the stretch of use", () => {
  test("is about half as long again: head over band, 100 × 561 / 381.2016", () => {
    expect(stretchOfUse(garment)).toBeCloseTo(147.166, 2);
  });
});

describe("readings", () => {
  test("give the stretch, the recovery after the hour, and after the minute", () => {
    const rib = ribOf({});
    expect(rib.stretch).toBeCloseTo(0.8, 9);
    expect(rib.recovery).toBeCloseTo((147.2 - 102.36) / 47.2, 9);
    expect(rib.recoveryAfterMinute).toBeCloseTo((147.2 - 108) / 47.2, 9);
  });

  test("give the slack of the reference's example: D 19, ρ 85.07, A 125: 0.029", () => {
    expect(ribOf({ flatAt: 125 }).slack).toBeCloseTo(0.029, 3);
    // "Steps of 5 in A are 4 % in e."
    const step = (ribOf({ flatAt: 120 }).slack ?? 0) - (ribOf({ flatAt: 125 }).slack ?? 0);
    expect(step).toBeCloseTo(0.04, 2);
  });

  test("that a rib cannot give are refused with one sentence and its cure", () => {
    const wrong: readonly Partial<Readings>[] = [
      { loaded: 80 },
      { loaded: 100 },
      { loaded: 400 },
      { stretched: 100 },
      { stretched: 90 },
      { afterHour: 140 },
      { afterHour: 90 },
      { afterMinute: 160 },
      { flatAt: 20 },
      { loaded: Number.NaN },
    ];
    for (const readings of wrong) {
      const read = found(readings);
      expect("fault" in read).toBe(true);
      if ("fault" in read) {
        expect(read.fault.reason).toMatch(/\.$/u);
        expect(read.fault.do).toMatch(/\.$/u);
        expect(read.fault.reason.length + read.fault.do.length).toBeGreaterThan(20);
      }
    }
  });
});

const sayings = (readings: Partial<Readings>): string =>
  bandsForRib(garment, ribOf(readings))
    .sentences.map((sentence) => tell(voiceOf("en"), sentence))
    .join("\n");

describe("a rib found as the draft has it", () => {
  test("changes nothing", () => {
    const rib = { stretch: 0.8, recovery: 0.95, recoveryAfterMinute: null, slack: 0.031 };
    const { bands } = bandsForRib(garment, rib);
    expect(bands).toEqual(garment.bands);
  });
});

describe("a rib with less recovery", () => {
  test("takes a shorter band: FT = (0.98 L − (1 − r) head) / r of the method, by hand", () => {
    // L = 398.1546, head 561; r = 0.9: FT = (390.1915 − 56.1) / 0.9 = 371.2128.
    const rib = { stretch: 0.8, recovery: 0.9, recoveryAfterMinute: null, slack: null };
    const { bands, sentences } = bandsForRib(garment, rib);
    expect(bands.neckband.finishedLength).toBeCloseTo(371.2128, 2);
    const text = sentences.map((sentence) => tell(voiceOf("en"), sentence)).join("\n");
    expect(text).toContain("381.2\u00a0mm becomes 371.2\u00a0mm, cut 383.9\u00a0mm");
  });
});

describe("what is said of a rib", () => {
  test("warns of a minute under 85 %", () => {
    expect(sayings({ afterMinute: 112 })).toContain("After a minute only 75\u00a0%");
    expect(sayings({ afterMinute: 104 })).not.toContain("After a minute");
  });

  test("of little slack says to sew at 0.98 of the ring and no longer", () => {
    expect(sayings({ flatAt: 130 })).toContain("The neckband is at that length already");
    const ratio = { neckband: { ...DEFAULT_CHOICES.bands.neckband, ratio: 0.84 } };
    const long = garmentOf({ bands: ratio });
    const rib = ribOf({ flatAt: 130 });
    const text = bandsForRib(long, rib)
      .sentences.map((sentence) => tell(voiceOf("en"), sentence))
      .join("\n");
    expect(text).toContain("and no longer");
    expect(text).toContain("its ratio is fixed by hand");
  });

  test("that stretches little says that it is near its end", () => {
    const rib = { stretch: 0.2, recovery: 0.95, recoveryAfterMinute: null, slack: null };
    const keys = bandsForRib(garment, rib).sentences.map(({ key }) => key);
    expect(keys).toContain("test.change.tight");
  });
});

describe("the printed arc", () => {
  const arc = printedArc(garment);
  const radius = arc.radius ?? Number.NaN;

  test("has the radius O/Θ: 487.9222 / 5.7356 = 85.07", () => {
    expect(radius).toBeCloseTo(85.07, 2);
  });

  test("is round within a hundredth of a millimetre", () => {
    const [{ start }] = arc.edge;
    const onArc: readonly Point[] = arc.edge.flatMap((segment) =>
      [0, 0.2, 0.5, 0.8, 1].map((t) => pointAt(segment, t)),
    );
    // Its centre lies a radius below its highest point.
    const top = Math.min(...onArc.map(({ y }) => y));
    const end = arc.edge[arc.edge.length - 1]?.end ?? start;
    const centre = { x: (start.x + end.x) / 2, y: top + radius };
    for (const p of onArc) expect(Math.abs(apart(p, centre) - radius)).toBeLessThan(0.01);
  });

  test("has ticks at 0 and from 110 to 140 by fives, so far along it", () => {
    expect(arc.ticks.map(({ at }) => at)).toEqual([0, 110, 115, 120, 125, 130, 135, 140]);
    for (const { at, path } of arc.ticks) {
      const near = nearestOnPath(arc.edge, path[0].start);
      expect(near.away).toBeLessThan(0.001);
      expect(near.along).toBeCloseTo(at, 2);
    }
  });

  test("has its fold the band's depth further in, all along", () => {
    const onFold = (path: Path): readonly Point[] => path.map(({ end }) => end);
    for (const p of onFold(arc.fold)) {
      expect(nearestOnPath(arc.edge, p).away).toBeCloseTo(19, 3);
    }
    expect(lengthOf(arc.fold)).toBeCloseTo(lengthOf(arc.edge) * (1 - 19 / radius), 3);
  });

  test("is a straight line where the opening does not turn inward", () => {
    const { ring, bands } = garment;
    const flat = printedArc({ ring: { ...ring, turning: 0 }, bands });
    expect(flat.radius).toBeNull();
    expect(lengthOf(flat.edge)).toBeCloseTo(145, 9);
  });
});

test("the test is told whole, in both languages", () => {
  const { need, steps, cautions, arcTitle } = tableTest(garment);
  for (const language of ["en", "de"] as const) {
    const all = [need, arcTitle, ...cautions, ...steps.flatMap((s) => [s.title, ...s.sentences])];
    for (const sentence of all) expect(tell(voiceOf(language), sentence)).not.toMatch(/[{}]|NaN/u);
  }
});

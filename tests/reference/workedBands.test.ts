import { describe, expect, test } from "vitest";
import { cutHemBand } from "../../src/bands/cuffAndHem.ts";
import { BAND } from "../../src/bands/data/bandConstants.ts";
import { makeGarment } from "../../src/bands/makeGarment.ts";
import type { Station } from "../../src/bands/necklineRing.ts";
import { pressureOn, wornLength } from "../../src/bands/worn.ts";
import { checkGarment } from "../../src/checks/checkGarment.ts";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { choicesWith } from "./worked/bandRing.ts";
import {
  allBandCases,
  type BandCase,
  bandCase,
  marksAt,
  neckbandOf,
  ringsOf,
} from "./workedBands.ts";

/**
 * Source: data/worked-bands.json, 26 worked cases on rib bands. Those of the method's sections 5.1
 * to 5.3 were worked with another program; those of a model (W09 to W16) come from an axisymmetric
 * model and a mesh of 2,240 points, written apart. No cloth was tested.
 */
const near = (value: number, wanted: number, within: number): void =>
  expect(Math.abs(value - wanted), `${value} for ${wanted}`).toBeLessThanOrEqual(within);

const withTitle = (ids: readonly string[]) => ids.map((id) => ({ id, what: bandCase(id).what }));

describe("a neckband's length", () => {
  test.each(withTitle(["W03", "W04", "W05", "W06", "W08", "W22", "W23"]))(
    "$id: $what",
    ({ id }) => {
      const c = bandCase(id);
      const band = neckbandOf(c);
      near(band.innerRing, c.expected("innerRing"), 0.05);
      near(band.neckGap ?? Number.NaN, c.expected("neckGap"), 0.05);
      near(band.bodyRing, c.expected("bodyRing"), 0.05);
      near(band.bounds.forHead, c.expected("FH"), 0.05);
      near(band.bounds.forSewing, c.expected("FS"), 0.05);
      near(band.bounds.target, c.expected("FT"), 0.05);
      near(band.bounds.flat, c.expected("FF"), 0.05);
      near(band.finishedLength, c.expected("F"), 0.05);
      near(band.ratio, c.expected("ratio"), 0.0005);
      near(band.pressure, c.expected("pressure_kPa"), 0.002);
      const least = Math.max(band.bounds.forHead, band.bounds.forSewing);
      expect(least > band.bounds.flat).toBe(c.isExpected("crossed"));
      expect(band.finishedDepth >= (band.neckGap ?? Number.NaN)).toBe(c.isExpected("stands"));
    },
  );
});

describe("the rings of a neckband", () => {
  test("W01: on a plane circle the inner edge is 2π times the depth shorter", () => {
    const c = bandCase("W01");
    const { innerRing } = ringsOf(c);
    near(innerRing, c.expected("innerRing"), 0.001);
    near(innerRing / c.given("O"), c.expected("share"), 0.0001);
  });

  test("W07: on the body the ring is 5 % longer than on the flat garment, at a depth of 19", () => {
    const c = bandCase("W07");
    const { innerRing, bodyRing } = ringsOf(c);
    near(innerRing, c.expected("innerRing"), 0.05);
    near(bodyRing, c.expected("bodyRing"), 0.05);
    near(bodyRing / innerRing, c.expected("bodyOverInner"), 0.0005);
  });
});

describe("the slack that a fold bears, against the models", () => {
  /** On the garment alone the fold meets the flat ring, on a body the ring on the body. */
  const ringUnder = (c: BandCase): number => {
    const { innerRing, bodyRing } = ringsOf(c);
    return c.isGiven("neckBase") ? bodyRing : innerRing;
  };
  /** Half a millimetre off the ring is where the models call a fold lifted. */
  const isLifted = (c: BandCase): boolean => c.expected("gapAtInnerEdge") > 0.5;

  // W10 is worn within 0.03 mm of the limit itself; that it lies flat stands below.
  test.each(withTitle(["W09", "W11", "W12", "W13", "W14"]))(
    "$id: $what lifts where it is worn longer than 1.03 of its ring",
    ({ id }) => {
      const c = bandCase(id);
      const worn = c.given("lengthAsWornOverO") * c.given("O");
      expect(worn > BAND.limit * ringUnder(c)).toBe(isLifted(c));
    },
  );

  test.each(withTitle(["W09", "W10", "W12"]))(
    "$id: $what lies flat, its inner edge on the ring",
    ({ id }) => {
      const c = bandCase(id);
      near(ringUnder(c), c.expected("innerEdge"), 2);
      near(ringUnder(c), c.expected("meshInnerEdge"), 2);
    },
  );
});

describe("the marks of a neckband", () => {
  test("W02: part back, sleeve and front by their inner lengths", () => {
    const c = bandCase("W02");
    const stations: readonly Station[] = [
      { to: "centre-back", way: 0, turning: 0 },
      { to: "raglan-back", way: 80.907, turning: 0.558026 },
      { to: "raglan-front", way: 80.907 + 66.96, turning: 0.558026 + 1.23041 },
      { to: "centre-front", way: 487.9222 / 2, turning: 5.7356 / 2 },
    ];
    const shares = (share: "ring" | "even") => {
      const { marks, finishedLength } = marksAt(c, stations, share);
      const at = marks.slice(0, stations.length).map((mark) => mark.at / (finishedLength / 2));
      return at.slice(1).map((end, i) => end - (at[i] ?? Number.NaN));
    };
    // worked-bands.json, W02: back, sleeve, front.
    [0.3625, 0.2396, 0.3978].forEach((part, i) => {
      near(shares("ring")[i] ?? NaN, part, 0.0002);
    });
    [0.3316, 0.2745, 0.3939].forEach((part, i) => {
      near(shares("even")[i] ?? NaN, part, 0.0002);
    });
    near(marksAt(c, stations, "ring").bodyRing / 2, c.expected("halfBodyRing"), 0.01);
  });

  test("W21: stand by their inner shares, on the default body", () => {
    const c = bandCase("W21");
    const names = ["raglan-back", "half-way", "raglan-front", "centre-front"] as const;
    const stations: readonly Station[] = [
      { to: "centre-back", way: 0, turning: 0 },
      ...names.map((to, i) => ({
        to,
        way: c.givenList("q")[i] ?? Number.NaN,
        turning: c.givenList("turning")[i] ?? Number.NaN,
      })),
    ];
    for (const [share, key] of [
      ["ring", "positions"],
      ["even", "even"],
    ] as const) {
      const band = marksAt(c, stations, share);
      near(band.finishedLength, c.given("F"), 0.05);
      c.expectedList(key).forEach((wanted, i) => {
        near(band.marks[i + 1]?.at ?? Number.NaN, wanted, 0.05);
      });
    }
  });
});

/** The check of a whole garment whose cuff is as long as the case has it. */
const cuffPressureOf = (c: BandCase) => {
  const measures = { ...WORKED_EXAMPLE, wrist: c.given("wrist"), hand: c.given("hand") };
  const plain = choicesWith({
    rib: { stretch: c.given("stretch"), recovery: c.given("recovery") },
  });
  const cuff = { ...plain.bands.cuff, ease: c.given("F") - c.given("wrist") };
  const choices = { ...plain, bands: { ...plain.bands, cuff } };
  const garment = makeGarment(draftRaglanBlock(measures, choices.fit), measures, choices);
  return checkGarment(garment, []).find(({ id }) => id === "cuff-pressure");
};

describe("what a band presses with", () => {
  test("W15: a cuff 5 % shorter than the wrist, by the rule and by the model", () => {
    const c = bandCase("W15");
    const rib = { stretch: c.given("stretch"), recovery: 1 };
    const pressure = pressureOn(c.given("wrist"), c.given("F"), rib);
    near(pressure, c.expected("linearRule"), 0.0001);
    near(pressure, c.expected("kPa"), 0.01);
  });

  test("W16: a cuff at half the stretch, where the straight rule says a little less than the model", () => {
    // The case allows 0.02 kPa for the model itself; the rule of method 5.3 is 0.03 below it here,
    // at the end of the range in which the rib's tension is taken as straight.
    const c = bandCase("W16");
    const rib = { stretch: c.given("stretch"), recovery: 1 };
    const pressure = pressureOn(c.given("wrist"), c.given("F"), rib);
    expect(pressure).toBeLessThan(c.expected("kPa"));
    near(pressure / c.expected("kPa"), 1, 0.02);
  });

  test("W17: a hem band 5 % shorter than the hip", () => {
    const c = bandCase("W17");
    const rib = { stretch: c.given("stretch"), recovery: 1 };
    near(pressureOn(c.given("hip"), c.given("F"), rib), c.expected("kPa"), 0.002);
    near(pressureOn(c.given("hip"), c.given("F"), rib), c.expected("linearRule"), 0.0001);
  });

  test.each(withTitle(["W24", "W25"]))("$id: $what", ({ id }) => {
    const c = bandCase(id);
    const rib = { stretch: c.given("stretch"), recovery: c.given("recovery") };
    const worn = wornLength(c.given("F"), c.given("hand"), rib);
    near(worn, c.expected("worn"), 0.001);
    near(pressureOn(c.given("wrist"), worn, rib), c.expected("kPa"), 0.001);
    const told = cuffPressureOf(c);
    near(told?.value ?? Number.NaN, c.expected("kPa"), 0.001);
    expect(told?.verdict).toBe(c.expectedText("verdict"));
  });
});

test("W26: the longest hem band that holds a blouse", () => {
  const c = bandCase("W26");
  const body = { ...WORKED_EXAMPLE, hip: c.given("hip") };
  const found = c
    .givenList("stretch")
    .map((stretch) =>
      cutHemBand({ front: 287, back: 287 }, body, choicesWith({ rib: { stretch } })),
    );
  c.expectedList("holdsBlouseFrom").forEach((wanted, i) => {
    near(found[i]?.holdsBlouseFrom ?? Number.NaN, wanted, 0.01);
  });
});

/** Nothing in the project computes these. */
const LEFT_OUT = {
  W18: "the tension of a published rib: it stands in the constant of the pressure (W15, W17)",
  W19: "growth of a published rib over five loadings: recovery is the maker's own reading",
  W20: "the table test with three readings is done by hand, from the guide",
} as const;

test("all 26 worked cases are run or say why not", () => {
  const run =
    "W01 W02 W03 W04 W05 W06 W07 W08 W09 W10 W11 W12 W13 W14 W15 W16 W17 W21 W22 W23 W24 W25 W26";
  expect([...run.split(" "), ...Object.keys(LEFT_OUT)].sort()).toEqual(allBandCases);
});

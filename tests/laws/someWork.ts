import fc from "fast-check";
import type { Choices } from "../../src/drafting/choices.ts";
import { MEASURE_NAMES } from "../../src/drafting/data/measureNames.ts";
import {
  CHOICE_RANGES,
  CUT_HEIGHT_ALLOWANCES,
  type Range,
} from "../../src/drafting/data/ranges.ts";
import { type Body, MEASURE_IDS, type Measures } from "../../src/drafting/measures.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { choicesOf } from "../support/choices.ts";

const STEPS = 1000;

/** Anywhere in a range, both ends included. */
const within = ({ least, most }: Range): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: STEPS }).map((n) => least + ((most - least) * n) / STEPS);

const R = CHOICE_RANGES;

const someAlterations: fc.Arbitrary<Choices["alterations"]> = fc.record({
  moveSideSeams: fc.record({ on: fc.boolean(), by: within(R.moveSideSeams.by) }),
  raiseHem: fc.record({ on: fc.boolean(), by: within(R.raiseHem.by) }),
  endSleeve: fc.record({ on: fc.boolean(), aboveWrist: within(R.endSleeve.aboveWrist) }),
  neckline: fc.record({
    on: fc.boolean(),
    lowerFront: within(R.neckline.lowerFront),
    lowerBack: within(R.neckline.lowerBack),
    widen: within(R.neckline.widen),
  }),
  vInsert: fc.record({
    on: fc.boolean(),
    halfWidth: within(R.vInsert.halfWidth),
    depth: within(R.vInsert.depth),
    allowance: within(R.vInsert.allowance),
    method: fc.constantFrom("true" as const, "cut-away" as const),
  }),
});

const someCloth: fc.Arbitrary<Choices["cloth"]> = fc.record({
  body: fc.record({
    stretch: within(R.stretch),
    shrinkLength: within(R.shrinkage),
    shrinkWidth: within(R.shrinkage),
    turned: fc.boolean(),
  }),
  rib: fc.record({ stretch: within(R.stretch), recovery: within(R.recovery) }),
});

const someBands: fc.Arbitrary<Choices["bands"]> = fc.record({
  neckband: fc.record({
    finishedDepth: within(R.neckband.finishedDepth),
    ratio: fc.oneof(fc.constant(null), within(R.neckband.ratio)),
    share: fc.constantFrom("ring" as const, "even" as const),
  }),
  cuff: fc.record({ cutHeight: within(R.cutHeight), ease: within(R.bandEase) }),
  hemBand: fc.record({ cutHeight: within(R.cutHeight), ease: within(R.bandEase) }),
});

/** Any choices that the ranges of the method allow, however unlikely together. */
export const anyChoices: fc.Arbitrary<Choices> = fc
  .record({
    fit: fc.record({
      chestEase: within(R.fit.chestEase),
      upperArmEase: within(R.fit.upperArmEase),
      lengthBelowHip: within(R.fit.lengthBelowHip),
    }),
    alterations: someAlterations,
    cloth: someCloth,
    bands: someBands,
    allowances: fc.record({
      raglan: within(R.allowance),
      side: within(R.allowance),
      underarm: within(R.allowance),
      bands: within(R.allowance),
    }),
  })
  .map((choices) => {
    // A cuff or hem band is at least four of its allowances high (method, section 3).
    const least = CUT_HEIGHT_ALLOWANCES * choices.allowances.bands;
    const { neckband, cuff, hemBand } = choices.bands;
    const high = (band: typeof cuff) => ({ ...band, cutHeight: Math.max(least, band.cutHeight) });
    return { ...choices, bands: { neckband, cuff: high(cuff), hemBand: high(hemBand) } };
  });

/** What a maker would choose: near the defaults, every alteration on or off. */
export const likelyChoices: fc.Arbitrary<Choices> = fc
  .record({
    sides: fc.boolean(),
    hem: fc.boolean(),
    neckline: fc.boolean(),
    v: fc.boolean(),
    method: fc.constantFrom("true" as const, "cut-away" as const),
    chestEase: fc.integer({ min: 80, max: 240 }),
    lowerFront: fc.integer({ min: 0, max: 40 }),
    widen: fc.integer({ min: 0, max: 25 }),
    shrink: fc.integer({ min: 0, max: 80 }).map((n) => n / 1000),
  })
  .map((c) =>
    choicesOf({
      fit: { chestEase: c.chestEase },
      moveSideSeams: { on: c.sides },
      raiseHem: { on: c.hem },
      neckline: { on: c.neckline, lowerFront: c.lowerFront, widen: c.widen },
      vInsert: { on: c.v, method: c.method },
      body: { shrinkLength: c.shrink },
    }),
  );

const atAnEnd = ({ least, most }: Range): fc.Arbitrary<number> => fc.constantFrom(least, most);

/** Bodies at the ends of what is taken and between, most measures left out. */
export const endBodies: fc.Arbitrary<Body> = fc
  .tuple(
    fc.record(
      Object.fromEntries(
        MEASURE_IDS.map((id) => {
          const { limits } = MEASURE_NAMES[id];
          return [id, fc.oneof(atAnEnd(limits), within(limits), fc.constant(WORKED_EXAMPLE[id]))];
        }),
      ),
    ),
    fc.subarray([...MEASURE_IDS]),
  )
  .map(([all, given]) => {
    const measures = Object.fromEntries(given.map((id) => [id, all[id]]));
    const { height = WORKED_EXAMPLE.height, chest = WORKED_EXAMPLE.chest } = all;
    return { id: "end", measures: { ...measures, height, chest } };
  });

/** Every ease of a band at its least, which leaves least of it. */
export const leastBands: fc.Arbitrary<Choices> = anyChoices.map((choices) => {
  const least = R.bandEase.least;
  const { neckband, cuff, hemBand } = choices.bands;
  const bands = { neckband, cuff: { ...cuff, ease: least }, hemBand: { ...hemBand, ease: least } };
  return { ...choices, bands };
});

/** Measures each on its own from six tenths to one and a half of the worked example's. */
export const anyMeasures: fc.Arbitrary<Measures> = fc
  .array(fc.integer({ min: 60, max: 150 }), {
    minLength: MEASURE_IDS.length,
    maxLength: MEASURE_IDS.length,
  })
  .map((shares) => ({
    ...WORKED_EXAMPLE,
    ...Object.fromEntries(
      MEASURE_IDS.map((id, i) => [id, (WORKED_EXAMPLE[id] * (shares[i] ?? 100)) / 100]),
    ),
  }));

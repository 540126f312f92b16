import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MEASURE_NAMES } from "../../src/drafting/data/measureNames.ts";
import type { Piece } from "../../src/drafting/piece.ts";
import { areaOf, crossesItself } from "../../src/geometry/outline.ts";
import { endOf, pathOf, startOf } from "../../src/geometry/path.ts";
import { apart } from "../../src/geometry/point.ts";
import { type Made, make } from "../../src/project/make.ts";
import { someMeasures, WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { choicesOf } from "../support/choices.ts";
import { expectChained } from "../support/expectations.ts";
import { expectNumbers } from "../support/independent/expectReport.ts";
import { holdsFor } from "../support/law.ts";
import { someOwnBlock } from "../support/ownBlocks.ts";
import { reportText } from "../support/reportText.ts";
import { anyChoices, anyMeasures, endBodies, leastBands, likelyChoices } from "./someWork.ts";

const NO_SHEETS = bareSheets();

const likely = fc
  .tuple(someMeasures, likelyChoices)
  .map(([measures, choices]) => make({ id: "likely", measures }, choices, null));
/** Usual bodies, and any choices that may be made. */
const oddlyChosen = fc
  .tuple(someMeasures, anyChoices)
  .map(([measures, choices]) => make({ id: "odd", measures }, choices, null));
/** Bodies such as nobody has, and any choices that may be made. */
const wild = fc
  .tuple(anyMeasures, anyChoices)
  .map(([measures, choices]) => make({ id: "wild", measures }, choices, null));
const onOwnBlock = fc
  .tuple(someMeasures, anyChoices, someOwnBlock)
  .map(([measures, choices, block]) => make({ id: "own", measures }, choices, block));

const KINDS = [
  ["likely", likely],
  ["oddly chosen", oddlyChosen],
  ["wild", wild],
  ["own-block", onOwnBlock],
] as const;

const outlineOf = ({ edges }: Piece) => pathOf(edges.flatMap(({ path }) => path));
const told = ({ checks }: Made): readonly string[] =>
  checks.filter(({ verdict }) => verdict !== "sound").map(({ id }) => id);

describe.each(KINDS)("every %s garment", (kind, some) => {
  const seed = 7000 + 10 * KINDS.findIndex(([name]) => name === kind);

  test("has outlines and cut lines that close", () => {
    holdsFor(
      seed + 1,
      some,
      ({ garment }) => {
        for (const { edges, cutLine } of [...garment.pieces, ...Object.values(garment.block)]) {
          expectChained(
            edges.map(({ path }) => path),
            1e-6,
          );
          expect(apart(startOf(cutLine), endOf(cutLine))).toBeLessThan(1e-9);
        }
      },
      40,
    );
  });

  test("has a report without a number that is none", () => {
    holdsFor(seed + 2, some, (made) => expectNumbers(reportText(made, NO_SHEETS)), 40);
  });

  test("tells whatever was held, and what to change wherever something is not sound", () => {
    holdsFor(
      seed + 3,
      some,
      (made) => {
        const ids = told(made);
        for (const { id } of made.garment.rails) expect(ids).toContain(id);
        for (const { verdict, message } of made.checks) {
          expect(message).toMatch(/\.$/);
          // What was measured, and what to change.
          if (verdict !== "sound") expect(message.split(/[.;] /).length).toBeGreaterThan(1);
        }
      },
      40,
    );
  });
});

describe.each(KINDS.slice(0, 3))("every drafted garment, %s", (kind, some) => {
  const seed = 7100 + 10 * KINDS.findIndex(([name]) => name === kind);

  test("has seams that meet, but for a V that was cut away", () => {
    holdsFor(seed + 1, some, ({ garment }) => {
      const { method } = garment.choices.alterations.vInsert;
      for (const { id, difference } of garment.seams) {
        if (id === "v-left" && method === "cut-away") continue;
        expect(Math.abs(difference), id).toBeLessThan(1e-6);
      }
    });
  });

  test("runs clockwise on every piece", () => {
    holdsFor(seed + 2, some, ({ garment }) => {
      for (const piece of garment.pieces) expect(areaOf(outlineOf(piece))).toBeGreaterThan(0);
    });
  });
});

describe("a body at the ends of what is taken", () => {
  test("has pieces and bands that have a length, and says what was held", () => {
    const atTheEnds = fc.tuple(endBodies, fc.oneof(leastBands, fc.constant(choicesOf())));
    holdsFor(
      7301,
      atTheEnds,
      ([body, choices]) => {
        const made = make(body, choices, null);
        expectNumbers(reportText(made, NO_SHEETS));
        for (const { name, edges } of made.garment.pieces)
          for (const edge of edges) expect(edge.length, `${name}.${edge.name}`).toBeGreaterThan(0);
        const ids = told(made);
        for (const { id, value } of made.body.estimated) {
          const { least, most } = MEASURE_NAMES[id].limits;
          expect(value >= least && value <= most, id).toBe(true);
          if (value === least || value === most) expect(ids).toContain(`measure-${id}`);
        }
      },
      150,
    );
  });

  // A short body with a huge chest, arm and wrist foretells a hip of less than nothing.
  test("does not have a measure estimated below nought, and is told of it", () => {
    const measures = { height: 800, chest: 2000, upperArm: 2000, wrist: 2000 };
    const made = make({ id: "a", measures }, choicesOf(), null);
    expect(made.body.measures.hip).toBe(MEASURE_NAMES.hip.limits.least);
    const told = made.checks.find(({ id }) => id === "measure-hip");
    expect(told?.message).toMatch(
      /^Hip girth was not given and is taken as 60.mm; the other measures foretell -\d+.mm\. Measure it, and look for a slip in the others\.$/,
    );
  });

  test("has a cuff and a hem band even where their ease would take all of them", () => {
    const choices = choicesOf({ cuff: { ease: -60 }, hemBand: { ease: -60 } });
    const measures = { ...WORKED_EXAMPLE, wrist: 60, hip: 62 };
    const { garment, checks } = make({ id: "a", measures }, choices, null);
    expect(garment.bands.cuff.finishedLength).toBeCloseTo(12, 9);
    expect(garment.bands.hemBand.finishedLength).toBeCloseTo(12.4, 9);
    const held = checks.filter(({ id }) => id === "rail-cuff" || id === "rail-hem-band");
    expect(held.map(({ message }) => message.replaceAll("\u00a0", " "))).toEqual([
      "The cuff would be 0 mm round; on this body it is drawn 12 mm round. Give it more ease.",
      "The hem band would be 2 mm round; on this body it is drawn 12.4 mm round. Give it more ease.",
    ]);
  });
});

describe("lines that cross themselves", () => {
  test("are on no garment that a maker would choose, sewn or cut", () => {
    holdsFor(
      7201,
      likely,
      ({ garment }) => {
        for (const piece of garment.pieces) {
          expect(crossesItself(outlineOf(piece)), piece.name).toBeNull();
          expect(crossesItself(piece.cutLine), piece.name).toBeNull();
        }
      },
      40,
    );
  });

  test("are told of on any other: the allowance folds, or the V cannot be sewn", () => {
    holdsFor(
      7202,
      oddlyChosen,
      (made) => {
        const crosses = made.garment.pieces.some(
          (piece) => crossesItself(outlineOf(piece)) || crossesItself(piece.cutLine),
        );
        const ids = told(made);
        const isTold = ids.includes("allowance-folds") || ids.includes("rail-v-cut");
        expect(!crosses || isTold).toBe(true);
      },
      40,
    );
  });
});

describe("the same input", () => {
  test("gives the same bytes, whatever was made between", () => {
    const two = fc.tuple(someMeasures, likelyChoices, someMeasures);
    holdsFor(
      7301,
      two,
      ([measures, choices, other]) => {
        const text = () => reportText(make({ id: "a", measures }, choices, null), NO_SHEETS);
        const before = text();
        make({ id: "b", measures: other }, choices, null);
        expect(text()).toBe(before);
      },
      20,
    );
  });

  test("is left as it was", () => {
    const drawn = fc.tuple(someMeasures, anyChoices, someOwnBlock);
    holdsFor(
      7302,
      drawn,
      (given) => {
        const before = structuredClone(given);
        const [measures, choices, block] = given;
        make({ id: "a", measures }, choices, block);
        expect(given).toEqual(before);
      },
      20,
    );
  });
});

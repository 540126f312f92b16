import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Piece } from "../../src/drafting/piece.ts";
import { areaOf, crossesItself } from "../../src/geometry/outline.ts";
import { endOf, pathOf, startOf } from "../../src/geometry/path.ts";
import { apart } from "../../src/geometry/point.ts";
import { type Made, make } from "../../src/project/make.ts";
import { someMeasures } from "../drafting/bodies.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { expectChained } from "../support/expectations.ts";
import { expectNumbers } from "../support/independent/expectReport.ts";
import { holdsFor } from "../support/law.ts";
import { someOwnBlock } from "../support/ownBlocks.ts";
import { reportText } from "../support/reportText.ts";
import { anyChoices, anyMeasures, likelyChoices } from "./someWork.ts";

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

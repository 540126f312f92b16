import { describe, expect, test } from "vitest";
import { PIECE_NAMES } from "../../src/drafting/piece.ts";
import { areaOf, boundsOf } from "../../src/geometry/outline.ts";
import { endOf, joined, startOf } from "../../src/geometry/path.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { expectChained, near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import { someOwnBlock } from "../support/ownBlocks.ts";
import { DRAFTED, edgeIn, garmentOf, pieceIn } from "../support/workedGarment.ts";

const outline = ([first, ...rest]: readonly Path[]): Path => {
  if (!first) throw new Error("A piece has edges.");
  return joined(first, ...rest);
};

describe("the pieces of a garment", () => {
  const garment = garmentOf();

  test("are seven, in the order in which they are cut; without a V six", () => {
    expect(garment.pieces.map(({ name }) => name)).toEqual([...PIECE_NAMES]);
    expect(garmentOf({ vInsert: { on: false } }).pieces.map(({ name }) => name)).toEqual(
      PIECE_NAMES.filter((name) => name !== "vInsert"),
    );
  });

  test("have their edges in the order of the contract", () => {
    const names = (name: (typeof PIECE_NAMES)[number]) =>
      pieceIn(garment, name)
        .edges.map((edge) => edge.name)
        .join(" ");
    expect(names("front")).toBe("v neckline raglan side hem centre");
    expect(names("back")).toBe("neckline raglan side hem centre");
    expect(names("sleeve")).toBe(
      "neckline raglanFront underarmFront wrist underarmBack raglanBack",
    );
    expect(names("vInsert")).toBe("top right left");
    expect(names("cuff")).toBe("top endB bottom endA");
  });

  test("are cut once on the fold, sleeve and cuff twice, the rest once", () => {
    expect(garment.pieces.map(({ name, cut, onFold }) => [name, cut, onFold])).toEqual([
      ["front", 1, "centre"],
      ["back", 1, "centre"],
      ["sleeve", 2, null],
      ["vInsert", 1, null],
      ["neckband", 1, null],
      ["cuff", 2, null],
      ["hemBand", 1, null],
    ]);
  });

  test("have outlines that close, and cut lines that hold more than they do", () => {
    for (const { edges, cutLine } of garment.pieces) {
      const paths = edges.map(({ path }) => path);
      expectChained(paths, 1e-9);
      expect(areaOf(cutLine)).toBeGreaterThan(areaOf(outline(paths)));
      expect(endOf(cutLine)).toEqual(startOf(cutLine));
    }
  });

  test("have a grain that lies inside them", () => {
    for (const turned of [false, true]) {
      for (const { name, edges, grain } of garmentOf({ body: { turned } }).pieces) {
        const box = boundsOf(outline(edges.map(({ path }) => path)));
        for (const { x, y } of [grain.from, grain.to]) {
          expect(x, name).toBeGreaterThan(box.left - 1e-9);
          expect(x, name).toBeLessThan(box.right);
          expect(y, name).toBeGreaterThan(box.top);
          expect(y, name).toBeLessThan(box.bottom);
        }
      }
    }
  });

  test("have lengths as drawn, enlarged where the cloth shrinks", () => {
    const shrinking = garmentOf({ body: { shrinkWidth: 0.1 } });
    near(edgeIn(pieceIn(shrinking, "front"), "hem").length, 287.7 / 0.9, 1e-4);
    near(edgeIn(pieceIn(shrinking, "front"), "side").length, 274.1414, 1e-4);
  });
});

describe("the block beside the garment", () => {
  test("is the block as it was given: net, not enlarged, without notches", () => {
    const { block } = garmentOf({ body: { shrinkLength: 0.1 } }, { block: DRAFTED });
    for (const piece of Object.values(block)) expect(piece.notches).toEqual([]);
    expect(edgeIn(block.front, "side").path).toEqual(DRAFTED.front.side);
    expect(edgeIn(block.sleeve, "wrist").path).toEqual(DRAFTED.sleeve.wrist);
    near(edgeIn(block.front, "raglan").length, 302.3914, 1e-4);
  });

  test("has cut lines by the same allowances", () => {
    const { block } = garmentOf({}, { block: DRAFTED });
    near(boundsOf(block.front.cutLine).right, 275 + 9.525, 0.1);
  });
});

describe("where an allowance folds on itself", () => {
  test("is told for the tightest of all pieces", () => {
    expect(garmentOf().fold).toBeNull();
    const wide = garmentOf({
      allowances: { bands: 30 },
      neckline: { on: true, lowerFront: -20, lowerBack: -20 },
    });
    expect(wide.fold?.allowance).toBe(30);
    expect(wide.fold?.radius).toBeLessThan(30);
  });

  test("is never told of an allowance that is nothing", () => {
    holdsFor(
      5301,
      someOwnBlock,
      (block) => {
        const none = { raglan: 0, side: 0, underarm: 0, bands: 0 };
        const garment = garmentOf({ allowances: none, vInsert: { allowance: 0 } }, { block });
        expect(garment.fold).toBeNull();
      },
      30,
    );
  });
});

import { describe, expect, test } from "vitest";
import { lengthOf } from "../../../src/geometry/length.ts";
import { mirroredPath, reversed } from "../../../src/geometry/path.ts";
import { toPathData } from "../../../src/geometry/pathData.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { assignByName, pieceByEdges } from "../../../src/trace/edges/assignEdges.ts";
import { toBlock } from "../../../src/trace/edges/toBlock.ts";
import { readSvg } from "../../../src/trace/files/svgIn.ts";
import { drafted } from "./shapes.ts";

const BLOCK = drafted();

/** A block as drawing programs save it: groups named for the pieces, paths for the edges. */
const fileOf = (draw: (path: Path) => Path = (path) => path): string => {
  const groups = Object.entries(BLOCK).map(([piece, edges]) => {
    const paths = Object.entries(edges).map(
      ([edge, path]) => `<path id="${piece}_${edge}" d="${toPathData(draw(path))}"/>`,
    );
    return `<g id="${piece}">${paths.join("")}</g>`;
  });
  return `<svg width="900mm" height="900mm" viewBox="0 0 900 900">${groups.join("")}<path id="note" d="M0 0h9"/></svg>`;
};

const assigned = (text: string) => {
  const told = readSvg(text);
  if ("fault" in told) throw new Error(told.fault.reason);
  return assignByName(told.found.lines);
};

const named = (piece: "front" | "back" | "sleeve", text: string) => {
  const told = pieceByEdges(piece, assigned(text).assigned);
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

const blockOf = (text: string) => {
  const told = toBlock({
    front: named("front", text),
    back: named("back", text),
    sleeve: named("sleeve", text),
    allowances: null,
  });
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found.block;
};

describe("edges assigned by their names in a file", () => {
  test("are all sixteen of a block; what has another name is left", () => {
    const { assigned: edges, left } = assigned(fileOf());
    expect(edges.size).toBe(16);
    expect(left.map(({ names }) => names[0])).toEqual(["note"]);
  });

  test.each([
    ["as drafted", (path: Path) => path],
    ["each drawn from its other end", reversed],
    ["all drawn from the other side", mirroredPath],
  ])("give the block again, %s, with lengths within 0.01 mm", (_, draw) => {
    const block = blockOf(fileOf(draw));
    for (const piece of ["front", "back"] as const) {
      for (const edge of ["neckline", "raglan", "side", "hem", "centre"] as const) {
        const off = lengthOf(block[piece][edge]) - lengthOf(BLOCK[piece][edge]);
        expect(Math.abs(off)).toBeLessThan(0.01);
      }
    }
    expect(
      Math.abs(lengthOf(block.sleeve.raglanBack) - lengthOf(BLOCK.sleeve.raglanBack)),
    ).toBeLessThan(0.01);
  });

  test("with one missing are told", () => {
    const told = pieceByEdges(
      "front",
      assigned(fileOf().replace("front_side", "x").replace(`id="front"`, "")).assigned,
    );
    expect("fault" in told && told.fault.reason).toBe("The front lacks side.");
  });
});

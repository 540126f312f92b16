import { describe, expect, test } from "vitest";
import { boundsOf } from "../../src/geometry/outline.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { near } from "../support/expectations.ts";
import { edgeIn, garmentOf, pieceIn } from "../support/workedGarment.ts";

const garment = garmentOf();

describe.each(["neckband", "cuff", "hemBand"] as const)("the %s as a piece", (name) => {
  const piece = pieceIn(garment, name);
  const band = garment.bands[name];

  test("is its sewn rectangle from the origin: finished length by twice the depth", () => {
    expect(startOf(edgeIn(piece, "top").path)).toEqual({ x: 0, y: 0 });
    near(edgeIn(piece, "top").length, band.finishedLength, 1e-9);
    near(edgeIn(piece, "endB").length, 2 * band.finishedDepth, 1e-9);
    near(endOf(edgeIn(piece, "endB").path).x, band.finishedLength, 1e-9);
    expect(endOf(edgeIn(piece, "endA").path)).toEqual({ x: 0, y: 0 });
  });

  test("is cut as long and as high as its band says, one allowance all round", () => {
    const { left, right, top, bottom } = boundsOf(piece.cutLine);
    near(right - left, band.cutLength, 1e-9);
    near(bottom - top, band.cutHeight, 1e-9);
    near(left, -6.35, 1e-9);
    near(top, -6.35, 1e-9);
  });

  test("carries its marks as notches on its top", () => {
    const wanted =
      name === "neckband" ? garment.bands.neckband.marks.map(({ at }) => at) : band.quarterMarks;
    expect(piece.notches.map(({ at }) => at)).toEqual([...wanted]);
    const seam = name === "hemBand" ? "hem-band" : name;
    expect(new Set(piece.notches.map((notch) => `${notch.edge} ${notch.seam}`))).toEqual(
      new Set([`top ${seam}`]),
    );
  });
});

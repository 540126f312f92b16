import { describe, expect, test } from "vitest";
import { withOpeningMarks } from "../../src/bands/openingMarks.ts";
import type { Notches } from "../../src/drafting/notches.ts";
import { near } from "../support/expectations.ts";
import { edgeIn, garmentOf, pieceIn } from "../support/workedGarment.ts";
import { flatRing } from "./flatRing.ts";

const NONE: Notches = {
  front: [],
  back: [],
  sleeve: [],
  vInsert: [],
  neckband: [],
  cuff: [],
  hemBand: [],
};

/** Where the half-way mark stands on a flat ring of radius 100 cut like this. */
const halfWayOn = (parts: { back: number; front: number }) => {
  const marks = withOpeningMarks(NONE, flatRing(100, parts).finished, 200 * Math.PI);
  const found = (["back", "sleeve", "front"] as const).flatMap((piece) =>
    marks[piece]
      .filter(({ seam, at }) => seam === "neckband" && at > 0)
      .map(({ edge, at }) => ({ piece, edge, at })),
  );
  return found;
};

describe("the marks of the neck opening", () => {
  test("half way stand a quarter of the way round, wherever that falls", () => {
    const onSleeve = halfWayOn({ back: 0.9, front: 1.1 });
    expect(onSleeve.map(({ piece }) => piece)).toEqual(["sleeve"]);
    near(onSleeve[0]?.at ?? NaN, 100 * (Math.PI / 2 - 0.9), 1e-4);
    const onBack = halfWayOn({ back: 2, front: 0.6 });
    expect(onBack.map(({ piece }) => piece)).toEqual(["back"]);
    near(onBack[0]?.at ?? NaN, 50 * Math.PI, 1e-4);
    const onFront = halfWayOn({ back: 0.5, front: 1.9 });
    expect(onFront.map(({ piece }) => piece)).toEqual(["front"]);
    near(onFront[0]?.at ?? NaN, 50 * Math.PI, 1e-4);
  });

  test("of the worked example stand on the sleeve, 41.0736 from its back corner (method 8)", () => {
    const notches = pieceIn(garmentOf(), "sleeve").notches;
    const mark = notches.find(({ seam }) => seam === "neckband");
    expect(mark?.edge).toBe("neckline");
    near(mark?.at ?? NaN, 41.0736, 1e-4);
  });

  test("at centre front stand in the middle of the insert, or on the front without one", () => {
    const withV = pieceIn(garmentOf(), "vInsert").notches;
    expect(withV.map(({ edge, seam }) => [edge, seam])).toEqual([["top", "neckband"]]);
    near(withV[0]?.at ?? NaN, 25.4, 1e-8);
    const plain = pieceIn(garmentOf({ vInsert: { on: false } }), "front").notches;
    expect(plain.filter(({ seam }) => seam === "neckband")).toEqual([
      { edge: "neckline", at: 0, seam: "neckband" },
    ]);
  });
});

describe("the marks of wrist and hem", () => {
  const garment = garmentOf();

  test("part the wrist in four from the front underarm, as the cuff is parted", () => {
    const { length } = edgeIn(pieceIn(garment, "sleeve"), "wrist");
    const marks = pieceIn(garment, "sleeve").notches.filter(({ seam }) => seam === "cuff");
    expect(marks.map(({ edge }) => edge)).toEqual(["wrist", "wrist", "wrist", "wrist"]);
    const cuff = pieceIn(garment, "cuff").notches;
    marks.forEach(({ at }, i) => {
      near(at / length, i / 4, 1e-9);
      near((cuff[i]?.at ?? NaN) / garment.bands.cuff.finishedLength, i / 4, 1e-9);
    });
  });

  test("stand at both ends of both hems", () => {
    for (const name of ["front", "back"] as const) {
      const piece = pieceIn(garment, name);
      const marks = piece.notches.filter(({ seam }) => seam === "hem-band");
      expect(marks.map(({ at }) => at)).toEqual([0, edgeIn(piece, "hem").length]);
    }
  });
});

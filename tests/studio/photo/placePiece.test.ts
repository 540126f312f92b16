import { describe, expect, test } from "vitest";
import { apart, type Point } from "../../../src/geometry/point.ts";
import { lackOf, nextName, pairKey, pairsAsked } from "../../../src/studio/photo/marks.ts";
import { NO_PHOTO, type Photo, type PhotoPiece } from "../../../src/studio/photo/photoWork.ts";
import { placePiece } from "../../../src/studio/photo/placePiece.ts";
import { clicked } from "../../../src/trace/photo/mark.ts";
import { inPicture, onTable } from "../../../src/trace/photo/plane.ts";
import { found } from "../../../src/trace/told.ts";
import { planeOfShot, type Shot } from "../../support/photo/camera.ts";

const SHOT: Shot = {
  width: 3000,
  height: 4000,
  at: { x: 300, y: 400 },
  distance: 1700,
  tilt: 12,
  way: 30,
  roll: 5,
  focal: 0.75,
  k1: 0,
  k2: 0,
  noise: 0,
  shade: 0,
  seed: 1,
};

/** Named clockwise as they lie; E and F lie below, for a second picture. */
const PLACES: Readonly<Record<string, Point>> = {
  A: { x: 0, y: 0 },
  B: { x: 600, y: 10 },
  C: { x: 610, y: 800 },
  D: { x: -10, y: 790 },
  E: { x: 620, y: 1500 },
  F: { x: 0, y: 1510 },
};

const photoOf = (id: string, names: string, shot: Partial<Shot> = {}): Photo => {
  const plane = planeOfShot({ ...SHOT, ...shot });
  const marks = [...names].map((name) =>
    clicked(name, inPicture(plane, PLACES[name] ?? { x: 0, y: 0 })),
  );
  return { id, name: id, width: 3000, height: 4000, marks, edges: [], lengths: [] };
};

/** Every distance between marks that one picture shows, exact. */
const measured = (photos: readonly Photo[]): PhotoPiece => {
  const piece = { ...NO_PHOTO, photos };
  const distances = Object.fromEntries(
    pairsAsked(piece).map(({ key, from, to }) => {
      const [a, b] = [PLACES[from], PLACES[to]];
      return [key, a && b ? apart(a, b) : 0];
    }),
  );
  return { ...piece, distances };
};

const noEdges = async () => found([]);
const place = (piece: PhotoPiece, line: readonly Point[] = []) => placePiece(piece, noEdges, line);

const unwrapped = async (piece: PhotoPiece) => {
  const told = await place(piece);
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

const reasonOf = async (piece: PhotoPiece, line: readonly Point[] = []): Promise<string> => {
  const told = await place(piece, line);
  return "fault" in told ? told.fault.reason : "found";
};

describe("what a piece still lacks", () => {
  test("is told one by one: picture, marks, distances", () => {
    const all = measured([photoOf("one", "ABCD")]);
    expect(lackOf(NO_PHOTO)).toBe("photo");
    expect(lackOf(measured([photoOf("one", "ABC")]))).toBe("marks");
    expect(lackOf({ ...all, distances: {} })).toBe("distances");
    const { "A-B": _, ...five } = all.distances;
    expect(lackOf({ ...all, distances: five })).toBe("distances");
    expect(lackOf(all)).toBeNull();
  });

  test("six distances for four marks, and the next mark's name", () => {
    const photo = photoOf("one", "ABDC");
    expect(pairsAsked({ ...NO_PHOTO, photos: [photo] }).map(({ key }) => key)).toEqual([
      "A-B",
      "A-C",
      "A-D",
      "B-C",
      "B-D",
      "C-D",
    ]);
    expect(nextName(photo)).toBe("E");
    expect(pairKey("D", "B")).toBe("B-D");
  });
});

describe("pictures of a piece on one table", () => {
  test("one picture shows every length true, and foretells its error", async () => {
    const { parts, foretold } = await unwrapped(measured([photoOf("one", "ABCD")]));
    const [part] = parts;
    if (!part) throw new Error("no part");
    const truth = planeOfShot(SHOT);
    const seen = (p: Point): Point => onTable(part.plane, inPicture(truth, p));
    const [a, b] = [
      { x: 50, y: 60 },
      { x: 550, y: 700 },
    ];
    expect(apart(seen(a), seen(b))).toBeCloseTo(apart(a, b), 3);
    expect(foretold?.worst).toBeGreaterThan(foretold?.usual ?? Infinity);
    expect(foretold?.worst).toBeLessThan(2);
  });

  test("paper in waves is out by more, and paper that lies flat by no more", async () => {
    const piece = measured([photoOf("one", "ABCD")]);
    const [flat, wavy] = [await unwrapped(piece), await unwrapped({ ...piece, waves: 3 })];
    expect(wavy.foretold?.worst).toBeCloseTo(Math.hypot(flat.foretold?.worst ?? 0, 3));
    expect(wavy.foretold?.usual).toBeCloseTo(Math.hypot(flat.foretold?.usual ?? 0, 1.5));
  });

  test("a second picture is joined by the marks that both show", async () => {
    const lower = { at: { x: 300, y: 1150 }, tilt: 18, way: 200, roll: -8 };
    const { parts } = await unwrapped(
      measured([photoOf("one", "ABCD"), photoOf("two", "CDEF", lower)]),
    );
    const [first, second] = parts;
    if (!first || !second) throw new Error("no parts");
    const upper = { x: 100, y: 100 };
    const low = { x: 500, y: 1400 };
    const p = onTable(first.plane, inPicture(planeOfShot(SHOT), upper));
    const q = onTable(second.plane, inPicture(planeOfShot({ ...SHOT, ...lower }), low));
    expect(apart(p, q)).toBeCloseTo(apart(upper, low), 2);
  });

  test("pictures that share one mark are refused", async () => {
    const lower = { at: { x: 300, y: 1150 } };
    const [one, two] = [photoOf("one", "ABCD"), photoOf("two", "CDEF", lower)];
    // Another mark lies where C lay: only D is shared.
    const other = two.marks.map((mark) => (mark.name === "C" ? { ...mark, name: "G" } : mark));
    const piece = measured([one, { ...two, marks: other }]);
    const withG = Object.fromEntries(
      pairsAsked(piece).map(({ key, from, to }) => {
        const at = (name: string) => PLACES[name === "G" ? "C" : name] ?? { x: 0, y: 0 };
        return [key, apart(at(from), at(to))];
      }),
    );
    expect(await reasonOf({ ...piece, distances: withG })).toMatch(/share 1 mark; two or more/u);
  });

  test("marks set by hand that run the other way round are told as a mirrored picture", async () => {
    const piece = measured([photoOf("one", "ABCD")]);
    const [photo] = piece.photos;
    if (!photo) throw new Error("no photo");
    const marks = photo.marks.map((mark) => ({
      ...mark,
      at: { x: 3000 - mark.at.x, y: mark.at.y },
    }));
    expect(await reasonOf({ ...piece, photos: [{ ...photo, marks }] })).toMatch(
      /A, B, C, D run anticlockwise in the picture/u,
    );
  });

  test("a distance read wrong is named", async () => {
    const piece = measured([photoOf("one", "ABCD")]);
    const wrong = { ...piece.distances, "A-C": (piece.distances["A-C"] ?? 0) + 14 };
    expect(await reasonOf({ ...piece, distances: wrong })).toMatch(/A–C most likely/u);
  });

  test("a line that runs far out of the marks is refused when it is handed on", async () => {
    const piece = measured([photoOf("one", "ABCD")]);
    const far = [
      { x: -400, y: -300 },
      { x: 1100, y: -300 },
      { x: 1100, y: 1200 },
      { x: -400, y: 1200 },
    ];
    expect(await reasonOf(piece, far)).toMatch(/The marks stand too close together/u);
  });
});

describe("without marks", () => {
  const corners = photoOf("sheet", "ABCD");

  test("the corners of a sheet of known size do as well", async () => {
    const sheet = { width: 600, height: 800 };
    const plane = planeOfShot(SHOT);
    const at = [
      { x: 0, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 800 },
      { x: 0, y: 800 },
    ];
    const marks = at.map((p, i) => clicked("ABCD"[i] ?? "A", inPicture(plane, p)));
    const piece = { ...NO_PHOTO, by: "sheet" as const, sheet, photos: [{ ...corners, marks }] };
    expect(lackOf(piece)).toBeNull();
    const { parts } = await unwrapped(piece);
    const [part] = parts;
    if (!part) throw new Error("no part");
    const seen = (p: Point): Point => onTable(part.plane, inPicture(plane, p));
    expect(apart(seen({ x: 100, y: 100 }), seen({ x: 400, y: 500 }))).toBeCloseTo(500, 3);
  });

  test("a known length gives a scan its scale, and no error is foretold", async () => {
    const lengths = [{ from: { x: 0, y: 0 }, to: { x: 1200, y: 0 }, length: 300 }];
    const piece = {
      ...NO_PHOTO,
      by: "scale" as const,
      photos: [{ ...corners, marks: [], lengths }],
    };
    const { parts, foretold } = await unwrapped(piece);
    expect(foretold).toBeNull();
    const [part] = parts;
    if (!part) throw new Error("no part");
    const [a, b] = [
      onTable(part.plane, { x: 100, y: 100 }),
      onTable(part.plane, { x: 100, y: 500 }),
    ];
    expect(apart(a, b)).toBeCloseTo(100);
  });

  test("known lengths that show a slant are refused", async () => {
    const lengths = [
      { from: { x: 0, y: 0 }, to: { x: 1200, y: 0 }, length: 300 },
      { from: { x: 0, y: 3000 }, to: { x: 1180, y: 3000 }, length: 300 },
    ];
    const piece = {
      ...NO_PHOTO,
      by: "scale" as const,
      photos: [{ ...corners, marks: [], lengths }],
    };
    expect(await reasonOf(piece)).toMatch(/the picture is slanted/u);
  });
});

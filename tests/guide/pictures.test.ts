import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Piece } from "../../src/drafting/piece.ts";
import { pointAt } from "../../src/geometry/curve.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { nearestOnPath } from "../../src/geometry/nearest.ts";
import { mapPath } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { apart, mirrored, type Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { makingUp } from "../../src/guide/makingUp.ts";
import type { Picture, PictureStroke } from "../../src/guide/picture.ts";
import { underarmOf } from "../../src/guide/pictures/assembled.ts";
import { liftPoint, placePoint } from "../../src/guide/place.ts";
import { pieceOf } from "../../src/guide/shapes.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { CUT_AWAY, garmentOf, SHRINKING, WITHOUT_V } from "../support/garments.ts";

/** Far below a pencil line: placing turns and moves, and never stretches. */
const ON_LINE = 1e-6;

const pointsOn = (path: Path): readonly Point[] =>
  path.flatMap((segment) => [0, 0.5, 1].map((t) => pointAt(segment, t)));

/** How far a point of a piece is from the line that it is said to lie on. */
const away = (piece: Piece, line: string, p: Point): number => {
  const paths =
    line === "cutLine"
      ? [piece.cutLine]
      : line === "any"
        ? [piece.cutLine, ...piece.edges.map(({ path }) => path)]
        : piece.edges.filter(({ name }) => name === line).map(({ path }) => path);
  const places = piece.onFold !== null && line === "any" ? [p, mirrored(p)] : [p];
  return Math.min(
    ...places.flatMap((at) => paths.map((path) => nearestOnPath(path, at).away)),
    // The centre of a folded sleeve, and of a band the crease and the fold of its ring.
    line === "any" && piece.name === "sleeve" ? Math.abs(p.x) : Infinity,
    line === "any" ? bandFold(piece, p) : Infinity,
  );
};

const bandFold = (piece: Piece, p: Point): number => {
  const top = piece.edges.find(({ name }) => name === "top");
  const end = piece.edges.find(({ name }) => name === "endB");
  if (!top || !end || piece.name === "vInsert") return Infinity;
  return Math.min(Math.abs(p.y - end.length / 2), Math.abs(p.x - top.length / 2));
};

const linesOf = (garment: Garment, { kind, path, origin }: PictureStroke): number => {
  if (!origin) return 0;
  const piece = pieceOf(garment, origin.piece);
  // A notch stands on its line with its foot and reaches outward.
  const points = kind === "notch" ? pointsOn(path).slice(0, 1) : pointsOn(path);
  return Math.max(...points.map((p) => away(piece, origin.line, liftPoint(origin.place, p))));
};

/** A stroke by its piece and its line there, wherever it lies in a picture. */
const liftedKey = ({ kind, path, origin }: PictureStroke): string => {
  if (!origin) return "";
  const lifted = mapPath(path, (p) => liftPoint(origin.place, p));
  return `${origin.piece}.${origin.line} ${kind === "notch"} ${toPathData(lifted)}`;
};

const picturesOf = (garment: Garment): readonly Picture[] =>
  makingUp(garment).flatMap(({ pictures }) => pictures);

const GARMENTS: readonly (readonly [string, Garment])[] = [
  ["of the worked example", garmentOf()],
  ["without a V", garmentOf(WITHOUT_V)],
  ["with a V cut away", garmentOf(CUT_AWAY)],
  ["of cloth that shrinks", garmentOf(SHRINKING)],
  ["of turned cloth", garmentOf({ body: { turned: true } })],
  [
    "with its sides kept and its hem low",
    garmentOf({
      alterations: {
        moveSideSeams: { on: false, by: 0 },
        raiseHem: { on: false, by: 0 },
        neckline: { on: true, lowerFront: 20, lowerBack: 5, widen: 15 },
      },
    }),
  ],
  ["of a large body", garmentOf({}, { ...WORKED_EXAMPLE, chest: 1400, hip: 1480, upperArm: 470 })],
];

describe("every stroke of every picture", () => {
  test.each(GARMENTS)("%s lies on the piece's own line", { timeout: 20_000 }, (_, garment) => {
    // Most lines stand in several pictures: each is held against its piece once.
    const seen = new Set<string>();
    for (const { title, strokes } of picturesOf(garment)) {
      for (const stroke of strokes) {
        const onPiece = liftedKey(stroke);
        if (seen.has(onPiece)) continue;
        seen.add(onPiece);
        const what = `${title.key}: ${stroke.kind} ${stroke.origin?.piece}.${stroke.origin?.line}`;
        expect(linesOf(garment, stroke), what).toBeLessThan(ON_LINE);
      }
    }
  });

  test.each(GARMENTS)("%s is as long as on the piece: no place stretches", (_, garment) => {
    for (const { strokes } of picturesOf(garment)) {
      for (const { origin } of strokes) {
        if (!origin) continue;
        const at = (x: number, y: number): Point => placePoint(origin.place, { x, y });
        expect(apart(at(0, 0), at(100, 0))).toBeCloseTo(100, 9);
        expect(apart(at(100, 0), at(0, 100))).toBeCloseTo(100 * Math.SQRT2, 9);
      }
    }
  });

  test.each(GARMENTS)("%s is in view, or some of it is", (_, garment) => {
    for (const { view, strokes } of picturesOf(garment)) {
      expect(view.right - view.left).toBeGreaterThan(10);
      expect(view.bottom - view.top).toBeGreaterThan(10);
      const seen = strokes
        .flatMap(({ path }) => pointsOn(path))
        .filter(
          ({ x, y }) => x >= view.left && x <= view.right && y >= view.top && y <= view.bottom,
        );
      expect(seen.length).toBeGreaterThan(10);
    }
  });
});

describe("the seam of a step", () => {
  const stitched = (id: string) =>
    makingUp(garmentOf())
      .filter((step) => step.id === id)
      .flatMap(({ pictures }) => pictures.slice(0, 1))
      .flatMap(({ strokes }) => strokes.filter(({ kind }) => kind === "stitching"));

  test("is drawn with stitches: raglans of front and sleeve, on both sides", () => {
    const edges = stitched("raglan-front").map(({ origin }) => origin?.line);
    expect(edges.sort()).toEqual(["raglan", "raglan", "raglanFront", "raglanFront"]);
  });

  test("of underarm and side runs from the sleeve end to the hem", () => {
    const edges = new Set(stitched("underarm-and-side").map(({ origin }) => origin?.line));
    expect(edges).toEqual(new Set(["side", "underarmFront"]));
    const [front, sleeve] = underarmOf(garmentOf());
    // Two curves of one length have chords that differ a little; laid flat they meet to the hair.
    expect(apart(front, sleeve)).toBeLessThan(3);
  });

  test("of the V stops exactly at its sewn point", () => {
    const garment = garmentOf();
    const picture = makingUp(garment).find(({ id }) => id === "v-insert")?.pictures[0];
    const stop = picture?.strokes.find(({ kind }) => kind === "stop")?.path[0].start;
    // Method, section 8: P = (0, 135.55).
    expect(stop?.x).toBeCloseTo(0, 9);
    expect(stop?.y).toBeCloseTo(135.55, 2);
    const seam = picture?.strokes.find(({ kind }) => kind === "stitching")?.path;
    const end = seam?.[seam.length - 1]?.end;
    expect(end && stop ? apart(end, stop) : Number.NaN).toBeLessThan(1e-6);
  });

  test("of the insert lies cut edge on cut edge: turned over it covers the front's", () => {
    const garment = garmentOf();
    const picture = makingUp(garment).find(({ id }) => id === "v-insert")?.pictures[0];
    const insert = picture?.strokes.find(({ kind }) => kind === "wrong");
    const front = pieceOf(garment, "front");
    // The middle of the insert's left cut edge, as it lies, is on the front's cut line.
    const left = pieceOf(garment, "vInsert").edges.find(({ name }) => name === "left");
    if (!insert?.origin || !left) throw new Error("The picture has no insert.");
    const [{ start, end }] = left.path;
    const allowance = DEFAULT_CHOICES.alterations.vInsert.allowance;
    const [dx, dy] = [end.x - start.x, end.y - start.y];
    const size = Math.hypot(dx, dy);
    const middle = {
      x: (start.x + end.x) / 2 + (dy / size) * allowance,
      y: (start.y + end.y) / 2 - (dx / size) * allowance,
    };
    const lying = placePoint(insert.origin.place, middle);
    expect(nearestOnPath(front.cutLine, mirrored(lying)).away).toBeLessThan(0.01);
  });
});

test("the half neck opening, laid flat, is half the opening long and turns by half its turning", () => {
  const garment = garmentOf();
  const picture = makingUp(garment).find(({ id }) => id === "neckband")?.pictures[1];
  const runs = picture?.strokes.filter(({ kind }) => kind === "stitching") ?? [];
  const whole = runs.reduce((sum, { path, origin }) => {
    const length = lengthOf(path);
    return sum + (origin?.piece === "vInsert" ? length / 2 : length);
  }, 0);
  expect(whole).toBeCloseTo(487.9222 / 2, 3);
});

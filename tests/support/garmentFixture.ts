import type { Band, Bands } from "../../src/bands/band.ts";
import type { Check } from "../../src/checks/check.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Measures } from "../../src/drafting/measures.ts";
import type { DrawnEdge, EdgeName, Notch, Piece, PieceName } from "../../src/drafting/piece.ts";
import type { SheetSubject } from "../../src/export/subject.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import { endOf, pathOf, startOf } from "../../src/geometry/path.ts";
import { readPathData } from "../../src/geometry/pathData.ts";
import { line, type Path } from "../../src/geometry/segment.ts";

/**
 * A garment put together by hand, so that the sheets can be tried without the draft: the sew lines
 * of the method's worked example in whole millimetres, its cut lines moved out by one turning all
 * round with plain corners. It is not a draft and no seam of it need meet.
 */
const read = (data: string): Path => {
  const found = readPathData(data);
  if ("fault" in found) throw new Error(found.fault);
  return found.path;
};

type Edges = readonly (readonly [EdgeName, string])[];

const drawn = (edges: Edges): readonly DrawnEdge[] =>
  edges.map(([name, data]) => ({ name, path: read(data), length: lengthOf(read(data)) }));

/** Edges moved outward and joined by straights; a fold edge stays and is met along the others. */
const cutLineOf = (edges: readonly DrawnEdge[], turning: number): Path => {
  const moved = edges.map(({ name, path }) =>
    name === "centre" ? path : offsetPath(path, turning),
  );
  return pathOf(
    moved.flatMap((path, i) => {
      const next = moved[(i + 1) % moved.length] ?? path;
      const [end, start] = [endOf(path), startOf(next)];
      const meet = Math.hypot(end.x - start.x, end.y - start.y) < 1e-9;
      return meet ? path : [...path, line(end, start)];
    }),
  );
};

type Made = {
  readonly edges: Edges;
  readonly cut: number;
  readonly notches?: readonly Notch[];
  readonly grain: readonly [number, number, number, number];
};

const piece = (name: PieceName, { edges, cut, notches = [], grain }: Made): Piece => {
  const lines = drawn(edges);
  const [x, y, toX, toY] = grain;
  const onFold = edges.some(([edge]) => edge === "centre") ? "centre" : null;
  return {
    name,
    edges: lines,
    cutLine: cutLineOf(lines, name === "vInsert" ? 6 : 9),
    onFold,
    cut,
    grain: { from: { x, y }, to: { x: toX, y: toY } },
    notches,
  };
};

const band = (
  name: PieceName,
  size: readonly [number, number],
  marks: readonly number[],
): Piece => {
  const [long, high] = size;
  const seam = name === "hemBand" ? "hem-band" : name;
  return piece(name, {
    edges: [
      ["top", `M0 0 L${long} 0`],
      ["endB", `M${long} 0 L${long} ${high}`],
      ["bottom", `M${long} ${high} L0 ${high}`],
      ["endA", `M0 ${high} L0 0`],
    ],
    cut: name === "cuff" ? 2 : 1,
    notches: marks.map((at) => ({ edge: "top", at, seam })),
    grain: [long / 4, high * 0.1, long / 4, high * 0.9],
  });
};

export const PIECES: readonly Piece[] = [
  piece("front", {
    edges: [
      ["v", "M0 136 L25 80"],
      ["neckline", "M25 80 C50 76 66 54 73 31"],
      ["raglan", "M73 31 C151 103 204 247 288 247"],
      ["side", "M288 247 L288 521"],
      ["hem", "M288 521 L0 521"],
      ["centre", "M0 521 L0 136"],
    ],
    cut: 1,
    notches: [
      { edge: "raglan", at: 157, seam: "raglan-front" },
      { edge: "side", at: 137, seam: "side" },
    ],
    grain: [140, 300, 140, 460],
  }),
  piece("back", {
    edges: [
      ["neckline", "M0 16 C64 16 76 10 79 4"],
      ["raglan", "M79 4 C156 86 200 247 288 247"],
      ["side", "M288 247 L288 521"],
      ["hem", "M288 521 L0 521"],
      ["centre", "M0 521 L0 16"],
    ],
    cut: 1,
    notches: [
      { edge: "raglan", at: 166, seam: "raglan-back" },
      { edge: "raglan", at: 179, seam: "raglan-back" },
      { edge: "neckline", at: 0, seam: "neckband" },
    ],
    grain: [140, 300, 140, 460],
  }),
  piece("sleeve", {
    edges: [
      ["neckline", "M-19 -252 C-4 -235 22 -238 43 -246"],
      ["raglanFront", "M43 -246 C106 -160 133 -18 220 0"],
      ["underarmFront", "M220 0 L122 356"],
      ["wrist", "M122 356 L-122 356"],
      ["underarmBack", "M-122 356 L-220 0"],
      ["raglanBack", "M-220 0 C-133 -18 -81 -166 -19 -252"],
    ],
    cut: 2,
    notches: [
      { edge: "neckline", at: 22, seam: "shoulder" },
      { edge: "neckline", at: 41, seam: "neckband" },
      { edge: "raglanFront", at: 157, seam: "raglan-front" },
      { edge: "wrist", at: 0, seam: "cuff" },
      { edge: "wrist", at: 122, seam: "cuff" },
    ],
    grain: [0, 20, 0, 260],
  }),
  piece("vInsert", {
    edges: [
      ["top", "M-25 80 C-10 86 10 86 25 80"],
      ["right", "M25 80 L0 136"],
      ["left", "M0 136 L-25 80"],
    ],
    cut: 1,
    notches: [{ edge: "top", at: 26, seam: "neckband" }],
    grain: [0, 90, 0, 116],
  }),
  band("neckband", [381, 38], [0, 69, 94, 115, 191, 266, 287, 312]),
  band("cuff", [155, 102], [0, 39, 78, 116]),
  band("hemBand", [1010, 152], [0, 252, 505, 758]),
];

const worked = (around: Band["around"], finishedLength: number, finishedDepth: number): Band => ({
  around,
  opening: 488,
  finishedLength,
  cutLength: finishedLength + 12.7,
  cutHeight: 2 * (finishedDepth + 6.35),
  finishedDepth,
  ratio: 0.78,
  stretchToSew: 0.28,
  stretchToPass: 0.47,
  quarterMarks: [0, finishedLength / 4, finishedLength / 2, (finishedLength * 3) / 4],
  pressure: 0,
});

const BANDS: Bands = {
  neckband: {
    ...worked("neckline", 381, 19),
    marks: [
      { at: 0, to: "centre-back" },
      { at: 69, to: "raglan-back" },
      { at: 94, to: "half-way" },
      { at: 115, to: "raglan-front" },
      { at: 191, to: "centre-front" },
      { at: 266, to: "raglan-front" },
      { at: 287, to: "half-way" },
      { at: 312, to: "raglan-back" },
    ],
    innerRing: 379,
    bodyRing: 398,
    neckGap: 27,
  },
  cuff: worked("wrist", 155, 50.8),
  hemBand: { ...worked("hem", 1010, 76.2), holdsBlouseFrom: 962 },
};

/** The body of the method's worked example. */
const MEASURES: Measures = {
  height: 1660,
  chest: 960,
  waist: 840,
  hip: 1010,
  neckBase: 372,
  shoulder: 136,
  acrossBack: 375,
  napeToWaist: 424,
  napeToHip: 572,
  scyeDepth: 187,
  upperArm: 305,
  wrist: 155,
  hand: 187,
  head: 561,
  armLength: 553,
  spineToWrist: 760,
};

/** What the sheets print of a garment, with other pieces or checks where a test asks for them. */
export const subjectOf = (
  pieces: readonly Piece[] = PIECES,
  checks: readonly Check[] = [],
): SheetSubject => ({
  body: { id: "odile", name: "Odile Marrack" },
  garment: { measures: MEASURES, choices: DEFAULT_CHOICES, pieces, bands: BANDS },
  checks,
});

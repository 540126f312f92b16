import { asMm, asPercent } from "../../drafting/words.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { faulty, found, type Told } from "../told.ts";
import { contradiction } from "./contradiction.ts";
import { fitPlane, type PlacedMark, type PlaneFit, type StraightEdge } from "./fitPlane.ts";
import { type Foretold, foretell } from "./foretell.ts";
import { depthOf } from "./homography.ts";
import { areaInside, hullOf } from "./hull.ts";
import { type Lens, straightLens } from "./lens.ts";
import type { Distance, SeenMark } from "./mark.ts";
import type { Pixel } from "./picture.ts";
import { placesOf } from "./places.ts";
import type { Plane } from "./plane.ts";

/** What a picture is placed on the table by. */
export type PictureAsked = {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly SeenMark[];
  readonly distances: readonly Distance[];
  /** Points along edges that are straight on the table; they tell the lens's bending. */
  readonly edges: readonly StraightEdge[];
  readonly terms: 0 | 1 | 2;
  /** Round the piece in the picture, roughly; the marks' own hull where it is not known yet. */
  readonly piece: readonly Pixel[];
  /** The marks are named clockwise as they lie on the table: a mirrored picture shows it. */
  readonly isClockwise?: boolean;
};

/** A picture whose slant, scale and bending are known. */
export type PlacedPicture = {
  readonly plane: Plane;
  /** Where the marks lie, in mm. */
  readonly marks: readonly PlacedMark[];
  /** How far each mark is seen from where the plane shows it, in pixels. */
  readonly misses: PlaneFit["misses"];
  /** Drawn less measured of each distance, in mm. */
  readonly distanceMisses: readonly Mm[];
  readonly crooked: number;
  /** The error to expect of a line traced over the piece. */
  readonly foretold: Foretold;
};

/** The marks must enclose this share of the piece's area in the picture at least. Ours. */
const ENCLOSED = 0.5;
/** A line traced with a larger error than this is no use for a seam (two deviations). Ours. */
const MOST_ERROR: Mm = 3;
/** A mark nearer to the picture's edge than this may be cut off. */
const EDGE_PIXELS = 2;
/** Straight edges bent by more than this stay bent: the wrong thing was taken for straight. Ours. */
const MOST_CROOKED = 1;

const fewMarks = (count: number): Told<never> =>
  faulty(
    "marks",
    String(count),
    `The picture has ${count} ${count === 1 ? "mark" : "marks"}; four or more are needed round the piece.`,
    "Lay a marker sheet at each corner, wholly in the picture, and take it again; or click four points of known distance.",
  );

const badMarks = ({ width, height, marks }: PictureAsked): Told<never> | null => {
  if (marks.length < 4) return fewMarks(marks.length);
  const twice = marks.find((mark, i) => marks.findIndex(({ name }) => name === mark.name) !== i);
  if (twice) {
    return faulty(
      `mark ${twice.name}`,
      "twice",
      `Mark ${twice.name} stands in the picture twice; each mark must be there once.`,
      "Cover or take away one of the two, or name them apart.",
    );
  }
  const off = marks.find(
    ({ at }) =>
      !(at.x >= EDGE_PIXELS && at.y >= EDGE_PIXELS) ||
      !(at.x <= width - EDGE_PIXELS && at.y <= height - EDGE_PIXELS),
  );
  if (!off) return null;
  return faulty(
    `mark ${off.name}`,
    `${off.at.x.toFixed(0)}, ${off.at.y.toFixed(0)}`,
    `Mark ${off.name} lies at the edge of the picture or outside it (${width} × ${height} pixels).`,
    "Take the picture again with every mark wholly inside it.",
  );
};

const nameless = ({ marks, distances }: PictureAsked): Told<never> | null => {
  const wrong = distances.find(
    ({ from, to, length }) =>
      from === to ||
      !(length > 0) ||
      ![from, to].every((name) => marks.some((m) => m.name === name)),
  );
  if (!wrong) return null;
  return faulty(
    `distance ${wrong.from}–${wrong.to}`,
    asMm(wrong.length),
    `The distance ${wrong.from}–${wrong.to} (${asMm(wrong.length)}) is not one between two marks of the picture.`,
    "Give a length above 0 between two marks that the picture shows.",
  );
};

/** Corners of the piece in the picture, or of the marks where the piece is not known yet. */
const aroundOf = ({ piece, marks }: PictureAsked): readonly Pixel[] =>
  hullOf(piece.length >= 3 ? piece : marks.map(({ at }) => at));

const tooClose = (asked: PictureAsked): Told<never> | null => {
  const marked = Math.abs(areaInside(hullOf(asked.marks.map(({ at }) => at))));
  const needed = Math.abs(areaInside(aroundOf(asked)));
  if (marked >= ENCLOSED * needed) return null;
  return faulty(
    "marks",
    asPercent(marked / needed),
    `The marks stand too close together: they enclose ${asPercent(marked / needed)} of the piece's area in the picture; ${asPercent(ENCLOSED)} is the least.`,
    "Lay the marks round the piece, one beyond each of its corners.",
  );
};

const unfixed = (marks: readonly SeenMark[], distances: readonly Distance[]): Told<never> =>
  faulty(
    "distances",
    String(distances.length),
    `The ${distances.length} distances do not fix the places of ${marks.length} marks.`,
    `Measure every distance between the marks: ${(marks.length * (marks.length - 1)) / 2} for ${marks.length} marks.`,
  );

const ORDER_CURE =
  "Check which mark is which, and that the picture is not mirrored (a screenshot of a selfie camera is).";

/** Marks that were named clockwise on the table and run the other way in the picture. */
const turnedRound = ({ marks, isClockwise }: PictureAsked): Told<never> | null => {
  if (!isClockwise) return null;
  const sorted = [...marks].sort((a, b) => (a.name < b.name ? -1 : 1));
  if (areaInside(sorted.map(({ at }) => at)) > 0) return null;
  const names = sorted.map(({ name }) => name).join(", ");
  return faulty(
    "marks",
    names,
    `The marks ${names} run anticlockwise in the picture; on the table they are named clockwise.`,
    ORDER_CURE,
  );
};

/** Marks in another order than their distances say, or three on one line. */
const outOfOrder = (names: string): Told<never> =>
  faulty(
    "marks",
    names,
    `The marks ${names} do not lie in the picture as their distances say: no camera sees them so.`,
    ORDER_CURE,
  );

const tooBent = (crooked: number): Told<never> =>
  faulty(
    "straight edges",
    `${crooked.toFixed(1)} pixels`,
    `The edges taken as straight still bend by ${crooked.toFixed(1)} pixels; the limit is ${MOST_CROOKED}.`,
    "Choose edges that are straight on the table: a ruler, the edge of a sheet, a fold.",
  );

/** The lens needs something to tell its bending by. */
const lensUntold = ({ marks, edges, terms }: PictureAsked): Told<never> | null => {
  if (terms === 0 || edges.some((edge) => edge.length >= 5) || 2 * marks.length >= 8 + terms + 2) {
    return null;
  }
  return faulty(
    "lens",
    String(terms),
    `The lens's bending cannot be told from ${marks.length} marks and no straight edge.`,
    "Mark an edge that is straight on the table, lay out six marks, or leave the lens as it is.",
  );
};

/** Corners and middles of the piece's outline, where the error is foretold. */
const probes = (around: readonly Pixel[]): readonly Pixel[] =>
  around.flatMap((a, i) => {
    const b = around[(i + 1) % around.length] ?? a;
    return [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }];
  });

const tooUnsure = (foretold: Foretold): Told<never> =>
  faulty(
    "marks",
    asMm(foretold.worst),
    `A line traced in this picture may be out by ${asMm(foretold.worst)}; the limit is ${asMm(MOST_ERROR)}.`,
    "Lay the marks further apart, round the piece, and measure their distances again.",
  );

/** Everything that is wrong before the plane is worked out. */
const beforehand = (asked: PictureAsked, lens: Lens): Told<never> | null =>
  badMarks(asked) ??
  nameless(asked) ??
  turnedRound(asked) ??
  tooClose(asked) ??
  lensUntold(asked) ??
  contradiction(asked.marks, asked.distances, lens);

/**
 * A picture placed on the table: its marks' places from the distances, the slant, the scale and the
 * lens's bending worked out, the error to expect foretold (mm, two standard deviations). Refused
 * where marks are missing, too close together, at odds with their distances, or in a mirrored order.
 */
export const placePicture = (asked: PictureAsked): Told<PlacedPicture> => {
  const { marks, distances, edges, terms } = asked;
  const lens = straightLens(asked.width, asked.height);
  const wrong = beforehand(asked, lens);
  if (wrong) return wrong;
  const placed = placesOf(marks, distances);
  if (!placed) return unfixed(marks, distances);
  const origin: Point = { x: 0, y: 0 };
  const placedMarks = marks.map((mark, i) => ({ mark, place: placed.places[i] ?? origin }));
  const fit = fitPlane({ marks: placedMarks, edges, terms, lens });
  const names = marks.map(({ name }) => name).join(", ");
  if (!fit) return outOfOrder(names);
  const { plane, misses, crooked } = fit;
  if (placedMarks.some(({ place }) => !(depthOf(plane.toPicture, place) > 0)))
    return outOfOrder(names);
  if (terms > 0 && crooked > MOST_CROOKED) return tooBent(crooked);
  const evidence = { ...placed, marks, distances, plane, misses, lens: plane.lens };
  const foretold = foretell(
    { ...evidence, distanceMisses: placed.misses },
    probes(aroundOf(asked)),
  );
  if (!(foretold.worst <= MOST_ERROR)) return tooUnsure(foretold);
  return found({
    plane,
    marks: placedMarks,
    misses,
    distanceMisses: placed.misses,
    crooked,
    foretold,
  });
};

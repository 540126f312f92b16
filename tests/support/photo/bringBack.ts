import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { boundsOf } from "../../../src/geometry/outline.ts";
import { mapPath, pathOf } from "../../../src/geometry/path.ts";
import { apart, type Point } from "../../../src/geometry/point.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { pointAlong } from "../../../src/geometry/split.ts";
import { closedPathOf, type Outline } from "../../../src/trace/follow/fitOutline.ts";
import type { Followed } from "../../../src/trace/follow/kind.ts";
import { proposeOutline } from "../../../src/trace/follow/proposeOutline.ts";
import { findMarks } from "../../../src/trace/photo/findMarks.ts";
import type { Distance } from "../../../src/trace/photo/mark.ts";
import type { MarkerName } from "../../../src/trace/photo/markerDesign.ts";
import type { Picture, Pixel } from "../../../src/trace/photo/picture.ts";
import { type PlacedPicture, placePicture } from "../../../src/trace/photo/placePicture.ts";
import { inPicture, onTable } from "../../../src/trace/photo/plane.ts";
import { rectify, windowRound } from "../../../src/trace/photo/rectify.ts";
import { rigidFrom } from "../../../src/trace/photo/rigid.ts";
import { findStraightEdge } from "../../../src/trace/photo/straightEdge.ts";
import { planeOfShot, type Shot, take } from "./camera.ts";
import { jpegLoss } from "./jpegLoss.ts";
import { randomFrom } from "./random.ts";
import { emptyTable, fill, layMark, ringOf, type Scene, stroke } from "./scene.ts";

/** A sew line laid on the table to be photographed: its edges in order round it. */
export type Laid = {
  readonly edges: readonly Path[];
  /** A pen line on a large sheet, or the piece cut out and laid on a dark table. */
  readonly drawnAs: Followed;
};

export type Photographed = {
  readonly picture: Picture;
  readonly marks: readonly MarkerName[];
  readonly places: readonly Point[];
  readonly distances: readonly Distance[];
  /** Ends of straight things on the table in the picture, as a maker would click them. */
  readonly straights: readonly (readonly [Pixel, Pixel])[];
  readonly inside: Pixel;
  readonly around: readonly Pixel[];
};

const ROOM = 110;
const STEP = 0.3;
const NAMES: readonly MarkerName[] = ["A", "B", "C", "D"];

/** The scene of one piece with four marks at its corners, a little out of square. */
const sceneOf = ({ edges, drawnAs }: Laid, seed: number) => {
  const outline = pathOf(edges.flat());
  const box = boundsOf(outline);
  const random = randomFrom(seed);
  const jitter = (): number => (random() - 0.5) * 24;
  const corners: readonly Point[] = [
    { x: box.left - ROOM, y: box.top - 30 },
    { x: box.right + ROOM, y: box.top - 30 },
    { x: box.right + ROOM, y: box.bottom + 30 },
    { x: box.left - ROOM, y: box.bottom + 30 },
  ];
  const places = corners.map(({ x, y }) => ({ x: x + jitter(), y: y + jitter() }));
  const area = {
    left: box.left - 260,
    top: box.top - 190,
    right: box.right + 260,
    bottom: box.bottom + 190,
  };
  const scene = emptyTable(area, STEP, drawnAs === "edge" ? 95 : 140);
  const paper = 20;
  const sheet = ringOf([
    { x: box.left - paper, y: box.top - paper },
    { x: box.right + paper, y: box.top - paper },
    { x: box.right + paper, y: box.bottom + paper },
    { x: box.left - paper, y: box.bottom + paper },
  ]);
  if (drawnAs === "line") fill(scene, sheet, 228);
  if (drawnAs === "edge") fill(scene, outline, 228);
  for (const [i, name] of NAMES.entries())
    layMark(scene, name, places[i] ?? { x: 0, y: 0 }, random() * 6);
  if (drawnAs === "line") stroke(scene, outline, { width: 0.8, grey: 55 });
  clutter(scene, box, random);
  return { scene, box, places, sheet };
};

/** What else is drawn on a piece: a grain arrow, a note, a notch. */
const clutter = (scene: Scene, box: ReturnType<typeof boundsOf>, random: () => number): void => {
  const x = box.left + (box.right - box.left) * (0.4 + 0.1 * random());
  const y = box.top + (box.bottom - box.top) * 0.55;
  const pen = { width: 0.6, grey: 80 };
  stroke(scene, [{ kind: "line", start: { x, y }, end: { x, y: y + 120 } }], pen);
  for (let i = 0; i < 8; i++) {
    const at = { x: x + 12 + 5 * i, y: y + 20 + 4 * random() };
    stroke(scene, [{ kind: "line", start: at, end: { x: at.x + 3 * random(), y: at.y + 6 } }], pen);
  }
};

/** Distances as a maker reads them off a tape: to the millimetre. */
const readOff = (names: readonly string[], places: readonly Point[]): readonly Distance[] =>
  names.flatMap((from, i) =>
    names.slice(i + 1).map((to, k) => {
      const [a, b] = [places[i], places[i + 1 + k]];
      return { from, to, length: a && b ? Math.round(apart(a, b)) : 0 };
    }),
  );

/** A piece laid out, and the picture that a shot takes of it after a JPEG's loss. */
export const photographed = (laid: Laid, shot: Omit<Shot, "at">, quality: number): Photographed => {
  const { scene, box, places, sheet } = sceneOf(laid, shot.seed);
  const at = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const whole: Shot = { ...shot, at };
  const plane = planeOfShot(whole);
  const taken = take(scene, whole);
  const seen = (p: Point): Pixel => inPicture(plane, p);
  const corners = sheet.map(({ start }) => start);
  const inset = (a: Point, b: Point): readonly [Pixel, Pixel] => {
    const along = (t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
    return [seen(along(0.03)), seen(along(0.97))];
  };
  return {
    picture: quality < 100 ? jpegLoss(taken, quality) : taken,
    marks: NAMES,
    places,
    distances: readOff(NAMES, places),
    straights:
      laid.drawnAs === "line"
        ? corners.map((a, i) => inset(a, corners[(i + 1) % corners.length] ?? a))
        : [],
    inside: seen({
      x: box.left + (box.right - box.left) * 0.3,
      y: box.top + (box.bottom - box.top) * 0.6,
    }),
    around: corners.map(seen),
  };
};

export type BroughtBack = {
  readonly placed: PlacedPicture;
  readonly outline: Outline;
  /** Distances from points of the true outline, one a millimetre, to the one brought back, mm. */
  readonly strays: readonly number[];
  /** Length of each edge brought back against the true one, as a share; null where its run differs. */
  readonly lengths: readonly number[];
};

const unwrapped = <Thing>(
  told: { readonly found: Thing } | { readonly fault: { readonly reason: string } },
): Thing => {
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

/** The straight edges a maker would click, found again where they can be. */
const straightEdges = ({ picture, straights }: Photographed) =>
  straights.flatMap(([a, b]) => {
    const edge = findStraightEdge(picture, a, b);
    return "found" in edge ? [edge.found] : [];
  });

const flattened = (path: Path): readonly Point[] =>
  path.flatMap((s) => Array.from({ length: 65 }, (_, i) => pointAt(s, i / 64)));

const nearestTo = (line: readonly Point[], p: Point): Point => {
  let best: Point = line[0] ?? p;
  let least = Infinity;
  for (let i = 0; i + 1 < line.length; i++) {
    const [a, b] = [line[i], line[i + 1]];
    if (!a || !b) continue;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = dx * dx + dy * dy;
    const t = size > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size)) : 0;
    const q = { x: a.x + t * dx, y: a.y + t * dy };
    const away = apart(q, p);
    if (away < least) [best, least] = [q, away];
  }
  return best;
};

const sampled = (path: Path): readonly Point[] => {
  const length = lengthOf(path);
  return Array.from({ length: Math.floor(length) }, (_, i) => pointAlong(path, i + 0.5));
};

/** The whole photo path on a picture, measured against the truth. */
export const bringBack = (laid: Laid, shot: Photographed): BroughtBack => {
  const { picture, distances } = shot;
  const edges = straightEdges(shot);
  const placed = unwrapped(
    placePicture({
      width: picture.width,
      height: picture.height,
      marks: unwrapped(findMarks(picture)),
      distances,
      edges,
      terms: edges.length >= 2 ? 2 : 0,
      piece: shot.around,
    }),
  );
  const table = rectify(picture, placed.plane, windowRound(placed.plane, shot.around));
  const outline = unwrapped(
    proposeOutline(table, laid.drawnAs, onTable(placed.plane, shot.inside)),
  );
  const begun = rigidFrom(
    placed.marks.map(({ place }) => place),
    shot.places,
  );
  const truth = laid.edges.flatMap(sampled);
  // Where the piece lies on the table is of no matter: the best turn and shift are taken.
  let back = mapPath(closedPathOf(outline), begun.moved);
  for (let round = 0; round < 4; round++) {
    const line = flattened(back);
    const near = truth.map((p) => nearestTo(line, p));
    back = mapPath(back, rigidFrom(near, truth).moved);
  }
  const line = flattened(back);
  const strays = truth.map((p) => apart(nearestTo(line, p), p));
  return { placed, outline, strays, lengths: lengthsOf(laid, outline, back) };
};

/** Each true edge against the run of the outline that lies on its middle. */
const lengthsOf = ({ edges }: Laid, outline: Outline, back: Path): readonly number[] => {
  let index = 0;
  const runs = outline.runs.map((run) => {
    const moved = pathOf(back.slice(index, index + run.length));
    index += run.length;
    return moved;
  });
  if (runs.length !== edges.length) return [];
  return edges.map((edge) => {
    const middle = pointAlong(edge, lengthOf(edge) / 2);
    const away = runs.map((run) => apart(nearestTo(flattened(run), middle), middle));
    const run = runs[away.indexOf(Math.min(...away))];
    return run ? lengthOf(run) / lengthOf(edge) - 1 : Number.NaN;
  });
};

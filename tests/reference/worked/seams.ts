import { makeGarment } from "../../../src/bands/makeGarment.ts";
import { seamsMeet } from "../../../src/checks/seamsMeet.ts";
import type { Side } from "../../../src/drafting/allowances.ts";
import { insertV } from "../../../src/drafting/alterations/vInsert.ts";
import { cornerOf } from "../../../src/drafting/block/neckEdge.ts";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { cutLineOf } from "../../../src/drafting/cutLine.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import type { BodyEdges } from "../../../src/drafting/piece.ts";
import { growthOf } from "../../../src/drafting/shrinkage.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { offsetPath } from "../../../src/geometry/offset.ts";
import { areaOf } from "../../../src/geometry/outline.ts";
import { straight } from "../../../src/geometry/path.ts";
import { along, apart, dir, minus, type Point, point, turn } from "../../../src/geometry/point.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { degrees, radians } from "../../../src/geometry/units.ts";
import { WORKED_EXAMPLE } from "../../drafting/bodies.ts";
import type { WorkedCheck } from "../workedChecks.ts";
import { polygon } from "./fineCurves.ts";
import type { Run, Runs } from "./run.ts";

/** A garment whose side seams were measured as the check has them. */
const seamMatch: Run = (check) => {
  const { fit } = DEFAULT_CHOICES;
  const garment = makeGarment(
    draftRaglanBlock(WORKED_EXAMPLE, fit),
    WORKED_EXAMPLE,
    DEFAULT_CHOICES,
  );
  const [lengthA, lengthB] = [check.number("a"), check.number("b")];
  const seams = garment.seams.map((seam) =>
    seam.id === "side" ? { ...seam, lengthA, lengthB, difference: lengthA - lengthB } : seam,
  );
  const found = seamsMeet({ ...garment, seams }).find(({ id }) => id === "side-match");
  return found?.limit === check.number("limit")
    ? [found.value, found.verdict === "sound" ? 1 : 0]
    : [];
};

/** Two straights that meet with this inside angle, going clockwise round a piece. */
const cornerWithInside = (inside: number): number => {
  const into = straight(point(-100, 0), point(0, 0));
  const turned = radians(180 - inside);
  const outOf = straight(point(0, 0), point(100 * Math.cos(turned), 100 * Math.sin(turned)));
  return cornerOf(into, outOf);
};

/** Both corners' turns off what would let the edge run straight on over the seam. */
const turnOver: Run = (check) => [
  Math.abs(degrees(check.numbers("angles").reduce((sum, a) => sum + cornerWithInside(a), 0)) - 180),
];

/** A front with a level neckline and straight sides, as the V's checks have it. */
const levelFront: BodyEdges = {
  neckline: straight(point(0, 0), point(100, 0)),
  raglan: straight(point(100, 0), point(250, 250)),
  side: straight(point(250, 250), point(250, 500)),
  hem: straight(point(250, 500), point(0, 500)),
  centre: straight(point(0, 500), point(0, 0)),
};

const withV = (check: WorkedCheck, method: "true" | "cut-away", allowance: number) => {
  const [halfWidth, depth] = [check.number("halfWidth"), check.number("depth")];
  const { altered } = insertV(levelFront, { on: true, halfWidth, depth, allowance, method });
  const v = altered.front.v;
  if (v === undefined) throw new Error("The front has no V.");
  return { v, insert: altered.insert };
};

const vSides: Run = (check) => {
  const { v, insert } = withV(check, "true", 0);
  const [right] = insert.right;
  const [left] = insert.left;
  const atPoint = turn(minus(right.start, right.end), minus(left.end, left.start));
  return [Math.abs(degrees(atPoint)), lengthOf(v)];
};

const vOutside: Run = (check) => {
  const { v, insert } = withV(check, "cut-away", check.number("allowance"));
  return [lengthOf(v) - lengthOf(insert.left), lengthOf(v)];
};

/** The first side is begun and ended in its middle, so that every corner lies inside the path. */
const fromMiddle = (points: readonly Point[]): Path => {
  const [first = point(0, 0), second = point(0, 0)] = points;
  const middle = along(first, second, 0.5);
  return polygon([middle, ...points.slice(1), first]);
};

const perimeterAndArea = (path: Path): readonly number[] => [
  Math.abs(areaOf(path)),
  lengthOf(path),
];

const offsetRing: Run = (check) =>
  perimeterAndArea(offsetPath(fromMiddle(clockwise(check.points("points"))), check.number("by")));

/** Clockwise on the page, whichever way the check has it. */
const clockwise = (points: readonly Point[]): readonly Point[] =>
  areaOf(polygon(points)) > 0 ? points : [...points].reverse();

const sidesOf = (points: readonly Point[], allowance: number): readonly Side[] =>
  points.map((from, i) => ({
    name: "side",
    path: straight(from, points[(i + 1) % points.length] ?? from),
    allowance,
    corner: "mitre",
  }));

/** The same by the cut line of a piece, all its corners mitred. */
const cutRing: Run = (check) =>
  perimeterAndArea(
    cutLineOf(sidesOf(clockwise(check.points("points")), check.number("by")), false),
  );

const mitreReach: Run = (check) => {
  const half = radians(check.number("angleDeg")) / 2;
  const tip = point(0, 0);
  const [left, right] = [dir(-Math.PI / 2 - half), dir(-Math.PI / 2 + half)];
  const corners = [tip, point(200 * left.x, 200 * left.y), point(200 * right.x, 200 * right.y)];
  const cut = cutLineOf(sidesOf(corners, check.number("by")), false);
  const below = cut.map((s) => s.start).filter(({ y }) => y > 0);
  return [Math.max(...below.map((p) => apart(p, tip)))];
};

const shoelace: Run = (check) => [Math.abs(areaOf(polygon(check.points("points"))))];

const shoelaceRegular: Run = (check) => {
  const [n, radius] = [check.number("n"), check.number("radius")];
  const corners = Array.from({ length: n }, (_, i) => {
    const to = dir((2 * Math.PI * i) / n);
    return point(radius * to.x, radius * to.y);
  });
  return [areaOf(polygon(corners))];
};

const NO_SHRINKAGE = { stretch: 0.25, shrinkLength: 0, shrinkWidth: 0, turned: false };

const compensate: Run = (check) => {
  const growth = growthOf({ ...NO_SHRINKAGE, shrinkLength: check.number("shrink") });
  return [check.number("finished") * growth.down];
};

/** What is left of an area after the wash: one over what it is enlarged by. */
const areaFactor: Run = (check) => {
  const growth = growthOf({
    ...NO_SHRINKAGE,
    shrinkLength: check.number("length"),
    shrinkWidth: check.number("width"),
  });
  return [1 / (growth.across * growth.down)];
};

export const SEAM_RUNS: Runs = {
  R01: seamMatch,
  R02: turnOver,
  R03: turnOver,
  R05: vSides,
  R06: vOutside,
  O01: cutRing,
  O03: cutRing,
  O04: offsetRing,
  O05: mitreReach,
  A01: shoelace,
  A02: shoelace,
  A03: shoelaceRegular,
  S05: compensate,
  S07: areaFactor,
};

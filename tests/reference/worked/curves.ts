import {
  derivativeAt,
  pointAt,
  secondDerivativeAt,
  splitSegment,
} from "../../../src/geometry/curve.ts";
import { lengthOf, segmentLength } from "../../../src/geometry/length.ts";
import { areaOf } from "../../../src/geometry/outline.ts";
import { endOf, joined, startOf, straight } from "../../../src/geometry/path.ts";
import { cross, norm, type Point, point } from "../../../src/geometry/point.ts";
import { type Cubic, cubic } from "../../../src/geometry/segment.ts";
import { solve } from "../../../src/geometry/solve.ts";
import { radians } from "../../../src/geometry/units.ts";
import { cubicOf, ellipse, parabolaOf } from "./fineCurves.ts";
import type { Run, Runs } from "./run.ts";

/** A part of a circle about the origin drawn as one cubic with handles of this length. */
const arcCubic = (radius: number, angle: number, handle: number): Cubic => {
  const end = point(radius * Math.cos(angle), radius * Math.sin(angle));
  const endHandle: Point = {
    x: end.x + handle * Math.sin(angle),
    y: end.y - handle * Math.cos(angle),
  };
  return cubic(point(radius, 0), point(radius, handle), endHandle, end);
};

/** The handle with which the middle of the cubic lies on the circle: what the closed form gives. */
const handleOnCircle = (radius: number, angle: number): number =>
  solve({
    of: (handle) => norm(pointAt(arcCubic(radius, angle, handle), 0.5)) - radius,
    low: 0,
    high: radius,
  }) ?? Number.NaN;

const circleHandle: Run = (check) => [
  handleOnCircle(check.number("radius"), radians(check.number("angleDeg"))),
];

const TRIED = 20_000;
const circleRadialError: Run = (check) => {
  const [radius, angle] = [check.number("radius"), radians(check.number("angleDeg"))];
  const arc = arcCubic(radius, angle, handleOnCircle(radius, angle));
  const strays = Array.from({ length: TRIED + 1 }, (_, i) =>
    Math.abs(norm(pointAt(arc, i / TRIED)) - radius),
  );
  return [Math.max(...strays)];
};

const cubicLength: Run = (check) => [lengthOf(cubicOf(check.points("points")))];
const quadraticLength: Run = (check) => [lengthOf(parabolaOf(check.points("points")))];
const arcLength: Run = (check) => {
  const radius = check.number("radius");
  return [lengthOf(ellipse(radius, radius, 0, radians(check.number("angleDeg"))))];
};

/** y = x² is a cubic as it stands; y = x^1.5 is one with x = u², y = u³, cusp and all. */
const squareLength: Run = () => [lengthOf(parabolaOf([point(0, 0), point(0.5, 0), point(1, 1)]))];
const powerLength: Run = () => [
  lengthOf([cubic(point(0, 0), point(0, 0), point(4 / 3, 0), point(4, 8))]),
];

const cubicPoint: Run = (check) => {
  const { x, y } = pointAt(cubicOf(check.points("points"))[0], check.number("t"));
  return [x, y];
};

const splitSum: Run = (check) => {
  const [whole] = cubicOf(check.points("points"));
  const [first, second] = splitSegment(whole, check.number("t"));
  return [segmentLength(first) + segmentLength(second)];
};

const cubicCurvature: Run = (check) => {
  const [segment] = cubicOf(check.points("points"));
  const first = derivativeAt(segment, check.number("t"));
  const second = secondDerivativeAt(segment, check.number("t"));
  return [Math.abs(cross(first, second)) / norm(first) ** 3];
};

const cubicArea: Run = (check) => {
  const curve = cubicOf(check.points("points"));
  return [Math.abs(areaOf(joined(curve, straight(endOf(curve), startOf(curve)))))];
};

const ellipsePerimeter: Run = (check) => [lengthOf(ellipse(check.number("a"), check.number("b")))];

/** How far Ramanujan's second formula lies off the length that the project measures. */
const ramanujanOff: Run = (check) => {
  const [a, b] = [check.number("a"), check.number("b")];
  const h = ((a - b) / (a + b)) ** 2;
  const formula = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  return [formula / lengthOf(ellipse(a, b)) - 1];
};

export const CURVE_RUNS: Runs = {
  C01: circleHandle,
  C02: circleHandle,
  C03: circleRadialError,
  C04: circleRadialError,
  C05: cubicLength,
  C06: arcLength,
  C07: squareLength,
  C08: quadraticLength,
  C09: cubicLength,
  C10: cubicLength,
  C11: cubicLength,
  C12: cubicPoint,
  C13: splitSum,
  C14: cubicCurvature,
  C15: cubicArea,
  C16: ellipsePerimeter,
  C19: ramanujanOff,
  C20: powerLength,
};

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CornerStyle, Side } from "../../src/drafting/allowances.ts";
import { shapeCorner } from "../../src/drafting/corner.ts";
import { pointAt } from "../../src/geometry/curve.ts";
import type { PlaceOn } from "../../src/geometry/intersect.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import { straight } from "../../src/geometry/path.ts";
import { cross, dir, dot, minus, out, type Point, point, times } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { radians } from "../../src/geometry/units.ts";
import { near, nearPoint } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";

const CORNER = point(0, 0);
const LONG = 200;

type Given = {
  /** How far the outline turns at the corner, in degrees; the inside angle is 180° less that. */
  readonly psi: number;
  readonly before: number;
  readonly after: number;
  readonly style: CornerStyle;
};

/** Two straights of 200 that meet at the origin, the first along x, with their offsets. */
const cornerWith = ({ psi, before, after, style }: Given) => {
  const t2 = dir(radians(psi));
  const one: Side = {
    name: "hem",
    path: straight(point(-LONG, 0), CORNER),
    allowance: before,
    corner: style,
  };
  const next: Side = {
    name: "side",
    path: straight(CORNER, times(t2, LONG)),
    allowance: after,
    corner: "mitre",
  };
  const [first, second] = [offsetPath(one.path, before), offsetPath(next.path, after)];
  const joint = shapeCorner(one, next, first, second);
  const onPath = (path: Path, place: PlaceOn | null, end: Point): Point =>
    place ? pointAt(path[place.index] ?? path[0], place.t) : end;
  return {
    t2,
    between: joint.between,
    /** Where the first offset ends and the second begins. */
    ends: onPath(first, joint.to, first[0].end),
    begins: onPath(second, joint.from, second[0].start),
  };
};

/** The mirror image of a point over the line through the corner along a direction. */
const overLine = (p: Point, along: Point): Point => minus(times(along, 2 * dot(p, along)), p);

const someTrue = fc.record({
  psi: fc.integer({ min: 20, max: 160 }),
  before: fc.constantFrom(4, 6.35, 9.525, 15),
  after: fc.constantFrom(4, 6.35, 9.525, 15),
});

describe("a mitred corner", () => {
  test("reaches the crossing of both cut lines: 10 and 10 of a square corner", () => {
    const { between } = cornerWith({ psi: 90, before: 10, after: 10, style: "mitre" });
    expect(between).toHaveLength(1);
    nearPoint(between[0] ?? CORNER, [10, -10], 1e-9);
  });

  test("reaches as far as each allowance says where they differ", () => {
    const { between } = cornerWith({ psi: 90, before: 6, after: 10, style: "mitre" });
    nearPoint(between[0] ?? CORNER, [10, -6], 1e-9);
  });

  // The mitre of an inside angle θ reaches a/sin(θ/2), which at θ = 2·asin(1/4) = 28.96° is 4a.
  test("is cut off square where it would reach beyond four allowances", () => {
    const blunt = cornerWith({ psi: 180 - 29.2, before: 10, after: 10, style: "mitre" });
    expect(blunt.between).toHaveLength(1);
    const spike = cornerWith({ psi: 180 - 28.8, before: 10, after: 10, style: "mitre" });
    expect(spike.between).toHaveLength(2);
    nearPoint(spike.between[0] ?? CORNER, [10, -10], 1e-9);
    for (const p of spike.between) expect(Math.hypot(p.x, p.y)).toBeLessThan(15);
  });

  test("is a step where the corner is nearly straight and the allowances differ", () => {
    const { between, ends, begins } = cornerWith({ psi: 1, before: 6, after: 10, style: "mitre" });
    expect(between).toEqual([]);
    nearPoint(ends, [0, -6], 1e-9);
    near(Math.hypot(begins.x, begins.y), 10, 1e-9);
  });

  test("is nothing at all where the edges run on and the allowances agree", () => {
    const { between } = cornerWith({ psi: 0.04, before: 6, after: 6, style: "mitre" });
    expect(between).toEqual([]);
  });
});

describe("a hollow corner", () => {
  test("ends both offsets where they cross: 10 in and 10 up of a square one", () => {
    const { between, ends, begins } = cornerWith({
      psi: -90,
      before: 10,
      after: 10,
      style: "seam-follows",
    });
    expect(between).toEqual([]);
    nearPoint(ends, [-10, -10], 1e-9);
    nearPoint(begins, [-10, -10], 1e-9);
  });

  test("is crossed at unlike allowances too", () => {
    const { ends } = cornerWith({ psi: -90, before: 6, after: 10, style: "mitre" });
    nearPoint(ends, [-10, -6], 1e-9);
  });
});

describe("a corner true to the seam that follows", () => {
  test("ends the seam's allowance with the mirror image of the other edge's cut line", () => {
    holdsFor(5101, someTrue, (given) => {
      const { between, ends, t2 } = cornerWith({ ...given, style: "seam-follows" });
      const psi = radians(given.psi);
      const reach = -(given.before / Math.sin(psi) + given.after / Math.tan(psi));
      const x = between.at(-1) ?? CORNER;
      // On the seam's own cut line, one allowance outside the seam.
      near(dot(x, out(t2)), given.after, 1e-9);
      if (reach > 0 || -reach > 4 * Math.max(given.before, given.after)) return;
      // Pressed open over the seam it lies on the other edge's cut line.
      near(overLine(x, t2).y, -given.before, 1e-9);
      const m = given.psi <= 90 ? ends : (between[0] ?? CORNER);
      near(cross(m, t2), 0, 1e-9);
      near(m.y, -given.before, 1e-9);
    });
  });

  // Square: the cut line of the other edge runs on over the seam, as its mirror image does.
  test("at a square corner is the corner of both cut lines", () => {
    const { between } = cornerWith({ psi: 90, before: 6, after: 10, style: "seam-follows" });
    nearPoint(between.at(-1) ?? CORNER, [10, -6], 1e-9);
  });

  test("takes off the other offset what the mirror leaves of it", () => {
    const { ends } = cornerWith({ psi: 60, before: 10, after: 10, style: "seam-follows" });
    near(ends.x, -10 / Math.tan(radians(60)), 1e-9);
  });

  test("is a mitre where the corner is flatter than 20° or sharper than 160°", () => {
    for (const psi of [19, 161]) {
      const true_ = cornerWith({ psi, before: 10, after: 10, style: "seam-follows" });
      const mitred = cornerWith({ psi, before: 10, after: 10, style: "mitre" });
      expect(true_).toEqual(mitred);
    }
    const flat = cornerWith({ psi: 21, before: 10, after: 10, style: "seam-follows" });
    expect(flat).not.toEqual(cornerWith({ psi: 21, before: 10, after: 10, style: "mitre" }));
  });

  test("is a mitre where it would take more than half of the other edge", () => {
    const wide = { psi: 21, before: 40, after: 10 };
    expect(40 / Math.tan(radians(21))).toBeGreaterThan(LONG / 2);
    const true_ = cornerWith({ ...wide, style: "seam-follows" });
    expect(true_).toEqual(cornerWith({ ...wide, style: "mitre" }));
  });
});

describe("a corner true to the seam before", () => {
  test("is the mirror image of one true to the seam that follows", () => {
    holdsFor(5102, someTrue, ({ psi, before, after }) => {
      const follows = cornerWith({ psi, before, after, style: "seam-follows" });
      const comes = cornerWith({ psi, before: after, after: before, style: "seam-before" });
      // Turned round and mirrored the one corner is the other.
      const bisector = dir(radians(psi / 2 - 90));
      const mirrored = [...comes.between].reverse().map((p) => overLine(p, bisector));
      expect(mirrored).toHaveLength(follows.between.length);
      mirrored.forEach((p, i) => {
        const { x, y } = follows.between[i] ?? CORNER;
        nearPoint(p, [x, y], 1e-9);
      });
      const { x, y } = overLine(comes.begins, bisector);
      nearPoint(follows.ends, [x, y], 1e-9);
    });
  });
});

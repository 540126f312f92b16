import { describe, expect, test } from "vitest";
import { findMarks } from "../../../src/trace/photo/findMarks.ts";
import { apparent } from "../../../src/trace/photo/fitPlane.ts";
import { MARKER_NAMES, MARKER_STEPS, markerOf } from "../../../src/trace/photo/markerDesign.ts";
import type { Picture } from "../../../src/trace/photo/picture.ts";
import { inPicture } from "../../../src/trace/photo/plane.ts";
import { planeOfShot, type Shot, take } from "../../support/photo/camera.ts";
import { jpegLoss } from "../../support/photo/jpegLoss.ts";
import { emptyTable, layMark } from "../../support/photo/scene.ts";

const PLACES = {
  A: { x: 0, y: 0 },
  B: { x: 420, y: 10 },
  C: { x: 400, y: 500 },
  G: { x: -10, y: 480 },
} as const;

const scene = emptyTable({ left: -100, top: -100, right: 520, bottom: 600 }, 0.4, 150);
layMark(scene, "A", PLACES.A, 0.1);
layMark(scene, "B", PLACES.B, 1);
layMark(scene, "C", PLACES.C, 2.2);
layMark(scene, "G", PLACES.G, 4);

const SHOT: Shot = {
  width: 900,
  height: 1000,
  at: { x: 200, y: 250 },
  distance: 700,
  tilt: 25,
  way: 40,
  roll: 12,
  focal: 0.75,
  k1: 0,
  k2: 0,
  noise: 3,
  shade: 0.4,
  seed: 5,
};
const picture = jpegLoss(take(scene, SHOT), 85);

const mirrored = ({ grey, width, height }: Picture): Picture => ({
  grey: grey.map((_, k) => grey[k - (k % width) + width - 1 - (k % width)] ?? 0),
  width,
  height,
});

describe("printed marks in a picture", () => {
  test("are found by themselves, named, each to a fifth of a pixel", () => {
    const told = findMarks(picture);
    if ("fault" in told) throw new Error(told.fault.reason);
    expect(told.found.map(({ name }) => name)).toEqual(["A", "B", "C", "G"]);
    const plane = planeOfShot(SHOT);
    for (const { name, at, radiusSquared } of told.found) {
      const [, place] = Object.entries(PLACES).find(([known]) => known === name) ?? [];
      if (!place) throw new Error(name);
      const truth = inPicture(plane, apparent(plane.toPicture, place, radiusSquared));
      expect(Math.hypot(at.x - truth.x, at.y - truth.y)).toBeLessThan(0.2);
    }
  });

  test("seen in a mirror are told, never taken for others", () => {
    const told = findMarks(mirrored(picture));
    expect("fault" in told && told.fault.reason).toMatch(/The picture is mirrored/);
  });

  test("that are not there are told", () => {
    const bare = take(emptyTable({ left: -100, top: -100, right: 520, bottom: 600 }, 2, 150), SHOT);
    const told = findMarks(bare);
    expect("fault" in told && told.fault.reason).toBe("No printed mark was found in the picture.");
  });

  test.each([
    ["black", 3],
    ["white", 250],
    ["one grey", 120],
  ])("a picture all %s is told so", (what, grey) => {
    const told = findMarks({ grey: new Uint8Array(500 * 400).fill(grey), width: 500, height: 400 });
    expect("fault" in told && told.fault.reason).toMatch(`The picture is all ${what}`);
  });
});

describe("the marks' dots", () => {
  test("tell every mark from every other and from every mirror image", () => {
    for (const name of MARKER_NAMES) {
      const [a, b, c] = MARKER_STEPS[name];
      expect(markerOf([b, c, a])).toEqual({ name, mirrored: false });
      expect(markerOf([c, b, a])).toEqual({ name, mirrored: true });
    }
  });

  test("in no known order are no mark", () => {
    expect(markerOf([4, 4, 4])).toBeNull();
  });
});

import { pathOf, straight } from "../../geometry/path.ts";
import { dir, type Point, stepped } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm, Radians } from "../../geometry/units.ts";
import { circleCubics } from "../arcs.ts";
import { MARKER, MARKER_STEPS, type MarkerName, PLACES_ROUND } from "./markerDesign.ts";

/** A printed mark as data: drawn in order, its middle at (0, 0), y down, mm. */
export type MarkerSheet = {
  readonly name: MarkerName;
  /** Closed paths, each filled over those before. */
  readonly fills: readonly { readonly path: Path; readonly ink: "black" | "white" }[];
  /** Thin black strokes, 0.3 mm: they point at the middle, for the tape. */
  readonly strokes: readonly Path[];
  /** Half the side of the square that must stay free of other ink. */
  readonly keepClear: Mm;
};

const MIDDLE: Point = { x: 0, y: 0 };

/** Where round the mark its dots stand, from straight up, clockwise. */
const dotAngles = (name: MarkerName): readonly Radians[] => {
  const [first, second] = MARKER_STEPS[name];
  return [0, first, first + second].map(
    (place) => (place * 2 * Math.PI) / PLACES_ROUND - Math.PI / 2,
  );
};

const disc = (middle: Point, radius: Mm): Path => pathOf(circleCubics(middle, radius));

/**
 * The marker sheet of one name: what is to be printed at true scale, one a sheet. What is written
 * below it is the printed page's own.
 */
export const markerSheet = (name: MarkerName): MarkerSheet => {
  const { dotsAt, dot, ringOuter, ringInner, middle, tickFrom, tickTo } = MARKER;
  const dots = dotAngles(name).map((angle) => disc(stepped(MIDDLE, dir(angle), dotsAt), dot));
  const ticks = [0, 1, 2, 3].map((quarter) => {
    const way = dir((quarter * Math.PI) / 2);
    return straight(stepped(MIDDLE, way, tickFrom), stepped(MIDDLE, way, tickTo));
  });
  return {
    name,
    fills: [
      { path: disc(MIDDLE, ringOuter), ink: "black" },
      { path: disc(MIDDLE, ringInner), ink: "white" },
      { path: disc(MIDDLE, MARKER.disc), ink: "black" },
      { path: disc(MIDDLE, middle), ink: "white" },
      ...dots.map((path) => ({ path, ink: "black" as const })),
    ],
    strokes: ticks,
    keepClear: tickTo + 4,
  };
};

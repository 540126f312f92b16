import type { Point } from "../../../src/geometry/point.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import type { Followed } from "../../../src/trace/follow/kind.ts";
import { bringBack, photographed } from "./bringBack.ts";
import type { Shot } from "./camera.ts";
import { randomFrom } from "./random.ts";

/** One picture of the ground truth: how it is taken, and what the lens, light and paper do. */
export type Take = {
  readonly seed: number;
  readonly drawnAs: Followed;
  /** Width of the picture in pixels; it is four thirds as high. */
  readonly pixels: number;
  /** How far the paper's waves move a point at most, mm. */
  readonly wrinkle: number;
};

/** What came back, against the truth. Lengths in mm, shares as fractions. */
export type Outcome = {
  readonly middle: number;
  readonly within95: number;
  readonly worst: number;
  /** The edge whose length is out most. */
  readonly length: number;
  readonly foretold: number;
  readonly fit: number;
};

/** Smooth waves of paper that lies not quite flat, `most` mm high at the most. */
const waves = (most: number, random: () => number): ((p: Point) => Point) => {
  const wave = () => ({
    length: 180 + 260 * random(),
    way: 2 * Math.PI * random(),
    at: 6 * random(),
  });
  const all = [wave(), wave(), wave(), wave()];
  return ({ x, y }) => {
    let [dx, dy] = [0, 0];
    for (const { length, way, at } of all) {
      const phase = (2 * Math.PI * (x * Math.cos(way) + y * Math.sin(way))) / length + at;
      dx += (most / all.length) * Math.cos(way) * Math.sin(phase);
      dy += (most / all.length) * Math.sin(way) * Math.sin(phase);
    }
    return { x: x + dx, y: y + dy };
  };
};

/** A hand-held shot: leaning up to 25°, turned a little, a phone's lens, grain and uneven light. */
const shotOf = ({ seed, drawnAs, pixels, wrinkle }: Take): Omit<Shot, "at"> => {
  const random = randomFrom(seed * 7919);
  const bent = drawnAs === "line" ? 1 : 0;
  return {
    width: pixels,
    height: Math.round((pixels * 4) / 3),
    distance: 1620 + 160 * random(),
    tilt: 25 * random(),
    way: 360 * random(),
    roll: 16 * (random() - 0.5),
    focal: 0.75,
    k1: -0.035 * random() * bent,
    k2: 0.01 * random() * bent,
    noise: 2 + 2 * random(),
    shade: 0.2 + 0.3 * random(),
    seed,
    ...(wrinkle > 0 ? { wrinkle: waves(wrinkle, random) } : {}),
  };
};

const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;
};

/** A piece photographed and brought back, measured against what it was. */
export const outcomeOf = (edges: readonly Path[], take: Take): Outcome => {
  const laid = { edges, drawnAs: take.drawnAs };
  const quality = 80 + (take.seed % 4) * 4;
  const { strays, lengths, placed, outline } = bringBack(
    laid,
    photographed(laid, shotOf(take), quality),
  );
  return {
    middle: quantile(strays, 0.5),
    within95: quantile(strays, 0.95),
    worst: quantile(strays, 1),
    length: lengths.length > 0 ? Math.max(...lengths.map(Math.abs)) : Number.NaN,
    foretold: placed.foretold.worst,
    fit: outline.error,
  };
};

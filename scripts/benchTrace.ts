import { livePath } from "../src/trace/follow/livePath.ts";
import { proposeOutline } from "../src/trace/follow/proposeOutline.ts";
import { findMarks } from "../src/trace/photo/findMarks.ts";
import { placePicture } from "../src/trace/photo/placePicture.ts";
import { onTable } from "../src/trace/photo/plane.ts";
import { rectify, windowRound } from "../src/trace/photo/rectify.ts";
import { photographed } from "../tests/support/photo/bringBack.ts";
import { drafted, halfRing } from "../tests/trace/edges/shapes.ts";

/** Times of the photo path on 12 megapixels: the limit is 2 s for finding the line. */
const LIMIT = 2000;
const RUNS = 5;

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The middle of some runs in ms, and what the last one gave. */
const timed = <Thing>(name: string, run: () => Thing): Thing => {
  const times: number[] = [];
  let result = run();
  for (let i = 0; i < RUNS; i++) {
    const began = performance.now();
    result = run();
    times.push(performance.now() - began);
  }
  console.log(`${name}: ${middle(times).toFixed(0)} ms`);
  if (name.startsWith("line finding") && middle(times) > LIMIT) process.exitCode = 1;
  return result;
};

const found = <Thing>(
  told: { readonly found: Thing } | { readonly fault: { readonly reason: string } },
): Thing => {
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

const laid = { edges: halfRing(drafted().front), drawnAs: "line" } as const;
const shot = photographed(
  laid,
  {
    width: 3000,
    height: 4000,
    distance: 1700,
    tilt: 15,
    way: 40,
    roll: 4,
    focal: 0.75,
    k1: 0,
    k2: 0,
    noise: 3,
    shade: 0.3,
    seed: 3,
  },
  100,
);
const { picture } = shot;
console.log(`picture: ${picture.width} × ${picture.height}`);
const marks = timed("marks found", () => found(findMarks(picture)));
const placed = timed("picture placed", () =>
  found(
    placePicture({
      width: picture.width,
      height: picture.height,
      marks,
      distances: shot.distances,
      edges: [],
      terms: 0,
      piece: shot.around,
    }),
  ),
);
const window = windowRound(placed.plane, shot.around);
/** The same window in as many cells as a picture of 12 megapixels has. */
const finer = Math.sqrt(12e6 / (window.width * window.height));
const whole = {
  ...window,
  step: window.step / finer,
  width: Math.round(window.width * finer),
  height: Math.round(window.height * finer),
};
const table = timed("rectified to 12 megapixels", () => rectify(picture, placed.plane, whole));
const inside = onTable(placed.plane, shot.inside);
const outline = timed("line finding, whole outline", () =>
  found(proposeOutline(table, "line", inside)),
);
const [from, to] = outline.corners;
if (from && to)
  timed("line finding, between two clicks", () => found(livePath(table, "line", from, to)));

import { livePath } from "../../src/trace/follow/livePath.ts";
import { proposeOutline } from "../../src/trace/follow/proposeOutline.ts";
import { findMarks } from "../../src/trace/photo/findMarks.ts";
import { placePicture } from "../../src/trace/photo/placePicture.ts";
import { onTable } from "../../src/trace/photo/plane.ts";
import { rectify, type Window, windowRound } from "../../src/trace/photo/rectify.ts";
import type { Told } from "../../src/trace/told.ts";
import { largePicture, type Photographed } from "../../tests/support/photo/largePicture.ts";
import { type Row, short } from "./row.ts";
import { median } from "./timing.ts";

/** Finding the line in 12 megapixels, ms (issue 6). */
const LINE_FOUND = 2000;
const RUNS = 5;
const PIXELS = 12e6;

const found = <Thing>(told: Told<Thing>): Thing => {
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

/** What a call gave, and the middle of its times in ms. */
const timed = <Thing>(run: () => Thing): { readonly is: Thing; readonly ms: number } => {
  let is = run();
  const times = Array.from({ length: RUNS }, () => {
    const began = performance.now();
    is = run();
    return performance.now() - began;
  });
  return { is, ms: median(times) };
};

const row = (what: string, ms: number, goal?: number): Row => ({
  what,
  measured: `${short(ms)} ms`,
  goal: goal === undefined ? "" : `${goal} ms`,
  isMet: goal === undefined ? null : ms <= goal,
});

/** The same window in as many cells as the picture has pixels. */
const asFine = (window: Window): Window => {
  const finer = Math.sqrt(PIXELS / (window.width * window.height));
  const cells = (count: number): number => Math.round(count * finer);
  const { width, height, step } = window;
  return { ...window, step: step / finer, width: cells(width), height: cells(height) };
};

const rowsOf = ({ picture, distances, around, inside }: Photographed): readonly Row[] => {
  const marks = timed(() => found(findMarks(picture)));
  const placed = timed(() =>
    found(
      placePicture({
        width: picture.width,
        height: picture.height,
        marks: marks.is,
        distances,
        edges: [],
        terms: 0,
        piece: around,
      }),
    ),
  );
  const { plane } = placed.is;
  const table = timed(() => rectify(picture, plane, asFine(windowRound(plane, around))));
  const outline = timed(() => found(proposeOutline(table.is, "line", onTable(plane, inside))));
  const [from, to] = outline.is.corners;
  const between = from && to && timed(() => found(livePath(table.is, "line", from, to)));
  return [
    row("marks found", marks.ms),
    row("picture placed, error foretold", placed.ms),
    row("laid on the table, 12 megapixels", table.ms),
    row("line found, whole outline of 12 megapixels", outline.ms, LINE_FOUND),
    ...(between ? [row("line found between two taps", between.ms, LINE_FOUND)] : []),
  ];
};

/** A paper piece from its picture: one of 12 megapixels, by the core alone. */
export const benchTracing = (): readonly Row[] => rowsOf(largePicture());

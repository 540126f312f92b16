import { areaOf } from "../../geometry/outline.ts";
import { joined, mapPath, pathOf, reversed } from "../../geometry/path.ts";
import { mirrored } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";

/** A closed outline from corner to corner, clockwise on the page, each run with its first corner. */
export type CornerRing = readonly Path[];

/** Runs in order round an outline, turned to run clockwise. */
export const clockwise = (runs: readonly Path[]): CornerRing =>
  areaOf(pathOf(runs.flat())) >= 0 ? runs : [...runs].reverse().map(reversed);

/** The outline seen from the other side of the paper, clockwise again. */
export const turnedOver = (ring: CornerRing): CornerRing =>
  [...ring].reverse().map((run) => reversed(mapPath(run, mirrored)));

/** The ring with only some of its corners, by their places in order: runs between are joined. */
export const withCorners = (ring: CornerRing, kept: readonly number[]): CornerRing =>
  kept.flatMap((from, i) => {
    const to = kept[(i + 1) % kept.length] ?? from;
    const count = (to - from + ring.length) % ring.length || ring.length;
    const runs = Array.from({ length: count }, (_, k) => ring[(from + k) % ring.length]);
    const [first, ...more] = runs.filter((run) => run !== undefined);
    return first ? [joined(first, ...more)] : [];
  });

/** Begun at another of its corners. */
export const begunAt = (ring: CornerRing, at: number): CornerRing => [
  ...ring.slice(at),
  ...ring.slice(0, at),
];

/** Every way of keeping `count` of `from` corners, in order. */
export const choices = (from: number, count: number): readonly (readonly number[])[] => {
  const found: (readonly number[])[] = [];
  const pick = (next: number, kept: readonly number[]): void => {
    if (kept.length === count) found.push(kept);
    else for (let i = next; i <= from - (count - kept.length); i++) pick(i + 1, [...kept, i]);
  };
  pick(0, []);
  return found;
};

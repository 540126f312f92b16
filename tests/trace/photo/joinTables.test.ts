import { describe, expect, test } from "vitest";
import { joinTables, planeInFrame } from "../../../src/trace/photo/joinTables.ts";
import { inPicture } from "../../../src/trace/photo/plane.ts";
import { rigidFrom } from "../../../src/trace/photo/rigid.ts";
import { PLANE } from "./planes.ts";

const square = (left: number, right: number) => [
  { x: left, y: 0 },
  { x: right, y: 0 },
  { x: right, y: 10 },
  { x: left, y: 10 },
];

const tableOf = (grey: number, shown: (i: number) => boolean) => ({
  width: 20,
  height: 10,
  window: { left: 0, top: 0, step: 1, width: 20, height: 10 },
  grey: Uint8Array.from({ length: 200 }, (_, k) => (shown(k % 20) ? grey : 0)),
});

describe("two pictures of one table", () => {
  test("a second picture's plane, moved into the first's frame, shows the same pixels", () => {
    const own = [
      { x: 10, y: 20 },
      { x: 400, y: 35 },
      { x: 380, y: 510 },
    ];
    const [cos, sin] = [Math.cos(0.4), Math.sin(0.4)];
    const inFirst = own.map(({ x, y }) => ({
      x: cos * x - sin * y + 70,
      y: sin * x + cos * y - 130,
    }));
    const rigid = rigidFrom(own, inFirst);
    const moved = planeInFrame(PLANE, rigid);
    for (const [i, p] of inFirst.entries()) {
      const there = own[i] ?? p;
      const [a, b] = [inPicture(moved, p), inPicture(PLANE, there)];
      expect(a.x).toBeCloseTo(b.x, 6);
      expect(a.y).toBeCloseTo(b.y, 6);
    }
  });

  test("each cell comes from the picture between whose marks it lies, else from one that shows it", () => {
    const first = { table: tableOf(100, (i) => i < 14), marks: square(0, 8) };
    const second = { table: tableOf(200, (i) => i > 4), marks: square(8, 16) };
    const row = [...joinTables(first, [second]).grey.subarray(40, 60)];
    expect(row.slice(0, 8)).toEqual(Array(8).fill(100));
    expect(row.slice(8, 16)).toEqual(Array(8).fill(200));
    expect(row.slice(16)).toEqual(Array(4).fill(200));
  });

  test("one picture alone is taken as it is", () => {
    const only = { table: tableOf(100, () => true), marks: square(0, 8) };
    expect(joinTables(only, [])).toBe(only.table);
  });
});

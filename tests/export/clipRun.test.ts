import { describe, expect, test } from "vitest";
import { clipArea, clipRun } from "../../src/export/clipRun.ts";
import { hatchOf } from "../../src/guide/hatch.ts";

const BOX = { left: 0, top: 0, right: 10, bottom: 10 };

describe("a run of points cut at a rectangle", () => {
  test("keeps what lies inside", () => {
    const run = [
      { x: -5, y: 5 },
      { x: 15, y: 5 },
    ];
    expect(clipRun(run, BOX)).toEqual([
      [
        { x: 0, y: 5 },
        { x: 10, y: 5 },
      ],
    ]);
  });

  test("falls into parts where it leaves and comes back", () => {
    const run = [
      { x: 2, y: 5 },
      { x: 2, y: 15 },
      { x: 8, y: 15 },
      { x: 8, y: 5 },
    ];
    expect(clipRun(run, BOX).length).toBe(2);
  });

  test("beside the rectangle leaves nothing", () => {
    expect(
      clipRun(
        [
          { x: 11, y: 0 },
          { x: 20, y: 10 },
        ],
        BOX,
      ),
    ).toEqual([]);
  });
});

test("an area cut at a rectangle keeps what both share: a square of 10 by 10 off its corner is 5 by 5", () => {
  const square = [
    { x: 5, y: 5 },
    { x: 15, y: 5 },
    { x: 15, y: 15 },
    { x: 5, y: 15 },
  ];
  const kept = clipArea(square, BOX);
  const twice = kept.reduce((sum, p, i) => {
    const q = kept[(i + 1) % kept.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  expect(Math.abs(twice) / 2).toBeCloseTo(25, 9);
});

describe("a hatch", () => {
  const square = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ];

  test("of lines one apart in a square of ten is a hundred long", () => {
    const lines = hatchOf(square, { apart: 1, way: { x: 1, y: 0 }, dash: 0, gap: 0 });
    const whole = lines.reduce((sum, [a, b]) => sum + Math.abs(b.x - a.x), 0);
    expect(Math.abs(whole - 100)).toBeLessThan(10.1);
  });

  test("stays inside, dashes and all", () => {
    const way = { x: Math.SQRT1_2, y: -Math.SQRT1_2 };
    const lines = hatchOf(square, { apart: 1.7, way, dash: 1.5, gap: 1.4 });
    expect(lines.length).toBeGreaterThan(10);
    for (const p of lines.flat()) {
      expect(Math.min(p.x, p.y)).toBeGreaterThan(-1e-6);
      expect(Math.max(p.x, p.y)).toBeLessThan(10 + 1e-6);
    }
  });
});

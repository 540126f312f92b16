import { describe, expect, test } from "vitest";
import { anyCrosses, crossesBox, isInside } from "../../src/export/clip.ts";

const box = { left: 0, top: 0, right: 10, bottom: 5 };

describe("a straight and a rectangle", () => {
  test.each([
    ["runs through", { x: -5, y: 2 }, { x: 15, y: 3 }, true],
    ["lies inside", { x: 2, y: 2 }, { x: 3, y: 3 }, true],
    ["passes a corner outside", { x: -3, y: 2 }, { x: 2, y: -3 }, false],
    ["touches the edge", { x: -3, y: 5 }, { x: 3, y: 5 }, true],
    ["ends before it", { x: -9, y: 2 }, { x: -1, y: 2 }, false],
    ["is a point beside it", { x: 12, y: 2 }, { x: 12, y: 2 }, false],
  ])("meet where the straight %s: %o to %o, %s", (_, a, b, meets) => {
    expect(crossesBox(a, b, box)).toBe(meets);
    expect(crossesBox(b, a, box)).toBe(meets);
    expect(anyCrosses([[a, b]], box)).toBe(meets);
  });
});

describe("a point", () => {
  const hook = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 6, y: 10 },
    { x: 6, y: 4 },
    { x: 0, y: 4 },
    { x: 0, y: 0 },
  ];

  test("lies inside a hooked outline on both sides of its bend, and outside in its hollow", () => {
    expect(isInside(hook, { x: 2, y: 2 })).toBe(true);
    expect(isInside(hook, { x: 8, y: 8 })).toBe(true);
    expect(isInside(hook, { x: 3, y: 7 })).toBe(false);
  });
});

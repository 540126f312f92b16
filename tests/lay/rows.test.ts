import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Boxed, packRows, type Room } from "../../src/lay/rows.ts";

const box = (across: number, along: number, onFold = false): Boxed => ({ across, along, onFold });

/** Every way of sharing things out to rows, by growing each row in turn: no set, no memory. */
const shortestByTrying = (items: readonly Boxed[], room: Room): number => {
  const tried = (left: readonly Boxed[], rows: readonly (readonly Boxed[])[]): number => {
    const [next, ...others] = left;
    if (!next) {
      return rows.reduce((sum, row) => sum + Math.max(...row.map(({ along }) => along)), 0);
    }
    let best = Infinity;
    for (let i = 0; i <= rows.length; i++) {
      const row = [...(rows[i] ?? []), next];
      const wide = row.reduce((sum, { across }) => sum + across, room.gap * (row.length - 1));
      if (wide > room.width || row.filter(({ onFold }) => onFold).length > 1) continue;
      best = Math.min(best, tried(others, [...rows.slice(0, i), row, ...rows.slice(i + 1)]));
    }
    return best;
  };
  return tried(items, []);
};

const lengthOf = (items: readonly Boxed[], room: Room): number =>
  packRows(items, room)?.reduce((sum, { along }) => sum + along, 0) ?? Infinity;

describe("things in rows", () => {
  test("of 600 and 500 across lie in one row of a cloth of 1500, not of one of 1100", () => {
    const two = [box(600, 700), box(500, 650)];
    expect(lengthOf(two, { width: 1500, gap: 10 })).toBe(700);
    expect(lengthOf(two, { width: 1100, gap: 10 })).toBe(1350);
  });

  test("that just fit do fit: 490 + 10 + 500 on 1000", () => {
    expect(lengthOf([box(490, 1), box(500, 1)], { width: 1000, gap: 10 })).toBe(1);
  });

  test("wider than the cloth are not laid", () => {
    expect(packRows([box(801, 5)], { width: 800, gap: 10 })).toBeNull();
  });

  test("on the fold lie one to a row, and first in it", () => {
    const rows = packRows([box(100, 9), box(200, 9, true), box(200, 9, true)], {
      width: 1000,
      gap: 0,
    });
    expect(rows?.length).toBe(2);
    for (const { items } of rows ?? []) expect(items[0]?.onFold).toBe(true);
  });

  test("are as short as trying every way finds them", () => {
    const size = fc.integer({ min: 1, max: 60 });
    const thing = fc
      .tuple(size, size, fc.boolean())
      .map(([across, along, onFold]) => box(across, along, onFold));
    const room = fc.record({ width: fc.integer({ min: 60, max: 150 }), gap: fc.nat(9) });
    fc.assert(
      fc.property(fc.array(thing, { minLength: 1, maxLength: 6 }), room, (things, space) => {
        expect(lengthOf(things, space)).toBe(shortestByTrying(things, space));
      }),
      { numRuns: 300 },
    );
  });

  test("hold every thing once", () => {
    const things = [3, 1, 4, 1, 5, 9, 2, 6].map((n, i) => box(n * 10, 100 - i));
    const rows = packRows(things, { width: 100, gap: 5 }) ?? [];
    expect(new Set(rows.flatMap(({ items }) => items)).size).toBe(things.length);
  });
});

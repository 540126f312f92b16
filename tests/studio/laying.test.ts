import { describe, expect, test } from "vitest";
import { layOut } from "../../src/export/layout.ts";
import type { Placement } from "../../src/export/placement.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import { movedBy, overlaps, placedBox, turnedAQuarter } from "../../src/studio/table/laying.ts";
import { garmentOf } from "../support/garments.ts";

const { pieces } = garmentOf();
const sheets = layOut(pieces, "a4");
const ROOM = { left: 1.5, top: 1.5, right: 3000, bottom: 3000 };
const pieceOf = (name: string) => {
  const piece = pieces.find((one) => one.name === name);
  const at = sheets.placements.find((one) => one.piece === name);
  if (!piece || !at) throw new Error(name);
  return { piece, at, box: placedBox(piece, at) };
};

describe("a piece laid by hand", () => {
  const { piece, at, box } = pieceOf("sleeve");

  test("goes as far as the hand, to a tenth", () => {
    const to = movedBy(at, box, { x: 100.04, y: 33.33 }, ROOM);
    expect(to.x - at.x).toBeCloseTo(100, 1);
    expect(to.y - at.y).toBeCloseTo(33.3, 1);
    expect(to.turn).toBe(at.turn);
  });

  test("stays on the drawing, however far it is pulled", () => {
    const off = movedBy(at, box, { x: -1e6, y: -1e6 }, ROOM);
    const there = placedBox(piece, off);
    expect(there.left).toBeGreaterThanOrEqual(ROOM.left - 0.06);
    expect(there.top).toBeGreaterThanOrEqual(ROOM.top - 0.06);
    const far = placedBox(piece, movedBy(at, box, { x: 1e6, y: 1e6 }, ROOM));
    expect(far.right).toBeLessThanOrEqual(ROOM.right + 0.06);
    expect(far.bottom).toBeLessThanOrEqual(ROOM.bottom + 0.06);
  });

  test("turned a quarter has its sides changed round, and after four lies as before", () => {
    const roomy: Placement = { ...at, x: at.x + 800, y: at.y + 800 };
    const before = placedBox(piece, roomy);
    const once = turnedAQuarter(piece, roomy, ROOM);
    const after = placedBox(piece, once);
    expect(after.right - after.left).toBeCloseTo(before.bottom - before.top, 6);
    expect((after.left + after.right) / 2).toBeCloseTo((before.left + before.right) / 2, 0);
    let four = roomy;
    for (let i = 0; i < 4; i++) four = turnedAQuarter(piece, four, ROOM);
    expect(four.turn).toBe((roomy.turn + 360) % 360);
    const again = placedBox(piece, four);
    expect(Math.abs(again.left - before.left)).toBeLessThan(0.3);
    expect(Math.abs(again.top - before.top)).toBeLessThan(0.3);
  });

  test("is cut into sheets where it was laid, and the others where they stood", () => {
    const to = movedBy(at, box, { x: 37, y: 21 }, ROOM);
    const placed = sheets.placements.map((own) => (own.piece === "sleeve" ? to : own));
    const laid = layOut(pieces, "a4", { ...DEFAULT_PRINT, placed });
    expect(laid.placements.map(({ piece: name }) => name).sort()).toEqual(
      sheets.placements.map(({ piece: name }) => name).sort(),
    );
    for (const own of placed) expect(laid.placements).toContainEqual(own);
  });
});

describe("pieces over each other", () => {
  test("are none as they are packed", () => {
    expect(overlaps(pieces, sheets.placements)).toEqual([]);
  });
  test("are told in pairs, one inside the other too", () => {
    const { box: sleeve } = pieceOf("sleeve");
    const { at, box } = pieceOf("vInsert");
    const middle = {
      x: (sleeve.left + sleeve.right - box.left - box.right) / 2,
      y: (sleeve.top + sleeve.bottom - box.top - box.bottom) / 2,
    };
    const on = { ...at, x: at.x + middle.x, y: at.y + middle.y };
    const placed = sheets.placements.map((own) => (own.piece === "vInsert" ? on : own));
    expect(overlaps(pieces, placed).map((pair) => [...pair].sort())).toEqual([
      ["sleeve", "vInsert"],
    ]);
  });
});

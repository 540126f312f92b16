import { describe, expect, test } from "vitest";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { lesson } from "../../src/guide/lesson.ts";
import { CLASS_START, changeOfKey } from "../../src/studio/classroom/classKeys.ts";
import {
  classLayout,
  linesOf,
  numberSpot,
  pathAt,
  toldNumbers,
} from "../../src/studio/classroom/classLayout.ts";
import { garmentOf } from "../support/garments.ts";

const LAST = 6;
const pressed = (keys: readonly string[]) =>
  keys.reduce((state, key) => changeOfKey(key)?.(state, LAST) ?? state, CLASS_START);

describe("the teacher's keys", () => {
  test.each([
    [["ArrowRight", " ", "PageDown", "ArrowDown"], 4],
    [["ArrowRight", "ArrowRight", "ArrowLeft"], 1],
    [["ArrowLeft", "PageUp"], 0],
    [["End", "ArrowRight"], LAST],
    [["End", "Home"], 0],
  ] as const)("%j leads to step %i", (keys, at) => {
    expect(pressed(keys).at).toBe(at);
  });
  test("N, A, L and B turn, in capitals too", () => {
    expect(pressed(["n", "A", "L", "b"])).toMatchObject({
      numbers: false,
      answers: true,
      black: true,
      blank: true,
    });
    expect(pressed(["n", "n", "a", "a", "l", "l", "b", "b"])).toEqual(CLASS_START);
  });
  test("the next step hides the answers, and keeps ground and numbers", () => {
    expect(pressed(["n", "a", "l", " "])).toMatchObject({
      at: 1,
      numbers: false,
      answers: false,
      black: true,
    });
  });
  test("R plays the step again; at the end there is nothing further", () => {
    expect(pressed(["r", "r"]).plays).toBe(2);
    expect(pressed(["End", "a", " "])).toMatchObject({ at: LAST, answers: true });
  });
  test.each(["x", "Enter", "Tab", "constructor"])("%s is none of them", (key) => {
    expect(changeOfKey(key)).toBeUndefined();
  });
});

describe("the drawing of a step", () => {
  const room = { width: 640, height: 500 };
  const steps = lesson(garmentOf());

  test.each(steps.map((step) => [step.id, step] as const))("%s lies within its room", (_, step) => {
    const { scale, placed } = classLayout(step, room);
    expect(placed).toHaveLength(step.after.length);
    for (const { box, x, y } of placed) {
      expect(box.left * scale + x).toBeGreaterThanOrEqual(-1e-6);
      expect(box.right * scale + x).toBeLessThanOrEqual(room.width + 1e-6);
      expect(box.top * scale + y).toBeGreaterThanOrEqual(-1e-6);
      expect(box.bottom * scale + y).toBeLessThanOrEqual(room.height + 1e-6);
    }
  });

  const hem = steps.find(({ id }) => id === "hem");
  const front = hem && classLayout(hem, room).placed.find(({ piece }) => piece === "front");

  test("a raised hem moves from the old line to the new, and the neckline stays", () => {
    const lines = front ? linesOf(front) : [];
    const moving = lines.find(({ name, kind }) => name === "hem" && kind === "moves");
    const old = lines.find(({ name, kind }) => name === "hem" && kind === "old");
    expect(moving && old).toBeDefined();
    if (!moving || !old) return;
    expect(startOf(pathAt(moving, 0)).y).toBeCloseTo(startOf(old.path).y, 9);
    expect(startOf(old.path).y - endOf(pathAt(moving, 1)).y).toBeCloseTo(50.8, 6);
    expect(startOf(old.path).y - startOf(pathAt(moving, 0.5)).y).toBeCloseTo(25.4, 6);
    expect(lines.find(({ name }) => name === "neckline")?.kind).toBe("stays");
  });
  test("the hem's number stands below the hem, level with it", () => {
    const number = hem?.numbers.find(({ piece, edge }) => piece === "front" && edge === "hem");
    expect(number && front).toBeDefined();
    if (!number || !front) return;
    const spot = numberSpot(number, front, 1);
    expect(spot.y).toBeGreaterThan(number.at.y + front.y);
    expect(spot.turn).toBeCloseTo(0, 6);
  });
  test("a band says each of its two lengths once", () => {
    const bands = steps.find(({ id }) => id === "bands");
    expect(toldNumbers(bands?.numbers ?? [])).toHaveLength(6);
  });
});

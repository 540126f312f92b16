import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  begun,
  changed,
  type History,
  letGo,
  MOST_STEPS,
  redone,
  undone,
} from "../../src/studio/state/history.ts";

const set = (history: History<number, string>, to: number, gesture?: string) =>
  changed(history, {
    to,
    name: (before) => `${before} to ${to}`,
    ...(gesture === undefined ? {} : { gesture }),
  });

const walk = <V, N>(
  from: History<V, N>,
  step: (h: History<V, N>) => History<V, N>,
): History<V, N> => {
  const next = step(from);
  return next === from ? from : walk(next, step);
};

describe("undo and redo", () => {
  test("to the start and to the end give the same values, whatever was done", () => {
    const values = fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 });
    fc.assert(
      fc.property(values, (list) => {
        const end = list.reduce((h, v) => set(h, v), begun<number, string>(-1));
        const start = walk(end, undone);
        expect(start.present).toBe(-1);
        const again = walk(start, redone);
        expect(again.present).toBe(end.present);
        expect(again.past.map((s) => s.name)).toEqual(end.past.map((s) => s.name));
      }),
      { seed: 5, endOnFailure: true },
    );
  });

  test("take one gesture as one step, named from its start to its end", () => {
    const h = set(set(set(begun<number, string>(1), 2, "a"), 3, "a"), 4, "b");
    expect(h.past.map((s) => s.name)).toEqual(["1 to 3", "3 to 4"]);
    expect(undone(undone(h)).present).toBe(1);
  });

  test("forget what was undone once something new is done", () => {
    const h = set(undone(set(set(begun<number, string>(1), 2), 3)), 9);
    expect(redone(h)).toBe(h);
  });

  test("keep a change that changes nothing out", () => {
    const h = begun<number, string>(1);
    expect(set(h, 1)).toBe(h);
  });

  test("a gesture let go leaves no step", () => {
    const h = set(begun<number, string>(1), 5, "drag");
    expect(letGo(h, "drag")).toEqual({ present: 1, past: [], future: [] });
    expect(letGo(h, "other")).toBe(h);
  });

  test("a step done again does not grow with a later gesture of the same name", () => {
    const h = set(redone(undone(set(begun<number, string>(1), 2, "keys"))), 3, "keys");
    expect(h.past).toHaveLength(2);
  });

  test("keep a bounded number of steps", () => {
    const list = Array.from({ length: MOST_STEPS + 50 }, (_, i) => i);
    expect(list.reduce((h, v) => set(h, v), begun<number, string>(-1)).past).toHaveLength(
      MOST_STEPS,
    );
  });
});

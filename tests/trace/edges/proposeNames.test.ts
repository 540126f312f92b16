import { describe, expect, test } from "vitest";
import type { Path } from "../../../src/geometry/segment.ts";
import { splitAt } from "../../../src/geometry/split.ts";
import { likenessOf, proposeNames } from "../../../src/trace/edges/proposeNames.ts";
import { soundOutline } from "../../../src/trace/edges/soundOutline.ts";
import { drafted, flipped, halfRing, laid, sampleBodies, sleeveRing, wholeRing } from "./shapes.ts";

const best = (runs: readonly Path[]) => {
  const [first] = proposeNames(runs);
  if (!first) throw new Error("no proposal");
  return first;
};
const told = (runs: readonly Path[]) => {
  const { piece, isWhole } = best(runs);
  return `${isWhole ? "whole" : "half"} ${piece}`;
};

describe("an outline is named by its shape", () => {
  test("on all 40 sample bodies, laid at any angle, whole or half, either side up", () => {
    for (const [i, body] of sampleBodies().entries()) {
      const block = drafted(body);
      const angle = i * 0.7;
      expect([i, told(laid(halfRing(block.front), angle))]).toEqual([i, "half front"]);
      expect([i, told(laid(halfRing(block.back), angle))]).toEqual([i, "half back"]);
      expect([i, told(flipped(laid(halfRing(block.back), angle)))]).toEqual([i, "half back"]);
      expect([i, told(laid(wholeRing(block.front), angle))]).toEqual([i, "whole front"]);
      expect([i, told(laid(wholeRing(block.back), angle))]).toEqual([i, "whole back"]);
      expect([i, told(laid(sleeveRing(block), angle))]).toEqual([i, "half sleeve"]);
      expect([i, told(flipped(laid(sleeveRing(block), angle)))]).toEqual([i, "half sleeve"]);
    }
  });

  test("each corner where it belongs: the ring begins at the neckline", () => {
    const ring = laid(halfRing(drafted().front), 1.1);
    // It was begun at its third corner, so the neckline is its fourth run.
    expect(best(ring).ring[0]).toEqual(ring[3]);
  });

  test("a piece that lay with its other side up is turned over", () => {
    const ring = laid(halfRing(drafted().front), 0.4);
    expect(best(ring).isTurnedOver).toBe(false);
    expect(best(flipped(ring)).isTurnedOver).toBe(true);
  });

  test("corners found where there are none are left out", () => {
    const ring = laid(halfRing(drafted().front), 0.4, 0);
    const raglan = ring[1];
    if (!raglan) throw new Error("no raglan");
    const split = [...ring.slice(0, 1), ...splitAt(raglan, 100), ...ring.slice(2)];
    const named = best(split);
    expect(named.piece).toBe("front");
    expect(named.ring).toHaveLength(5);
    expect(named.score).toBeGreaterThan(0.4);
  });

  test("a name that does not fit scores low", () => {
    const { front } = drafted();
    const ring = halfRing(front);
    const asFront = likenessOf({ piece: "front", isWhole: false, isTurnedOver: false, ring });
    const asBack = likenessOf({ piece: "back", isWhole: false, isTurnedOver: false, ring });
    expect(asFront).toBeGreaterThan(0.5);
    expect(asBack).toBeLessThan(asFront / 1.5);
  });

  test("an outline of three corners is not guessed at", () => {
    expect(proposeNames(halfRing(drafted().front).slice(0, 3))).toEqual([]);
  });
});

describe("an outline", () => {
  const ring = halfRing(drafted().front);

  test("that is open is told, with the gap", () => {
    const open = soundOutline("front", ring.slice(0, 4));
    expect("fault" in open && open.fault.reason).toMatch(
      /outline of the front is open: run 4 ends [\d.]+\smm from/,
    );
  });

  test("that crosses itself is told, with the place", () => {
    const [a, b, c] = [
      { x: 0, y: 0 },
      { x: 100, y: 100 },
      { x: 100, y: 0 },
    ];
    const d = { x: 0, y: 100 };
    const bow: readonly Path[] = [
      [{ kind: "line", start: a, end: b }],
      [{ kind: "line", start: b, end: c }],
      [{ kind: "line", start: c, end: d }],
      [{ kind: "line", start: d, end: a }],
    ];
    const crossing = soundOutline("back", bow);
    expect("fault" in crossing && crossing.fault.reason).toMatch(
      /crosses itself near \(50.0, 50.0\)/,
    );
  });

  test("drawn anticlockwise is turned round", () => {
    const round = soundOutline("front", flipped(ring));
    expect("found" in round).toBe(true);
  });
});

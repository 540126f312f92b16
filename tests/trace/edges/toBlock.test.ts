import { describe, expect, test } from "vitest";
import type { Block } from "../../../src/drafting/piece.ts";
import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { nearestOnPath } from "../../../src/geometry/nearest.ts";
import { mapPath } from "../../../src/geometry/path.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { foldWhole } from "../../../src/trace/edges/foldWhole.ts";
import { type NamedOutline, proposeNames } from "../../../src/trace/edges/proposeNames.ts";
import { type NamedBlock, toBlock } from "../../../src/trace/edges/toBlock.ts";
import { drafted, flipped, halfRing, laid, sleeveRing, wholeRing } from "./shapes.ts";

const BLOCK = drafted();

const named = (runs: readonly Path[]): NamedOutline => {
  const [first] = proposeNames(runs);
  if (!first) throw new Error("no proposal");
  return first;
};

const NAMED: NamedBlock = {
  front: named(laid(halfRing(BLOCK.front), 0.3)),
  back: named(laid(halfRing(BLOCK.back), -2)),
  sleeve: named(laid(sleeveRing(BLOCK), 1.4)),
  allowances: null,
};

const brought = (changed: Partial<NamedBlock> = {}) => {
  const told = toBlock({ ...NAMED, ...changed });
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

const EDGES = ["neckline", "raglan", "side", "hem", "centre"] as const;

/** How far the lines of two blocks lie apart at most, mm. */
const farthest = (a: Block, b: Block): number => {
  let far = 0;
  const compare = (one: Path, other: Path): void => {
    for (const s of one) {
      for (const t of [0, 0.3, 0.6, 1])
        far = Math.max(far, nearestOnPath(other, pointAt(s, t)).away);
    }
  };
  for (const edge of EDGES) {
    compare(a.front[edge], b.front[edge]);
    compare(a.back[edge], b.back[edge]);
  }
  for (const [i, path] of sleeveRing(a).entries()) compare(path, sleeveRing(b)[i] ?? path);
  return far;
};

describe("a block from three outlines", () => {
  test("laid anyhow is the block again, in the contract's frames, to 1e-5 mm", () => {
    expect(farthest(brought().block, BLOCK)).toBeLessThan(1e-5);
  });

  test("says what it had to assume", () => {
    expect(brought().assumed.join(" ")).toMatch(
      /nape was taken to lie 16\smm above.*underarms are level/s,
    );
  });

  test("drawn whole is folded, drawn with the other side up is turned over", () => {
    const { block, assumed } = brought({
      front: named(laid(wholeRing(BLOCK.front), 2)),
      back: named(flipped(laid(halfRing(BLOCK.back), 1))),
    });
    expect(farthest(block, BLOCK)).toBeLessThan(1e-4);
    expect(assumed[0]).toMatch(
      /The whole front was folded on its middle; its halves lay up to 0\smm apart/,
    );
  });

  test("with front and back taken for each other is told", () => {
    const told = toBlock({ ...NAMED, front: NAMED.back, back: NAMED.front });
    expect("fault" in told && told.fault.reason).toMatch(
      /front and back seem to be taken for each other/,
    );
  });

  test("with a sleeve of five edges is told", () => {
    const told = toBlock({ ...NAMED, sleeve: NAMED.front });
    expect("fault" in told && told.fault.reason).toMatch(/The sleeve has 5 edges/);
  });
});

describe("a whole piece whose halves differ", () => {
  const ring = wholeRing(BLOCK.back);
  const askew = (by: number) =>
    ring.map((path) => mapPath(path, ({ x, y }) => ({ x: x < 0 ? x * by : x, y })));

  test("becomes the mean of both, and the difference is told", () => {
    const told = foldWhole(askew(1.01));
    if ("fault" in told) throw new Error(told.fault.reason);
    const { edges, apart, error } = told.found;
    expect(Math.max(...Object.values(apart))).toBeGreaterThan(1);
    expect(Math.max(...Object.values(apart))).toBeLessThan(4);
    expect(error).toBeLessThan(0.1);
    const hem = lengthOf(BLOCK.back.hem);
    expect(lengthOf(edges.hem)).toBeCloseTo(hem * 1.005, 1);
  });

  test("by more than 15 mm cannot be folded", () => {
    const told = foldWhole(askew(1.2));
    expect("fault" in told && told.fault.reason).toMatch(/its two halves lie up to/);
  });
});

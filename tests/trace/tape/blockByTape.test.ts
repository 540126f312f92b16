import { describe, expect, test } from "vitest";
import { crossingsAlong } from "../../../src/geometry/crossings.ts";
import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { nearestOnPath } from "../../../src/geometry/nearest.ts";
import { endOf, startOf } from "../../../src/geometry/path.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { pointAlong } from "../../../src/geometry/split.ts";
import { examine } from "../../../src/trace/doctor/examine.ts";
import { blockByTape } from "../../../src/trace/tape/blockByTape.ts";
import type { RaglanOffsets, TapeMeasures } from "../../../src/trace/tape/tapeMeasures.ts";
import { drafted } from "../edges/shapes.ts";

const BLOCK = drafted();

/** What a tape reads off a raglan laid flat: its way from the chord at the quarters. */
const offsetsOf = (path: Path): RaglanOffsets => {
  const [a, b] = [startOf(path), endOf(path)];
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  const way = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
  const at = (share: number): number => {
    const level = a.x * way.x + a.y * way.y + share * size;
    const [along = 0] = crossingsAlong(path, way, level);
    const p = pointAlong(path, along);
    return (p.x - a.x) * way.y - (p.y - a.y) * way.x;
  };
  return [at(0.25), at(0.5), at(0.75)];
};

/** The worked example as a tape would measure it (method 8): a = 92, the neck point at -11.7341. */
const TAPE: TapeMeasures = {
  halfWidth: 275,
  neckHalfWidth: 92,
  frontNeckDepth: 84.75 + 11.7341,
  backNeckDepth: 16 + 11.7341,
  raglanDepth: startOf(BLOCK.front.side).y,
  frontOffsets: offsetsOf(BLOCK.front.raglan),
  backOffsets: offsetsOf(BLOCK.back.raglan),
  sideLength: lengthOf(BLOCK.front.side),
  hemHalfWidth: endOf(BLOCK.front.side).x,
  sleeveWidth: 2 * startOf(BLOCK.sleeve.underarmFront).x,
  wristWidth: lengthOf(BLOCK.sleeve.wrist),
  underarmLength: lengthOf(BLOCK.sleeve.underarmFront),
};

const taped = (changed: Partial<TapeMeasures> = {}) => {
  const told = blockByTape({ ...TAPE, ...changed });
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};
const reason = (changed: Partial<TapeMeasures>): string => {
  const told = blockByTape({ ...TAPE, ...changed });
  return "fault" in told ? told.fault.reason : "It was taken.";
};

describe("a block by tape alone", () => {
  test("is the drafted block again from its own lengths, every line within 0.2 mm", () => {
    const { block } = taped();
    for (const piece of ["front", "back", "sleeve"] as const) {
      for (const [name, path] of Object.entries(block[piece])) {
        const [, truth] = Object.entries(BLOCK[piece]).find(([edge]) => edge === name) ?? [];
        if (!truth) throw new Error(name);
        for (const s of path) {
          for (const t of [0, 0.25, 0.5, 0.75, 1]) {
            expect(nearestOnPath(truth, pointAt(s, t)).away).toBeLessThan(0.2);
          }
        }
      }
    }
  });

  test("has the lengths that were measured, and every seam meets", () => {
    const { block } = taped({ sideLength: 300, underarmLength: 420, hemHalfWidth: 262 });
    expect(lengthOf(block.front.side)).toBeCloseTo(300, 6);
    expect(lengthOf(block.sleeve.underarmFront)).toBeCloseTo(420, 6);
    expect(lengthOf(block.front.hem)).toBeCloseTo(262, 9);
    for (const { id, value } of examine(block)) {
      if (id.endsWith("-match")) expect(value).toBeLessThan(1e-6);
    }
  });

  test("tells what it had to assume", () => {
    const { assumed } = taped({ frontOffsets: null });
    expect(assumed.join(" ")).toMatch(
      /46.5\smm \(front\).*nape.*hem is straight.*without offsets/s,
    );
  });

  test.each([
    [{ halfWidth: 27.5 }, /half width at the underarm is 27.5\smm; it must be from 120/],
    [{ raglanDepth: Number.NaN }, /depth from the nape to the underarm/],
    [{ hemHalfWidth: 590 }, /side would lie nearly flat/],
    [{ neckHalfWidth: 180 }, /half width of the neck is 180\smm/],
    [{ raglanDepth: 130 }, /raglan would run nearly level/],
    [{ frontOffsets: [20, -20, 20] as const }, /offsets of the front raglan lie on no smooth line/],
    [{ sleeveWidth: 700 }, /sleeve/i],
  ])("refuses %o with one sentence", (changed, words) => {
    expect(reason(changed)).toMatch(words);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BlockFile } from "../../src/drafting/blockFile.ts";
import type { Fault } from "../../src/drafting/fault.ts";
import { readOwnBlock } from "../../src/drafting/ownBlock.ts";
import type { Block } from "../../src/drafting/piece.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, mapPath, startOf } from "../../src/geometry/path.ts";
import { apart, point } from "../../src/geometry/point.ts";
import { edgesOfBody, edgesOfSleeve, expectChained, near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";
import {
  fileOf,
  IN_THREE,
  mapBlock,
  OWN_BLOCKS,
  redrawn,
  someOwnBlock,
} from "../support/ownBlocks.ts";
import { DRAFTED } from "../support/workedGarment.ts";

const readOf = (file: BlockFile): Block => {
  const read = readOwnBlock(file);
  if ("fault" in read) throw new Error(`${read.fault.reason} ${read.fault.do}`);
  return read.block;
};

const allOf = ({ front, back, sleeve }: Block) => [
  ...edgesOfBody(front),
  ...edgesOfBody(back),
  ...edgesOfSleeve(sleeve),
];

/** Every edge of two blocks is of one length and ends in one place, within so much. */
const expectBlock = (found: Block, wanted: Block, within: number): void => {
  const [a, b] = [allOf(found), allOf(wanted)];
  a.forEach((path, i) => {
    const other = b[i] ?? path;
    near(lengthOf(path), lengthOf(other), within);
    near(apart(startOf(path), startOf(other)), 0, within);
    near(apart(endOf(path), endOf(other)), 0, within);
  });
};

describe.each(OWN_BLOCKS)("reading %s from its file", (_, block) => {
  test.each([
    ["mm", 2e-5],
    ["cm", 2e-4],
    ["in", 5e-4],
  ] as const)(
    "in %s gives it back, within what six decimals of that unit carry",
    (unit, within) => {
      expectBlock(readOf(fileOf(block, unit)), block, within);
    },
  );
});

describe("a block that was read", () => {
  test("closes on every piece", () => {
    const block = readOf(fileOf(IN_THREE));
    expectChained(edgesOfBody(block.front), 1e-9);
    expectChained(edgesOfBody(block.back), 1e-9);
    expectChained(edgesOfSleeve(block.sleeve), 1e-9);
  });

  test("has its sleeve in its frame, wherever it was drawn", () => {
    const lower = {
      ...DRAFTED,
      sleeve: mapBlock(DRAFTED, (path) => mapPath(path, ({ x, y }) => point(x, y + 300))).sleeve,
    };
    const { sleeve } = readOf(fileOf(lower));
    near(startOf(sleeve.underarmFront).y, 0, 1e-9);
    near(startOf(sleeve.neckline).y, startOf(DRAFTED.sleeve.neckline).y, 1e-5);
  });

  test("is read as it stands however its edges are drawn, where it is sound", () => {
    holdsFor(5401, someOwnBlock, (block) => {
      const read = readOwnBlock(fileOf(block));
      if ("fault" in read) {
        // Bows may make an edge cross itself or another; then the edge is named.
        expect(read.fault.reason).toMatch(/crosses itself/);
        return;
      }
      expectBlock(read.block, block, 2e-5);
    });
  });

  test("keeps what does not match: the checks tell of it", () => {
    const [, , , [, unequal] = ["", null]] = OWN_BLOCKS;
    if (!unequal) throw new Error("There is no fourth block.");
    const { front, back } = readOf(fileOf(unequal));
    expect(lengthOf(back.side) - lengthOf(front.side)).toBeGreaterThan(5);
  });
});

/** One edge of one piece given otherwise. */
const withEdge = (
  piece: "front" | "back" | "sleeve",
  edge: string,
  text: (was: string) => string,
): BlockFile => {
  const file = fileOf(DRAFTED);
  const pieces = structuredClone(file.pieces);
  const edges: Record<string, string> = pieces[piece];
  edges[edge] = text(edges[edge] ?? "");
  return { ...file, pieces };
};

const faultOf = (file: BlockFile): Fault => {
  const read = readOwnBlock(file);
  if (!("fault" in read)) throw new Error("The block was read.");
  return read.fault;
};

describe("edges that hardly meet", () => {
  const side = (x: number): BlockFile => withEdge("front", "side", () => `M${x} 247 L273.5 572`);

  test("by up to half a millimetre are joined at the end of the one before", () => {
    const { front } = readOf(side(275.49));
    expect(startOf(front.side)).toEqual(endOf(front.raglan));
    near(startOf(front.side).x, 275, 1e-5);
  });

  test("by more are refused, both edges named with the gap and its limit", () => {
    expect(faultOf(side(275.6))).toEqual({
      field: "front.side",
      value: "(275.6, 247.0)",
      reason:
        "front.side starts at (275.6, 247.0) and front.raglan ends at (275.0, 247.0), 0.6\u00a0mm apart; the limit is 0.5\u00a0mm.",
      do: "Draw the edges so that each starts where the one before ends, clockwise round the piece.",
    });
  });

  test("at the fold within half a millimetre are set on it", () => {
    const aside = mapBlock(DRAFTED, (path) => mapPath(path, ({ x, y }) => point(x + 0.4, y)));
    const { front } = readOf(fileOf({ ...aside, sleeve: DRAFTED.sleeve }));
    expect([startOf(front.neckline).x, endOf(front.hem).x]).toEqual([0, 0]);
    near(endOf(front.raglan).x, 275.4, 1e-5);
  });
});

describe("a block that is refused", () => {
  test("has an edge that cannot be read", () => {
    const fault = faultOf(withEdge("back", "raglan", (was) => was.replace("C", "Q")));
    expect(fault.field).toBe("back.raglan");
    expect(fault.reason).toBe(
      "The line of back.raglan cannot be read: the mark “Q” is not M, L or C.",
    );
    expect(fault.do).toBe("Write it as one run of path data with absolute M, L and C.");
  });

  test("has an empty edge", () => {
    expect(faultOf(withEdge("sleeve", "wrist", () => "")).reason).toContain("it draws nothing");
  });

  test("lies off the fold", () => {
    const aside = mapBlock(DRAFTED, (path) => mapPath(path, ({ x, y }) => point(x + 9, y)));
    expect(faultOf(fileOf({ ...aside, sleeve: DRAFTED.sleeve }))).toEqual({
      field: "front.neckline",
      value: "9\u00a0mm",
      reason:
        "front.neckline meets the fold at x = 9\u00a0mm; the fold is x = 0, and the limit is 0.5\u00a0mm.",
      do: "Move the piece so that its centre line lies on x = 0.",
    });
  });

  test("runs anticlockwise", () => {
    const mirrored = mapBlock(DRAFTED, (path) => mapPath(path, ({ x, y }) => point(-x, y)));
    const fault = faultOf(fileOf({ ...mirrored, sleeve: DRAFTED.sleeve }));
    expect(fault.field).toBe("front");
    expect(fault.reason).toContain("runs anticlockwise");
    expect(fault.do).toContain("mirror the piece");
  });

  test("has an edge with a loop in it, which is named", () => {
    const fault = faultOf(withEdge("front", "side", () => "M275 247 C700 900 700 -100 273.5 572"));
    expect(fault.field).toBe("front.side");
    expect(fault.reason).toMatch(/^The line of front\.side crosses itself near \(.+\)\.$/);
  });

  test("has edges that cross each other", () => {
    const dip = "M273.5 572 L200 100 L100 572 L0 572";
    const fault = faultOf(withEdge("back", "hem", () => dip));
    expect(fault.field).toBe("back");
    expect(fault.reason).toContain("crosses itself near");
    expect(fault.do).toBe("Redraw the edge so that the outline does not cross itself.");
  });

  test("was drawn in centimetres and said to be in inches", () => {
    const fault = faultOf({ ...fileOf(DRAFTED, "mm"), unit: "in" });
    expect(fault.reason).toContain("the limit is 3000\u00a0mm");
    expect(fault.do).toBe("Check the unit of the block.");
  });

  test("has a handle that was dragged far away, though its ends lie well", () => {
    const far = fileOf(DRAFTED);
    const side = far.pieces.front.side.replace(/C\S+ \S+/, "C90000 300");
    const front = { ...far.pieces.front, side };
    const fault = faultOf({ ...far, pieces: { ...far.pieces, front } });
    expect(fault.reason).toMatch(/^front\.side reaches 90000\u00a0mm from the frame's origin/);
  });

  // It leaves the fold to the left before it turns: no line crosses another.
  test("has an edge that reaches over the fold", () => {
    const file = fileOf(DRAFTED);
    const neckline = file.pieces.front.neckline.replace(/C\S+ \S+/, "C-60 40");
    const front = { ...file.pieces.front, neckline };
    const fault = faultOf({ ...file, pieces: { ...file.pieces, front } });
    expect(fault.field).toBe("front.neckline");
    expect(fault.reason).toMatch(
      /^front\.neckline reaches .+ over the fold at x = 0; the limit is 0\.5\u00a0mm\.$/,
    );
  });

  test("has an edge that is too short to sew", () => {
    const tiny = mapBlock(DRAFTED, (path) =>
      mapPath(path, ({ x, y }) => point(x / 1000, y / 1000)),
    );
    const fault = faultOf(fileOf(tiny));
    expect(fault.reason).toMatch(/^front\.\w+ is 0\.?\d*\u00a0mm long; the least is 1\u00a0mm\.$/);
    expect(fault.do).toBe("Draw the edge, and check the unit of the block.");
  });

  test("is told of its first fault, front before back before sleeve", () => {
    const file = withEdge("sleeve", "wrist", () => "");
    const both = { ...file, pieces: { ...file.pieces, back: { ...file.pieces.back, hem: "" } } };
    expect(faultOf(both).field).toBe("back.hem");
  });
});

describe("a block given as cut lines", () => {
  const A = { raglan: 9.525, side: 9.525, underarm: 9.525, hem: 25.4, neckline: 6.35 };

  test("with allowances of nothing is the block itself", () => {
    const none = { raglan: 0, side: 0, underarm: 0, hem: 0, neckline: 0 };
    expectBlock(readOf(fileOf(IN_THREE, "mm", none)), IN_THREE, 2e-5);
  });

  test("comes out smaller by its allowances: 9.5 at the side, 25.4 at the hem", () => {
    const { front } = readOf(fileOf(DRAFTED, "mm", A));
    near(endOf(front.hem).y, 572 - 25.4, 1e-3);
    near(endOf(front.side).x, 273.5 - 9.525, 0.05);
    near(startOf(front.neckline).y, 84.75 + 6.35, 1e-3);
  });

  test("has its wrist moved by the hem's allowance and its underarms by their own", () => {
    const sleeveOf = (change: Partial<typeof A>) =>
      readOf(fileOf(DRAFTED, "mm", { ...A, ...change })).sleeve;
    const wristOf = (change: Partial<typeof A>) => startOf(sleeveOf(change).wrist).y;
    near(wristOf({ hem: 0 }) - wristOf({}), 25.4, 1e-3);
    const widthOf = (change: Partial<typeof A>) => startOf(sleeveOf(change).underarmFront).x;
    near(widthOf({ underarm: 0 }) - widthOf({}), 9.525 * Math.cos(Math.atan(100 / 409.94)), 0.2);
    near(widthOf({ hem: 0 }), widthOf({}), 1e-3);
  });

  test("has its allowances in the unit of the block", () => {
    const inches = { raglan: 0.375, side: 0.375, underarm: 0.375, hem: 1, neckline: 0.25 };
    expectBlock(readOf(fileOf(DRAFTED, "in", inches)), readOf(fileOf(DRAFTED, "mm", A)), 2e-3);
  });

  test("closes on every piece, the sleeve in its frame", () => {
    const block = readOf(fileOf(IN_THREE, "mm", A));
    expectChained(edgesOfBody(block.front), 1e-6);
    expectChained(edgesOfSleeve(block.sleeve), 1e-6);
    near(startOf(block.sleeve.underarmFront).y, 0, 1e-9);
  });

  // The side bows out by a quarter of its length, and all that is taken away is taken from it.
  test("is refused where edges that are moved in no longer meet", () => {
    const bowed = mapBlock(DRAFTED, (path, name) =>
      name === "side" ? redrawn(path, [0.25]) : path,
    );
    const oneSided = { raglan: 0, side: 30, underarm: 0, hem: 30, neckline: 30 };
    const fault = faultOf(fileOf({ ...DRAFTED, back: bowed.back }, "mm", oneSided));
    expect(fault.field).toBe("back.side");
    expect(fault.reason).toMatch(
      /^With the allowances taken away back\.side and back\.raglan do not meet; they end .+ apart\.$/,
    );
    expect(fault.do).toMatch(/^Give the two edges allowances that are more alike/);
  });

  test("is refused where its allowances leave nothing of an edge", () => {
    const small = mapBlock(DRAFTED, (path) => mapPath(path, ({ x, y }) => point(x / 20, y / 20)));
    const fault = faultOf(fileOf(small, "mm", { ...A, hem: 30, side: 30 }));
    expect(fault.reason).toMatch(/with the allowances taken away/i);
  });

  test("is closed on every piece, or refused, however it is drawn and whatever is taken away", () => {
    const width = fc.constantFrom(0, 6.35, 9.525, 30);
    const some = fc.record({
      raglan: width,
      side: width,
      underarm: width,
      hem: width,
      neckline: width,
    });
    const bows = fc.constantFrom([0], [0.25], [-0.25], [0.3, -0.3], [0, 0.1]);
    const ways = fc.array(bows, { minLength: 14, maxLength: 14 });
    holdsFor(
      3251,
      fc.tuple(ways, some, fc.constantFrom(1, 0.1, 4)),
      ([ways14, allowances, by]) => {
        let i = 0;
        const block = mapBlock(DRAFTED, (path) =>
          mapPath(redrawn(path, ways14[i++] ?? [0]), ({ x, y }) => point(x * by, y * by)),
        );
        const read = readOwnBlock(fileOf(block, "mm", allowances));
        if ("fault" in read) return;
        expectChained(edgesOfBody(read.block.front), 1e-6);
        expectChained(edgesOfBody(read.block.back), 1e-6);
        expectChained(edgesOfSleeve(read.block.sleeve), 1e-6);
      },
      60,
    );
  });
});

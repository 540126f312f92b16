import { beforeEach, describe, expect, test } from "vitest";
import { lengthOf } from "../../src/geometry/length.ts";
import { mapPath } from "../../src/geometry/path.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { blockNow, namedPiece, remedied } from "../../src/studio/ownBlock/blockNow.ts";
import { addCorner, beginEdgeAt, moveCorner } from "../../src/studio/ownBlock/edgeChanges.ts";
import { NEW_OWN, type OwnPiece } from "../../src/studio/ownBlock/ownBlock.ts";
import { snapOf } from "../../src/studio/ownBlock/pageSnap.ts";
import {
  beginOwnBlock,
  changeOwn,
  own,
  putOutline,
  putOwn,
  redoOwn,
  undoOwn,
  useOwn,
} from "../../src/studio/ownBlock/state.ts";
import { openSteps } from "../../src/studio/ownBlock/useOpenSteps.ts";
import { begun } from "../../src/studio/state/history.ts";
import { examine } from "../../src/trace/doctor/examine.ts";
import { drafted, flipped, halfRing, laid, sleeveRing, wholeRing } from "../trace/edges/shapes.ts";

const BLOCK = drafted();

const bring = (runs: Readonly<Record<OwnPiece, readonly Path[]>>): void => {
  for (const piece of ["front", "back", "sleeve"] as const) {
    putOutline(piece, runs[piece], null, "paper");
  }
};

const RUNS = {
  front: laid(halfRing(BLOCK.front), 0.3),
  back: laid(halfRing(BLOCK.back), -2),
  sleeve: laid(sleeveRing(BLOCK), 1.4),
};

const blockIn = () => {
  const told = blockNow(own());
  if (!told || "fault" in told) throw new Error("no block");
  return told.found.block;
};

const brought = (piece: OwnPiece) => {
  const found = own().pieces[piece];
  if (!found) throw new Error(`no ${piece}`);
  return found;
};

beforeEach(() => putOwn({ history: begun(NEW_OWN), step: "way", told: null }));

describe("a block being brought in", () => {
  test("opens step by step: ways, then pieces, then all once the three are there", () => {
    expect(openSteps(own())).toEqual(["way"]);
    beginOwnBlock("photo");
    expect(openSteps(own())).toEqual(["way", "pieces"]);
    putOutline("front", RUNS.front, 0.4, "front.jpg");
    expect(openSteps(own())).toEqual(["way", "pieces", "edges"]);
    bring(RUNS);
    expect(openSteps(own())).toEqual(["way", "pieces", "edges", "turnings", "doctor"]);
  });

  test("is the block again, from outlines laid anyhow, whole or turned over", () => {
    for (const runs of [
      RUNS,
      { ...RUNS, front: laid(wholeRing(BLOCK.front), 1) },
      { ...RUNS, back: flipped(RUNS.back) },
    ]) {
      bring(runs);
      expect(lengthOf(blockIn().front.raglan)).toBeCloseTo(lengthOf(BLOCK.front.raglan), 3);
      expect(lengthOf(blockIn().back.side)).toBeCloseTo(lengthOf(BLOCK.back.side), 3);
    }
  });

  test("walks back and on by named steps, apart from the work's", () => {
    bring(RUNS);
    const last = own();
    undoOwn();
    expect(own().pieces.sleeve).toBeNull();
    expect(useOwn.getState().history.future.at(-1)?.name).toBe("Sleeve brought in");
    redoOwn();
    expect(own()).toBe(last);
  });

  test("keeps the error foretold, and drops remedies chosen for other lines", () => {
    bring(RUNS);
    changeOwn({ ...own(), remedies: [{ finding: "side-match", remedy: "leave" }] }, "remedy");
    putOutline("front", RUNS.front, 0.4, "front.jpg");
    expect(own().remedies).toEqual([]);
    expect(brought("front")).toMatchObject({ foretold: 0.4, from: "front.jpg" });
  });

  test("with an edge begun out of order is told, and right again after undo", () => {
    bring(RUNS);
    const corners = brought("front").naming?.corners ?? [];
    beginEdgeAt("front", brought("front"), 3, corners[0] ?? 0, "corner");
    expect(namedPiece("front", brought("front"))).toMatchObject({
      fault: { reason: expect.stringContaining("do not follow one another") },
    });
    undoOwn();
    expect("found" in namedPiece("front", brought("front"))).toBe(true);
  });

  test("with a corner moved or set keeps its lines: the way round is as long", () => {
    bring(RUNS);
    const round = () => brought("front").runs.reduce((sum, run) => sum + lengthOf(run), 0);
    const before = round();
    moveCorner("front", brought("front"), 1, 12, "moved", "g");
    expect(round()).toBeCloseTo(before, 6);
    expect(brought("front").runs).toHaveLength(5);
    addCorner("front", brought("front"), 0, null, "set");
    expect(round()).toBeCloseTo(before, 6);
    expect(brought("front").runs).toHaveLength(6);
    expect("found" in namedPiece("front", brought("front"))).toBe(true);
  });

  test("has its remedies one after the other, each found anew", () => {
    const taller = RUNS.front.map((run) => mapPath(run, ({ x, y }) => ({ x, y: y * 1.01 })));
    bring({ ...RUNS, front: taller });
    const before = examine(blockIn()).filter(({ verdict }) => verdict !== "sound");
    expect(before.map(({ id }) => id)).toContain("side-match");
    const remedies = [
      { finding: "side-match", remedy: "front" },
      { finding: "raglan-front-match", remedy: "sleeve" },
    ] as const;
    const mended = examine(remedied(blockIn(), { remedies }));
    for (const { finding } of remedies) {
      expect(mended.find(({ id }) => id === finding)?.verdict, finding).toBe("sound");
    }
  });

  test("front and back taken for each other are told", () => {
    bring({ ...RUNS, front: RUNS.back, back: RUNS.front });
    expect(blockNow(own())).toMatchObject({
      fault: { reason: expect.stringContaining("taken for each other") },
    });
  });
});

describe("a page laid to its neighbours", () => {
  const line = (x: number, y: number, to: number): Path => [
    { kind: "line", start: { x, y }, end: { x: to, y } },
  ];
  const page = (number: number, paths: readonly Path[]) => ({
    page: number,
    width: 210,
    height: 297,
    marks: [],
    lines: paths.map((path) => ({ names: [], path, isClosed: false })),
  });
  const pages = [
    page(1, [line(100, 50, 200), line(100, 90, 200)]),
    page(2, [line(10, 50, 80), line(10, 90, 80), line(10, 120, 80)]),
  ];

  test("is moved to where most of its lines meet theirs", () => {
    const places = [
      { page: 1, x: 0, y: 0 },
      { page: 2, x: 186, y: 3 },
    ];
    expect(snapOf(pages, places, 2, 10)).toEqual({ x: 4, y: -3 });
  });

  test("stays where none of them is near", () => {
    const places = [
      { page: 1, x: 0, y: 0 },
      { page: 2, x: 400, y: 0 },
    ];
    expect(snapOf(pages, places, 2, 10)).toBeNull();
  });
});

import { expect } from "vitest";
import {
  cornersWithin,
  distanceTo,
  firstSpot,
  lastSpot,
  polylineOf,
  type Spot,
  type Stretch,
  samplesOf,
  stretchesOf,
} from "./lines.ts";

/** A piece as a report has it: lines as path data, and what each edge is given outside it. */
export type CutPiece = {
  readonly name: string;
  /** Without the fold, which has no allowance. */
  readonly edges: readonly {
    readonly name: string;
    readonly data: string;
    readonly allowance: number;
  }[];
  readonly cutLine: string;
  readonly isOnFold: boolean;
};

/** A tenth of a millimetre: nobody cuts finer (method, section 10). */
const WITHIN = 0.1;
/** Nearer to a corner than this many allowances the line may be mitred or mirrored (method 4). */
const AT_CORNERS = 4.13;
/** A corner within an edge is cut or mitred by less: it hardly turns. */
const AT_JOINTS = 1.5;
const STEP = 4;

const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const isClearOf = (corners: readonly Spot[], reach: number) => (spot: Spot) =>
  corners.every((corner) => apart(corner, spot) > reach);

type Side = {
  readonly name: string;
  readonly allowance: number;
  readonly line: readonly Stretch[];
};

/** Every point of an edge, moved out by its allowance, lies on the cut line. */
const expectOutward = (piece: CutPiece, sides: readonly Side[], clear: (s: Spot) => boolean) => {
  const cut = polylineOf(stretchesOf(piece.cutLine), 1);
  for (const { name, allowance, line } of sides) {
    for (const { spot, outward } of samplesOf(line, STEP)) {
      if (!clear(spot)) continue;
      const moved: Spot = [spot[0] + allowance * outward[0], spot[1] + allowance * outward[1]];
      const away = distanceTo(cut, moved);
      if (away > WITHIN) expect(away, `${piece.name}.${name} at ${spot}`).toBeLessThan(WITHIN);
    }
  }
};

/** Every point of the cut line lies at the allowance of an edge, and at less from none. */
const expectInward = (piece: CutPiece, sides: readonly Side[], clear: (s: Spot) => boolean) => {
  const lines = sides.map(({ line, allowance }) => ({ line: polylineOf(line, 1), allowance }));
  for (const { spot } of samplesOf(stretchesOf(piece.cutLine), STEP)) {
    if (!clear(spot)) continue;
    if (piece.isOnFold && Math.abs(spot[0]) < 1e-6) continue;
    const over = lines.map(({ line, allowance }) => distanceTo(line, spot) - allowance);
    const least = Math.min(...over);
    const nearest = Math.min(...over.map(Math.abs));
    if (least < -WITHIN || nearest > WITHIN)
      expect([least, nearest], `${piece.name} cut line at ${spot}`).toEqual([0, 0]);
  }
};

/**
 * The cut line of a piece lies at its allowance all along, looked for both ways; it is closed, and
 * on the fold it runs along x = 0. How many spots were looked at is told, so that none is no pass.
 */
export const expectCutLine = (piece: CutPiece): void => {
  const sides = piece.edges.map(({ name, data, allowance }) => ({
    name,
    allowance,
    line: stretchesOf(data),
  }));
  const corners = sides.flatMap(({ line }) => [firstSpot(line), lastSpot(line)]);
  const widest = Math.max(...sides.map(({ allowance }) => allowance));
  const atCorners = isClearOf(corners, AT_CORNERS * widest);
  const atJoints = isClearOf(
    sides.flatMap(({ line }) => cornersWithin(line)),
    AT_JOINTS * widest,
  );
  const clear = (spot: Spot): boolean => atCorners(spot) && atJoints(spot);
  const cut = stretchesOf(piece.cutLine);
  expect(apart(firstSpot(cut), lastSpot(cut)), `${piece.name} is closed`).toBeLessThan(1e-5);
  const looked = samplesOf(cut, STEP).filter(({ spot }) => clear(spot));
  expect(looked.length, `${piece.name} has spots to look at`).toBeGreaterThan(0);
  expectOutward(piece, sides, clear);
  expectInward(piece, sides, clear);
  if (piece.isOnFold) {
    const [x] = firstSpot(cut);
    const lefts = samplesOf(cut, STEP).map(({ spot }) => spot[0]);
    expect(Math.abs(x), `${piece.name} begins on the fold`).toBeLessThan(1e-5);
    expect(Math.min(...lefts), `${piece.name} stays on its side`).toBeGreaterThan(-1e-5);
  }
};

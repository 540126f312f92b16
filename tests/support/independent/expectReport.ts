import { expect } from "vitest";
import { type CutPiece, expectCutLine } from "./cutLines.ts";
import { firstSpot, lastSpot, lengthAfter, lengthOfData, type Spot, stretchesOf } from "./lines.ts";
import { edgeOf, type Report, type ReportPiece } from "./report.ts";

/** A length read back from a path (method 1.7). */
const SAME_LENGTH = 0.01;
/** Seams, cut lines and notches (issue: every seam pair within 0.1 mm). */
const SEAM = 0.1;

const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const allowanceOf = (edge: string, { choices }: Report): number => {
  const { raglan, side, underarm, bands } = choices.allowances;
  if (edge.startsWith("raglan")) return raglan;
  if (edge.startsWith("underarm")) return underarm;
  if (edge === "side") return side;
  return ["v", "left", "right"].includes(edge) ? choices.alterations.vInsert.allowance : bands;
};

/** Every length of a piece, measured afresh from its path, is the report's. */
const expectLengths = (where: string, piece: ReportPiece): void => {
  for (const [name, { path, length }] of Object.entries(piece.edges)) {
    const off = Math.abs(lengthOfData(path) - length);
    if (!(off <= SAME_LENGTH)) expect(off, `${where}.${name}`).toBeLessThan(SAME_LENGTH);
  }
};

/** Edges chained end to start, round to the first. */
const expectChain = (where: string, piece: ReportPiece): void => {
  const lines = Object.values(piece.edges).map(({ path }) => stretchesOf(path));
  lines.forEach((line, i) => {
    const before = lines.at(i - 1) ?? line;
    expect(apart(lastSpot(before), firstSpot(line)), `${where}, edge ${i}`).toBeLessThan(1e-5);
  });
};

/** Names of both edges, and whether the other runs the other way (contract, "Frames"). */
const JOINED = [
  ["raglan-front", "front", "raglan", "sleeve", "raglanFront", false],
  ["raglan-back", "back", "raglan", "sleeve", "raglanBack", true],
  ["side", "front", "side", "back", "side", false],
  ["underarm", "sleeve", "underarmFront", "sleeve", "underarmBack", true],
] as const;

const placesOn = (report: Report, piece: string, edge: string, seam: string): readonly number[] =>
  (report.pieces[piece]?.notches ?? [])
    .filter((notch) => notch.edge === edge && notch.seam === seam)
    .map(({ at }) => at);

/** Notches of edges that are sewn together lie equally far from the same end, eased evenly. */
export const expectNotches = (report: Report): void => {
  for (const [seam, a, edgeA, b, edgeB, turned] of JOINED) {
    const [longA, longB] = [edgeOf(report, [a, edgeA]).length, edgeOf(report, [b, edgeB]).length];
    const one = placesOn(report, a, edgeA, seam);
    const other = placesOn(report, b, edgeB, seam).map((at) => (turned ? longB - at : at));
    expect(one.length, seam).toBeGreaterThan(0);
    expect(other, seam).toHaveLength(one.length);
    for (const [i, at] of one.entries()) {
      const there = ((other[i] ?? Number.NaN) * longA) / longB;
      expect(Math.abs(at - there), `${seam}, notch ${i}`).toBeLessThan(SEAM);
    }
  }
};

/** Edges as they are worn: shrunk by the wash that they were enlarged for. */
const wornLength = (report: Report, edges: Report["seams"][number]["a"]): number => {
  const { shrinkLength, shrinkWidth, turned } = report.choices.cloth.body;
  const [across, down] = turned ? [shrinkLength, shrinkWidth] : [shrinkWidth, shrinkLength];
  return edges.reduce(
    (sum, edge) => sum + lengthAfter(edgeOf(report, edge).path, 1 - across, 1 - down),
    0,
  );
};

/** Both sides of every seam, shrunk and measured afresh, agree. */
const expectSeams = (report: Report): void => {
  for (const { id, a, b, difference, lengthA, lengthB, ease } of report.seams) {
    const fresh = wornLength(report, a) - wornLength(report, b);
    expect(Math.abs(fresh), id).toBeLessThan(SEAM);
    expect(Math.abs(fresh - difference), id).toBeLessThan(SAME_LENGTH);
    expect(Math.abs(lengthA - lengthB - ease - difference), id).toBeLessThan(1e-5);
  }
};

/** Bands meet the openings of the pieces as they are worn. */
export const expectBands = (report: Report): void => {
  const hem = wornLength(report, [
    ["front", "hem"],
    ["back", "hem"],
  ]);
  const half = wornLength(report, [
    ["front", "neckline"],
    ["sleeve", "neckline"],
    ["back", "neckline"],
  ]);
  const top = report.pieces["vInsert"] ? wornLength(report, [["vInsert", "top"]]) : 0;
  const wanted = {
    neckband: 2 * half + top,
    cuff: wornLength(report, [["sleeve", "wrist"]]),
    hemBand: 2 * hem,
  };
  for (const [band, opening] of Object.entries(wanted)) {
    const off = Math.abs((report.bands[band]?.opening ?? Number.NaN) - opening);
    expect(off, band).toBeLessThan(2 * SAME_LENGTH);
  }
};

/** No number of the report is one that JSON cannot carry. */
export const expectNumbers = (text: string): void => {
  expect(text).not.toMatch(/NaN|Infinity|:null,"length"|undefined/);
  expect(text).not.toMatch(
    /"(value|limit|at|x|y|length|difference|ease|opening|finishedLength|cutLength|stretchToSew|stretchToPass|pressure)":null/,
  );
};

/** Where the report says that an allowance folds or has no room, its cut line is not what it was. */
const CUT_OTHERWISE = ["allowance-folds", "rail-v-allowance", "rail-v-cut"];

/** The lines of a report hold, by code of the tests' own: lengths, chains, cut lines. */
export const expectLines = (report: Report): void => {
  const named = [
    ...Object.entries(report.pieces),
    ...Object.entries(report.block).map(([name, piece]) => [`block.${name}`, piece] as const),
  ];
  const isCutAsTold = !report.checks.some(({ id }) => CUT_OTHERWISE.includes(id));
  for (const [where, piece] of named) {
    expectLengths(where, piece);
    expectChain(where, piece);
    if (isCutAsTold) expectCutLine(cutPieceOf(report, where, piece));
  }
};

const cutPieceOf = (report: Report, name: string, piece: ReportPiece): CutPiece => ({
  name,
  edges: Object.entries(piece.edges)
    .filter(([edge]) => edge !== piece.onFold)
    .map(([edge, { path }]) => ({ name: edge, data: path, allowance: allowanceOf(edge, report) })),
  cutLine: piece.cutLine,
  isOnFold: piece.onFold !== null,
});

/** A report holds: its lines, its seams, the openings of its bands, and its notches. */
export const expectReport = (report: Report): void => {
  expectLines(report);
  expectSeams(report);
  expectBands(report);
  expectNotches(report);
};

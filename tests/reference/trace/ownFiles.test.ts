import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import { type CutEdge, insetEdges } from "../../../src/drafting/inset.ts";
import type { Piece } from "../../../src/drafting/piece.ts";
import { layOut } from "../../../src/export/layout.ts";
import { toPdf } from "../../../src/export/pdf.ts";
import type { SheetSubject } from "../../../src/export/subject.ts";
import { toSvg } from "../../../src/export/svg.ts";
import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { nearestOnPath } from "../../../src/geometry/nearest.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { make } from "../../../src/project/make.ts";
import type { ReadLine } from "../../../src/trace/files/drawing.ts";
import { readPdf } from "../../../src/trace/files/pdfIn.ts";
import { readSvg } from "../../../src/trace/files/svgIn.ts";
import { exampleBody } from "../../drafting/bodies.ts";
import { drafted, sampleBodies } from "../../trace/edges/shapes.ts";

/** The sheets of a body as a maker has them. */
const subjectOf = (i: number): SheetSubject => {
  const measures = sampleBodies()[i];
  const { garment, checks } = make(exampleBody(measures), DEFAULT_CHOICES, null);
  return { body: { id: "own" }, garment, checks };
};

const CLOTH = ["front", "back", "sleeve"] as const;

/** Length of a piece's sewing lines without its fold, mm. */
const sewn = ({ edges, onFold }: Piece): number =>
  edges.reduce((sum, { name, path }) => sum + (name === onFold ? 0 : lengthOf(path)), 0);

/** How far the nearest of some lines is from one of a wanted length. */
const offLength = (lines: readonly ReadLine[], wanted: number): number =>
  Math.min(...lines.map(({ path }) => Math.abs(lengthOf(path) - wanted)));

describe.each([0, 17, 39])("the tool's own files of sample body %i", (i) => {
  const subject = subjectOf(i);
  const { pieces } = subject.garment;
  const sheets = layOut(pieces, "a4");

  test("come back from SVG with every sewing line within 0.01 mm", () => {
    const told = readSvg(toSvg(subject, sheets));
    if ("fault" in told) throw new Error(told.fault.reason);
    const ofPiece = (name: string) => told.found.lines.filter(({ names }) => names.includes(name));
    for (const name of CLOTH) {
      const piece = pieces.find((p) => p.name === name);
      if (!piece) throw new Error(name);
      const lines = ofPiece(name).filter(({ names }) => names.includes("sew"));
      expect(offLength(lines, sewn(piece))).toBeLessThan(0.01);
    }
  });

  test("come back from PDF with every sewing line within 0.05 mm", async () => {
    const font = readFileSync(
      new URL("../../../assets/fonts/NotoSans-subset.ttf", import.meta.url),
    );
    const told = await readPdf(await toPdf(subject, sheets, { font }));
    if ("fault" in told) throw new Error(told.fault.reason);
    const lines = told.found.flatMap((page) => page.lines);
    for (const name of CLOTH) {
      const piece = pieces.find((p) => p.name === name);
      if (!piece) throw new Error(name);
      expect(offLength(lines, sewn(piece))).toBeLessThan(0.05);
    }
  });
});

/** How far one line is from another at most, looked at from points along it, mm. */
const away = (found: Path, truth: Path): number => {
  let far = 0;
  for (const s of found) {
    for (const t of [0, 0.2, 0.4, 0.6, 0.8, 1]) {
      far = Math.max(far, nearestOnPath(truth, pointAt(s, t)).away);
    }
  }
  return far;
};

describe("turnings put on and taken away again", () => {
  /** Moved in by less than nothing is moved out: edges with turnings, corners run on to meet. */
  const there = (edges: readonly CutEdge[], isOnFold: boolean): readonly CutEdge[] =>
    insetEdges(
      edges.map(({ path, allowance }) => ({ path, allowance: -allowance })),
      isOnFold,
    ).map((path, i) => ({ path, allowance: edges[i]?.allowance ?? 0 }));

  test("leave every edge of 40 sample bodies within 0.05 mm of where it was", () => {
    for (const body of sampleBodies()) {
      const { front, back, sleeve } = drafted(body);
      for (const half of [front, back]) {
        const edges: readonly CutEdge[] = [
          { path: half.neckline, allowance: 6.35 },
          { path: half.raglan, allowance: 9.525 },
          { path: half.side, allowance: 9.525 },
          { path: half.hem, allowance: 25.4 },
        ];
        for (const [i, path] of insetEdges(there(edges, true), true).entries()) {
          const truth = edges[i]?.path ?? path;
          expect(away(path, truth)).toBeLessThan(0.05);
          expect(Math.abs(lengthOf(path) - lengthOf(truth))).toBeLessThan(0.05);
        }
      }
      const round: readonly CutEdge[] = [
        { path: sleeve.neckline, allowance: 6.35 },
        { path: sleeve.raglanFront, allowance: 9.525 },
        { path: sleeve.underarmFront, allowance: 9.525 },
        { path: sleeve.wrist, allowance: 25.4 },
        { path: sleeve.underarmBack, allowance: 9.525 },
        { path: sleeve.raglanBack, allowance: 9.525 },
      ];
      for (const [i, path] of insetEdges(there(round, false), false).entries()) {
        const truth = round[i]?.path ?? path;
        expect(away(path, truth)).toBeLessThan(0.05);
        expect(Math.abs(lengthOf(path) - lengthOf(truth))).toBeLessThan(0.05);
      }
    }
  });
});

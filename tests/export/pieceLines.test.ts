import { describe, expect, test } from "vitest";
import type { Piece, PieceName } from "../../src/drafting/piece.ts";
import type { LineKind } from "../../src/export/data/lineStyles.ts";
import { bandCrease, isBand, notchPlaces, pieceLines } from "../../src/export/pieceLines.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, pathOf, startOf } from "../../src/geometry/path.ts";
import { subjectOf } from "../support/sheetSubjects.ts";

const { garment } = subjectOf();
const { allowances, alterations } = garment.choices;
const named = (name: PieceName): Piece => {
  const found = garment.pieces.find((piece) => piece.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const lengthsOf = (piece: Piece, kind: LineKind): readonly number[] =>
  pieceLines(piece)
    .filter((stroke) => stroke.kind === kind)
    .map(({ path }) => lengthOf(path));

describe("the lines of a piece", () => {
  test("draw the whole cut line, of which the fold is no cut", () => {
    for (const piece of garment.pieces) {
      const [cut = 0] = lengthsOf(piece, "cut");
      const [fold = 0] = lengthsOf(piece, "fold");
      expect(cut + fold).toBeCloseTo(lengthOf(piece.cutLine), 6);
      expect(fold > 0).toBe(piece.onFold !== null);
    }
  });

  test("tell the fold from the cut wherever the cut line begins", () => {
    const back = named("back");
    const fold = lengthsOf(back, "fold");
    back.cutLine.forEach((_, i) => {
      const cutLine = pathOf([...back.cutLine.slice(i), ...back.cutLine.slice(0, i)]);
      expect(lengthsOf({ ...back, cutLine }, "fold")[0]).toBeCloseTo(fold[0] ?? NaN, 9);
    });
  });

  test("leave the arrow out where the grain has no length", () => {
    const at = { x: 5, y: 5 };
    expect(lengthsOf({ ...named("cuff"), grain: { from: at, to: at } }, "grain")).toEqual([]);
  });

  test("sew along every edge but the fold", () => {
    for (const piece of garment.pieces) {
      const sewn = piece.edges
        .filter(({ name }) => name !== piece.onFold)
        .reduce((sum, { length }) => sum + length, 0);
      expect(lengthsOf(piece, "sew")[0]).toBeCloseTo(sewn, 5);
    }
  });

  test("draw each notch across its turning, from the sew line to the cut line", () => {
    const turning: Readonly<Record<string, number>> = {
      raglan: allowances.raglan,
      raglanFront: allowances.raglan,
      raglanBack: allowances.raglan,
      side: allowances.side,
      underarmFront: allowances.underarm,
      underarmBack: allowances.underarm,
      neckline: allowances.bands,
      hem: allowances.bands,
      wrist: allowances.bands,
      top: allowances.bands,
      v: alterations.vInsert.allowance,
    };
    for (const piece of garment.pieces) {
      const strokes = pieceLines(piece).filter(({ kind }) => kind === "notch");
      expect(strokes).toHaveLength(piece.notches.length);
      piece.notches.forEach(({ edge, at }, i) => {
        const stroke = strokes[i];
        const length = piece.edges.find(({ name }) => name === edge)?.length ?? 0;
        // At an edge's end the cut line turns its corner, and the notch with it.
        const isInside = at > 1 && at < length - 1;
        if (stroke && isInside) expect(lengthOf(stroke.path)).toBeCloseTo(turning[edge] ?? NaN, 1);
      });
    }
  });

  test("put a notch as far along its edge as the piece says", () => {
    const back = named("back");
    const raglan = back.edges.find(({ name }) => name === "raglan");
    const place = notchPlaces(back).find(({ notch }) => notch.edge === "raglan");
    if (!raglan || !place) throw new Error("no notch");
    const half = raglan.length / 2;
    expect(place.notch.at).toBeCloseTo(half, 6);
    const straight = Math.hypot(
      endOf(raglan.path).x - place.at.x,
      endOf(raglan.path).y - place.at.y,
    );
    expect(straight).toBeLessThan(half);
    expect(straight).toBeGreaterThan(half * 0.9);
  });

  test("crease bands half way between their long edges, along what is sewn", () => {
    for (const piece of garment.pieces) {
      const [crease] = bandCrease(piece);
      expect(crease !== undefined).toBe(isBand(piece));
      if (!crease) continue;
      const [top] = piece.edges;
      expect(lengthOf(crease.path)).toBeCloseTo(top?.length ?? NaN, 6);
      const bottom = piece.edges.find(({ name }) => name === "bottom");
      expect(startOf(crease.path).y).toBeCloseTo(startOf(bottom?.path ?? crease.path).y / 2, 6);
    }
  });

  test("point the grain arrow's heads at both ends of the grain", () => {
    const { grain } = named("sleeve");
    const [shaft, to, from] = pieceLines(named("sleeve")).filter(({ kind }) => kind === "grain");
    if (!shaft || !to || !from) throw new Error("no grain");
    expect(startOf(shaft.path)).toEqual(grain.from);
    expect(to.path[0].end).toEqual(grain.to);
    expect(from.path[0].end).toEqual(grain.from);
  });
});

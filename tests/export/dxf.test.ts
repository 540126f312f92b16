import DxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import { asciiOf } from "../../src/export/ascii.ts";
import { toDxf } from "../../src/export/dxf.ts";
import { placedPath, placementOf } from "../../src/export/placing.ts";
import type { Point } from "../../src/geometry/point.ts";
import { pointsAlong } from "../support/samples.ts";
import { laidOn } from "../support/sheetSubjects.ts";

const { subject, sheets } = laidOn("a4");
const text = toDxf(subject, sheets);

type Entity = {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly Point[];
  readonly shape?: boolean;
  readonly text?: string;
};
type Read = {
  readonly header: Readonly<Record<string, unknown>>;
  readonly tables: { readonly layer: { readonly layers: Readonly<Record<string, unknown>> } };
  readonly entities: readonly Entity[];
};
const read = new DxfParser().parseSync(text) as unknown as Read;
const onLayer = (layer: string): readonly Entity[] =>
  read.entities.filter((entity) => entity.layer === layer);

/** How far a point is from the nearest chord of a closed run. */
const awayFrom = (corners: readonly Point[], p: Point): number =>
  Math.min(
    ...corners.map((to, i) => {
      const from = corners[(i || corners.length) - 1] ?? to;
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      const size = dx * dx + dy * dy;
      const share = size === 0 ? 0 : ((p.x - from.x) * dx + (p.y - from.y) * dy) / size;
      const t = Math.min(1, Math.max(0, share));
      return Math.hypot(p.x - from.x - t * dx, p.y - from.y - t * dy);
    }),
  );

describe("the DXF, read back", () => {
  test("is R12, in millimetres", () => {
    expect(read.header["$ACADVER"]).toBe("AC1009");
    expect(read.header["$INSUNITS"]).toBe(4);
  });

  test("has a closed cut line for each piece, on its own layer", () => {
    for (const { name } of subject.garment.pieces) {
      const [cut, ...more] = onLayer(`${name.toUpperCase()}_CUT`);
      expect(cut?.type).toBe("POLYLINE");
      expect(cut?.shape).toBe(true);
      expect(more).toEqual([]);
    }
  });

  test("strays from no cut line by more than 0.01 mm, with y up", () => {
    for (const piece of subject.garment.pieces) {
      const [cut] = onLayer(`${piece.name.toUpperCase()}_CUT`);
      const corners = cut?.vertices ?? [];
      const placed = placedPath(placementOf(sheets, piece.name), piece.cutLine);
      for (const { x, y } of pointsAlong(placed, 30)) {
        expect(awayFrom(corners, { x, y: -y })).toBeLessThan(0.0102);
      }
    }
  });

  test("has sew lines, notches and grain on layers of their own, and the piece's name", () => {
    for (const { name, notches } of subject.garment.pieces) {
      const upper = name.toUpperCase();
      expect(onLayer(`${upper}_SEW`)).toHaveLength(1);
      expect(onLayer(`${upper}_NOTCH`)).toHaveLength(notches.length);
      expect(onLayer(`${upper}_GRAIN`).length).toBeGreaterThan(0);
      expect(onLayer(`${upper}_TEXT`).some(({ type }) => type === "TEXT")).toBe(true);
    }
  });

  test("lists every layer that it draws on, each name 31 capitals and signs at most", () => {
    const listed = Object.keys(read.tables.layer.layers);
    for (const { layer } of read.entities) expect(listed).toContain(layer);
    for (const layer of listed) expect(layer).toMatch(/^[A-Z0-9_$-]{1,31}$/);
  });

  test("is plain ASCII, so that any code page reads it", () => {
    expect(text).toMatch(/^[\r\n -~]*$/);
    expect(text).toContain("Zoe Lukasz Serban Zizka Angstrom");
  });

  test("is the same every time", () => {
    expect(toDxf(subject, { ...sheets })).toBe(text);
  });
});

describe("a text in ASCII", () => {
  test.each([
    ["Zoë Łukasz", "Zoe Lukasz"],
    ["Straße 10 × 20", "Strasse 10 x 20"],
    ["a\nb\tc", "a b c"],
    ["Жук 李", "??? ?"],
  ])("reads %j as %j", (given, written) => {
    expect(asciiOf(given)).toBe(written);
  });
});

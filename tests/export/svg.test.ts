import { describe, expect, test } from "vitest";
import { placedPath, placementOf } from "../../src/export/placing.ts";
import { toSvg } from "../../src/export/svg.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { readPathData } from "../../src/geometry/pathData.ts";
import { laidOn, subjectOf } from "../support/sheetSubjects.ts";

const { subject, sheets } = laidOn("a4");
const svg = toSvg(subject, sheets);

const groupOf = (id: string): string =>
  new RegExp(`<g id="${id}">([\\s\\S]*?)</g>`).exec(svg)?.[1] ?? "";
const pathsOf = (group: string, kind: string): readonly string[] =>
  [...group.matchAll(new RegExp(`<path class="${kind}" d="([^"]*)"`, "g"))].map(([, d]) => d ?? "");

describe("the SVG", () => {
  test("is in millimetres, its own units", () => {
    const size = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="\S+ \S+ ([\d.]+) ([\d.]+)"/.exec(
      svg,
    );
    expect(size?.[1]).toBe(size?.[3]);
    expect(size?.[2]).toBe(size?.[4]);
  });

  test("has a group for each piece, with its kinds of line", () => {
    for (const piece of subject.garment.pieces) {
      const group = groupOf(piece.name);
      for (const kind of ["cut", "sew", "grain"]) {
        expect(pathsOf(group, kind).length, `${piece.name} ${kind}`).toBeGreaterThan(0);
      }
      expect(pathsOf(group, "notch")).toHaveLength(piece.notches.length);
      expect(pathsOf(group, "fold")).toHaveLength(piece.onFold === null ? 0 : 1);
    }
  });

  test("draws the cut lines where the report's placements say, as long as they are", () => {
    for (const piece of subject.garment.pieces) {
      const [cut = "", ...more] = pathsOf(groupOf(piece.name), "cut");
      const [fold] = pathsOf(groupOf(piece.name), "fold");
      const lengths = [cut, fold].map((data) => {
        const read = data === undefined ? null : readPathData(data.replace(" Z", ""));
        return read && "path" in read ? lengthOf(read.path) : 0;
      });
      const placed = placedPath(placementOf(sheets, piece.name), piece.cutLine);
      expect(more).toEqual([]);
      expect((lengths[0] ?? 0) + (lengths[1] ?? 0)).toBeCloseTo(lengthOf(placed), 3);
    }
  });

  test("is well formed whatever a body is called", () => {
    const odd = { ...subjectOf(), body: { id: "a", name: `<&>"'\u0000\ud800 Zoë` } };
    const text = toSvg(odd, sheets);
    expect(text).toContain("&lt;&amp;&gt;&quot;&#39;");
    expect(text).not.toMatch(/[\p{Cs}]|(?!\n)\p{Cc}/u);
    const open = [...text.matchAll(/<(g|svg|text|title)[ >]/g)].length;
    expect([...text.matchAll(/<\/(g|svg|text|title)>/g)]).toHaveLength(open);
  });

  test("shows rightly without a style sheet", () => {
    for (const [tag] of svg.matchAll(/<path [^>]*>/g)) {
      expect(tag).toMatch(/fill="none" stroke="#000" stroke-width="[\d.]+"/);
    }
    expect(svg).not.toContain("<style");
  });

  test("is the same every time", () => {
    expect(toSvg(subject, { ...sheets })).toBe(svg);
  });
});

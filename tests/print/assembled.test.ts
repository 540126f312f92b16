import { describe, expect, test } from "vitest";
import { drawLayout } from "../../src/export/drawing.ts";
import { layOut } from "../../src/export/layout.ts";
import { toPdf } from "../../src/export/pdf.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../../src/export/printChoices.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import type { Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { pointAlong } from "../../src/geometry/split.ts";
import { assembled, type Laid, seenAt } from "../support/assembled.ts";
import { FONT, subjectOf } from "../support/sheetSubjects.ts";

/** The measure: the sheets put together show the whole drawing so true, in mm. */
const TRUE = 0.3;
const REACH = 0.8;
const STEP = 0.04;
const EVERY = 9;
const CLEAR = 9;

type Place = { readonly at: Point; readonly across: Point };

/** Places along an unbroken line, and the direction square to it. */
const placesOn = (path: Path): readonly Place[] =>
  path.flatMap((segment) => {
    const count = Math.floor((lengthOf([segment]) - 2 * CLEAR) / EVERY);
    return Array.from({ length: Math.max(0, count) }, (_, i) => {
      const along = CLEAR + i * EVERY;
      const [a, b] = [pointAlong([segment], along - 0.01), pointAlong([segment], along + 0.01)];
      const size = Math.hypot(b.x - a.x, b.y - a.y);
      return {
        at: pointAlong([segment], along),
        across: { x: -(b.y - a.y) / size, y: (b.x - a.x) / size },
      };
    });
  });

/** How far the middle of the ink lies from where the drawing has its line; null: no ink is seen. */
const strayAt = (laid: readonly Laid[], set: number, origin: Point, { at, across }: Place) => {
  let [ink, moment] = [0, 0];
  for (let off = -REACH; off <= REACH; off += STEP) {
    const spot = { x: at.x + off * across.x - origin.x, y: at.y + off * across.y - origin.y };
    const dark = seenAt(laid, set, spot);
    ink += dark;
    moment += dark * off;
  }
  return ink < 500 ? null : moment / ink;
};

describe.each([
  ["a4", {}],
  ["letter", { turn: "landscape" }],
  ["a4", { join: "butt", overlap: 16 }],
  ["210x330", { turn: "fewest", margins: { top: 6, right: 8, bottom: 14, left: 8 } }],
] as const satisfies readonly (readonly [string, Partial<PrintChoices>])[])(
  "sheets of %s with %j, cut and put together from what is seen on them",
  (paper, changes) => {
    test("show the whole drawing within 0.3 mm", async () => {
      const subject = subjectOf();
      const print: PrintChoices = { ...DEFAULT_PRINT, ...changes };
      const sheets = layOut(subject.garment.pieces, paper, print);
      const laid = assembled(await toPdf(subject, sheets, { font: FONT }), sheets.count);
      expect(laid).toHaveLength(sheets.pages.length);
      // Nearly all hang together: a sheet alone meets no other with a line on it.
      const sets = new Set(laid.map(({ set }) => set));
      expect(sets.size).toBeLessThanOrEqual(3);
      const places = drawLayout(subject, sheets).pieces.flatMap(({ strokes }) =>
        strokes.filter(({ kind }) => kind === "cut").flatMap(({ path }) => placesOn(path)),
      );
      const strays: number[] = [];
      let unseen = places.length;
      for (const place of places) {
        for (const set of sets) {
          // Only the first sheet of a set is known to lie where the layout has it.
          const first = laid.find((one) => one.set === set);
          const origin = sheets.pages.find(({ page }) => page === first?.page);
          if (!origin) throw new Error("A sheet that is none.");
          const stray = strayAt(laid, set, origin, place);
          if (stray === null) continue;
          strays.push(Math.abs(stray));
          unseen--;
          break;
        }
      }
      expect(unseen / places.length).toBeLessThan(0.02);
      const sorted = strays.sort((a, b) => a - b);
      // Furniture and notches stand beside a line here and there and draw the ink's middle aside.
      expect(sorted[Math.floor(sorted.length * 0.98)]).toBeLessThan(TRUE);
      expect(sorted[Math.floor(sorted.length * 0.5)]).toBeLessThan(0.1);
    });
  },
);

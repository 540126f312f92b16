import { describe, expect, test } from "vitest";
import type { PaperName } from "../../src/export/data/paper.ts";
import { drawLayout } from "../../src/export/drawing.ts";
import { toPdf } from "../../src/export/pdf.ts";
import type { SheetPage, Sheets } from "../../src/export/sheets.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import type { Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { pointAlong } from "../../src/geometry/split.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { type Raster, rasterOf } from "../support/pdf.ts";
import { FONT, type Laid, laidOn } from "../support/sheetSubjects.ts";

/** Fine enough that the middle of a grey line is known to a twentieth of a millimetre. */
const DPI = 150;
/** What the joined sheets may differ by from the drawing on one page, in mm. */
const JOINED = 0.2;
const MARGIN = 10;
/** How far to either side of a line its ink is looked for. */
const REACH = 0.6;
const STEP = 0.04;
/** Lines are looked at so far apart, and not so near to their ends, where others meet them. */
const EVERY = 7;
const CLEAR = 9;

/** The same layout on one sheet as large as all of it. */
const onOnePage = ({ placements, paper, rows, columns, width, height }: Sheets): Sheets => {
  const [stepX, stepY] = [width - 3 * MARGIN, height - 3 * MARGIN];
  return bareSheets({
    paper,
    count: 3,
    width: (columns - 1) * stepX + width,
    height: (rows - 1) * stepY + height,
    pages: [{ page: 3, x: -MARGIN, y: -MARGIN, row: 0, column: 0 }],
    placements,
    rows: 1,
    columns: 1,
  });
};

type Place = { readonly at: Point; readonly across: Point };

/** Places along an unbroken line, each with the direction square to it. */
const placesOn = (path: Path): readonly Place[] =>
  path.flatMap((segment) => {
    const long = lengthOf([segment]);
    const count = Math.floor((long - 2 * CLEAR) / EVERY);
    return Array.from({ length: Math.max(0, count) }, (_, i) => {
      const along = CLEAR + i * EVERY;
      const [before, after] = [
        pointAlong([segment], along - 0.01),
        pointAlong([segment], along + 0.01),
      ];
      const size = Math.hypot(after.x - before.x, after.y - before.y);
      return {
        at: pointAlong([segment], along),
        across: { x: -(after.y - before.y) / size, y: (after.x - before.x) / size },
      };
    });
  });

/** How far the middle of the ink lies from a place, square to its line; null: there is no ink. */
const strayAt = (raster: Raster, page: SheetPage, { at, across }: Place): number | null => {
  let [ink, moment] = [0, 0];
  for (let off = -REACH; off <= REACH; off += STEP) {
    const [x, y] = [at.x + off * across.x - page.x, at.y + off * across.y - page.y];
    const value = raster.inkAt(Math.floor(x * raster.perMm), Math.floor(y * raster.perMm));
    ink += value;
    moment += value * off;
  }
  return ink < 255 ? null : moment / ink;
};

const shows = ({ width, height }: Sheets, page: SheetPage, { x, y }: Point): boolean => {
  const [u, v] = [x - page.x, y - page.y];
  const inside = MARGIN + 0.75;
  return u > inside && u < width - inside && v > inside && v < height - inside;
};

/** The worst difference of any cut line between the joined sheets and the one page. */
const compare = async ({ subject, sheets }: Laid) => {
  const whole = onOnePage(sheets);
  const one = await toPdf(subject, whole, { font: FONT });
  const many = await toPdf(subject, sheets, { font: FONT });
  const [only] = whole.pages;
  if (!only) throw new Error("no page");
  const onOne = rasterOf(one, { page: 3, dpi: DPI });
  const places = drawLayout(subject, sheets).pieces.flatMap(({ strokes }) =>
    strokes.filter(({ kind }) => kind === "cut").flatMap(({ path }) => placesOn(path)),
  );
  let [worst, compared, unseen] = [0, 0, places.length];
  const seen = new Set<Place>();
  for (const page of sheets.pages) {
    const raster = rasterOf(many, { page: page.page, dpi: DPI });
    for (const place of places.filter(({ at }) => shows(sheets, page, at))) {
      const [there, here] = [strayAt(onOne, only, place), strayAt(raster, page, place)];
      if (!seen.has(place)) unseen--;
      seen.add(place);
      // Furniture may stand near a line on either page; then the line is told from it elsewhere.
      if (there === null || here === null) throw new Error("A line has a gap.");
      worst = Math.max(worst, Math.abs(here - there));
      compared++;
    }
  }
  return { worst, compared, unseen };
};

describe("sheets put together", () => {
  test.each(["a4", "letter", "a0", "roll-914"] as const satisfies readonly PaperName[])(
    "show on %s what one page as large as all shows, within 0.2 mm",
    async (paper) => {
      const { worst, compared, unseen } = await compare(laidOn(paper));
      expect(compared).toBeGreaterThan(500);
      expect(unseen / compared).toBeLessThan(0.05);
      expect(worst).toBeLessThan(JOINED);
    },
  );
});

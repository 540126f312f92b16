import { describe, expect, test } from "vitest";
import { toPdf } from "../../../src/export/pdf.ts";
import { placesByMarks } from "../../../src/trace/files/pageMarks.ts";
import { readPdf } from "../../../src/trace/files/pdfIn.ts";
import { FONT, laidOn } from "../../support/sheetSubjects.ts";

const pagesOf = async (bytes: Uint8Array) => {
  const told = await readPdf(bytes);
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};

describe("the tool's own sheets, put together by their corner marks", () => {
  test.each(["a4", "letter", "a3"] as const)(
    "lie as the report says, on %s",
    { timeout: 60_000 },
    async (paper) => {
      const { subject, sheets } = laidOn(paper);
      const places = placesByMarks(await pagesOf(await toPdf(subject, sheets, { font: FONT })));
      const [first] = places ?? [];
      const origin = sheets.pages.find(({ page }) => page === first?.page);
      if (!places || !first || !origin) throw new Error("nothing was put together");
      expect(places).toHaveLength(sheets.pages.length);
      for (const { page, x, y } of places) {
        const truth = sheets.pages.find((other) => other.page === page);
        expect(x, `page ${page}`).toBeCloseTo((truth?.x ?? Number.NaN) - origin.x, 2);
        expect(y, `page ${page}`).toBeCloseTo((truth?.y ?? Number.NaN) - origin.y, 2);
      }
    },
  );

  test("are none where no two pages share a mark", () => {
    const page = { width: 210, height: 297, lines: [] };
    const at = { x: 10, y: 10 };
    expect(placesByMarks([{ ...page, page: 1, marks: [{ letter: "a", at }] }])).toBeNull();
    expect(
      placesByMarks([
        { ...page, page: 1, marks: [{ letter: "a", at }] },
        { ...page, page: 2, marks: [{ letter: "b", at }] },
      ]),
    ).toBeNull();
  });
});

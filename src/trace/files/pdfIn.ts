import { faulty, found, type Told } from "../told.ts";
import { MOST_SEGMENTS, type PdfPageLines } from "./drawing.ts";
import { marksOf } from "./pageMarks.ts";
import { linesOfPage, pageSize, wordsOfPage } from "./pdfLines.ts";
import { openPdf } from "./pdfReader.ts";

/**
 * The lines of a vector PDF in mm at true scale, page by page; layers that are hidden are left out.
 * Coordinates are good to 0.001 mm (the library keeps them as 32-bit numbers). Told with one
 * sentence: a password, a file that is no PDF, a PDF without lines (a scan).
 */
export const readPdf = async (
  bytes: Uint8Array,
  worker: string | null = null,
): Promise<Told<readonly PdfPageLines[]>> => {
  const opened = await openPdf(bytes, worker);
  if ("fault" in opened) return opened;
  const pages = opened.found.map((page, i) => {
    const lines = linesOfPage(page);
    const marks = marksOf(lines, wordsOfPage(page));
    return { page: i + 1, ...pageSize(page), lines, marks };
  });
  const parts = pages.reduce(
    (sum, { lines }) => sum + lines.reduce((count, { path }) => count + path.length, 0),
    0,
  );
  if (parts > MOST_SEGMENTS) {
    return faulty(
      "file",
      `${parts} parts`,
      `The PDF draws ${parts} parts of lines; ${MOST_SEGMENTS} is the most, and a pattern has some thousand.`,
      "Save only the pages of the block.",
    );
  }
  if (parts > 0) return found(pages);
  return faulty(
    "file",
    "no lines",
    "The PDF draws no lines: it holds pictures or words only, as a scan does.",
    "Save the page as a picture and bring it in as a scan.",
  );
};

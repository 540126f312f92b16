import type { Fault } from "../../drafting/fault.ts";
import type { PdfPageLines } from "../../trace/files/drawing.ts";
import { readSvg } from "../../trace/files/svgIn.ts";
import { faulty, found, type Told } from "../../trace/told.ts";
import { openBringing } from "./bringing.ts";
import { newDrawing } from "./drawing.ts";
import { withDrawing } from "./drawingChanges.ts";
import { ownSay } from "./ownSay.ts";
import { changeOwn, own, putOwn } from "./state.ts";

/** The largest drawing that is opened, in bytes: a pattern of thirty pages has a tenth of it. */
const LARGEST = 40_000_000;
const MB = 1_000_000;

const readPdfFile = async (file: File): Promise<Told<readonly PdfPageLines[]>> => {
  const [{ readPdf }, { PDF_WORKER }] = await Promise.all([
    import("../../trace/files/pdfIn.ts"),
    import("./pdfWorker.ts"),
  ]);
  return readPdf(new Uint8Array(await file.arrayBuffer()), PDF_WORKER);
};

const readSvgFile = async (file: File): Promise<Told<readonly PdfPageLines[]>> => {
  const read = readSvg(await file.text());
  if ("fault" in read) return read;
  return found([{ page: 1, width: 0, height: 0, lines: read.found.lines, marks: [] }]);
};

const isPdf = async (file: File): Promise<boolean> =>
  /\.pdf$/iu.test(file.name) || (await file.slice(0, 5).text()) === "%PDF-";

const refuse = (fault: Fault): void => putOwn({ told: fault, busy: null });

const read = async (file: File): Promise<void> => {
  if (file.size > LARGEST) {
    const { fault } = faulty(
      "file",
      `${Math.ceil(file.size / MB)} MB`,
      `The file has ${Math.ceil(file.size / MB)} MB; ${LARGEST / MB} MB is the most that is opened.`,
      "Save only the pieces of the block.",
    );
    refuse(fault);
    return;
  }
  const kind = (await isPdf(file)) ? "pdf" : "svg";
  const pages = await (kind === "pdf" ? readPdfFile(file) : readSvgFile(file));
  if ("fault" in pages) {
    refuse(pages.fault);
    return;
  }
  const drawing = newDrawing(file.name, kind, pages.found);
  changeOwn(
    withDrawing({ ...own(), way: "drawing" }, drawing),
    ownSay("own.step.drawing", { file: file.name }),
  );
  putOwn({ step: "pieces", busy: null, lit: null });
};

const open = async (file: File): Promise<void> => {
  putOwn({ told: null, busy: file.name, ...(own().way === "drawing" ? { step: "pieces" } : {}) });
  openBringing();
  try {
    await read(file);
  } catch {
    // The file went away while it was read, or the reader could not be loaded.
    const { fault } = faulty(
      "file",
      file.name,
      "The file could not be read to its end.",
      "Open it again; a PDF needs the network once, to load its reader.",
    );
    refuse(fault);
  }
};

/** Opens an SVG or a PDF; what cannot be read is told in one sentence and changes nothing. */
export const openDrawing = (file: File): void => {
  open(file).catch(() => undefined);
};

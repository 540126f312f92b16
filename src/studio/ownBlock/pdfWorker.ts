import { GlobalWorkerOptions } from "pdfjs-dist/legacy/build/pdf.mjs";
import worker from "pdfjs-dist/legacy/build/pdf.worker.min.mjs?url";

/** Tells the PDF library where its own worker lies: among our files, never elsewhere. */
export const startPdfWorker = async (): Promise<void> => {
  GlobalWorkerOptions.workerSrc = worker;
};

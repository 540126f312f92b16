import address from "pdfjs-dist/legacy/build/pdf.worker.min.mjs?url";

/** Where the PDF library's own worker lies: among our files, loaded when a PDF is opened. */
export const PDF_WORKER: string = address;

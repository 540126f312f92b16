import { type ReportSubject, reportBytes } from "../../src/export/report.ts";
import type { Sheets } from "../../src/export/sheets.ts";

/** `report.json` as text, as anyone reads it from the file. */
export const reportText = (subject: ReportSubject, sheets: Sheets): string =>
  new TextDecoder("utf-8", { fatal: true }).decode(reportBytes(subject, sheets));

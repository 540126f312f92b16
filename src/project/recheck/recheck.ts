import { bandFindings } from "./bands.ts";
import { edgeFindings } from "./edges.ts";
import type { Finding } from "./finding.ts";
import { measureReport } from "./measured.ts";
import { notchFindings } from "./notches.ts";
import type { ReportFile } from "./reportFile.ts";
import { seamFindings } from "./seams.ts";

/**
 * Everything in a report that does not hold. Nothing that it says of itself is trusted: every line
 * is measured again from what is drawn.
 */
export const recheck = (report: ReportFile): readonly Finding[] => {
  const measured = measureReport(report);
  return [
    ...edgeFindings(measured),
    ...seamFindings(measured),
    ...notchFindings(measured),
    ...bandFindings(measured),
  ];
};

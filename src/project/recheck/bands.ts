import type { Mm } from "../../geometry/units.ts";
import { type Finding, SAME_LENGTH, SAME_RATIO, unlike } from "./finding.ts";
import { edgeNamed, type MeasuredReport } from "./measured.ts";
import type { ReportBand } from "./reportFile.ts";

type BandName = "neckband" | "cuff" | "hemBand";

const finished = (measured: MeasuredReport, name: string): Mm =>
  edgeNamed(measured, name)?.finished ?? 0;

/** The sewn length that each band meets, from the drawn lines (method 5.1 and 5.3). */
const openingOf = (measured: MeasuredReport, band: BandName): Mm => {
  const edge = (name: string) => finished(measured, name);
  if (band === "cuff") return edge("sleeve.wrist");
  if (band === "hemBand") return 2 * (edge("front.hem") + edge("back.hem"));
  const half = edge("front.neckline") + edge("sleeve.neckline") + edge("back.neckline");
  return 2 * half + edge("vInsert.top");
};

/** The sums of a band: from opening and finished length to what is cut. */
const sumsHold = (band: ReportBand, where: string, allowance: Mm): readonly Finding[] => {
  const { opening, finishedLength, cutLength, cutHeight, finishedDepth } = band;
  const stretch = opening / finishedLength - 1;
  const height = 2 * (finishedDepth + allowance);
  return [
    ...unlike(where, "cutLength", [cutLength, finishedLength + 2 * allowance], SAME_LENGTH),
    ...unlike(where, "cutHeight", [cutHeight, height], SAME_LENGTH),
    ...(Math.abs(band.ratio - finishedLength / opening) <= SAME_RATIO
      ? []
      : [{ where, what: `ratio is ${band.ratio}, but length over opening is otherwise.` }]),
    ...(Math.abs(band.stretchToSew - stretch) <= SAME_RATIO
      ? []
      : [{ where, what: `stretchToSew is ${band.stretchToSew}, but its lengths give otherwise.` }]),
  ];
};

const bandHolds = (measured: MeasuredReport, name: BandName): readonly Finding[] => {
  const band = measured.report.bands[name];
  const allowance = measured.report.choices.allowances.bands;
  const opening = openingOf(measured, name);
  const [top, end] = [finished(measured, `${name}.top`), finished(measured, `${name}.endA`)];
  return [
    ...unlike(name, "opening", [band.opening, opening], SAME_LENGTH),
    ...unlike(name, "finishedLength", [band.finishedLength, top], SAME_LENGTH),
    ...unlike(name, "cutHeight", [band.cutHeight, end + 2 * allowance], SAME_LENGTH),
    ...sumsHold(band, name, allowance),
  ];
};

/** What does not hold of the bands. */
export const bandFindings = (measured: MeasuredReport): readonly Finding[] =>
  (["neckband", "cuff", "hemBand"] as const).flatMap((name) => bandHolds(measured, name));

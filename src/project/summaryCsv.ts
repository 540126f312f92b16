import type { Check, Verdict } from "../checks/check.ts";
import type { SeamId } from "../drafting/seams.ts";
import type { Made } from "./make.ts";

/** The columns of `summary.csv`, in the contract's order. */
const COLUMNS = [
  "id",
  "verdict",
  "checks_attend",
  "checks_stop",
  "estimated",
  "front_raglan",
  "back_raglan",
  "side",
  "underarm",
  "neckline_opening",
  "neckband_cut_length",
  "neckband_cut_height",
  "cuff_cut_length",
  "cuff_cut_height",
  "hem_band_cut_length",
  "hem_band_cut_height",
  "sheets",
] as const;

/** What the summary says of one body. Lengths in mm, the rest are counts. */
export type Summary = Readonly<Record<(typeof COLUMNS)[number], string | number>>;

/** The verdict of a body is the worst of its checks (method, section 6). */
export const worstVerdict = (checks: readonly Check[]): Verdict => {
  const isThere = (verdict: Verdict) => checks.some((check) => check.verdict === verdict);
  if (isThere("stop")) return "stop";
  return isThere("attend") ? "attend" : "sound";
};

/** Contract: numbers carry at least 4 decimals where they are not exact. */
const FOUR_DECIMALS = 1e4;
const length = (value: number): number => Math.round(value * FOUR_DECIMALS) / FOUR_DECIMALS;

export const summaryOf = ({ body, garment, checks }: Made, sheets: number): Summary => {
  const seam = (id: SeamId) => length(garment.seams.find((one) => one.id === id)?.lengthA ?? 0);
  const count = (verdict: Verdict) => checks.filter((check) => check.verdict === verdict).length;
  const { neckband, cuff, hemBand } = garment.bands;
  return {
    id: body.id,
    verdict: worstVerdict(checks),
    checks_attend: count("attend"),
    checks_stop: count("stop"),
    estimated: body.estimated.length,
    front_raglan: seam("raglan-front"),
    back_raglan: seam("raglan-back"),
    side: seam("side"),
    underarm: seam("underarm"),
    neckline_opening: length(neckband.opening),
    neckband_cut_length: length(neckband.cutLength),
    neckband_cut_height: length(neckband.cutHeight),
    cuff_cut_length: length(cuff.cutLength),
    cuff_cut_height: length(cuff.cutHeight),
    hem_band_cut_length: length(hemBand.cutLength),
    hem_band_cut_height: length(hemBand.cutHeight),
    sheets,
  };
};

/** A spreadsheet runs a cell that starts like this; an apostrophe before it makes it text. */
const RUNS = /^[=+\-@\t\r]/;
const NEEDS_QUOTES = /[",;\r\n]/;

/** A cell of a CSV file (RFC 4180) that no spreadsheet takes for a formula. Numbers stay numbers. */
export const csvCell = (value: string | number): string => {
  if (typeof value === "number") return String(value);
  const text = RUNS.test(value) ? `'${value}` : value;
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** One line of `summary.csv`, without its end. Kept instead of the garment: it is small. */
export const summaryLine = (summary: Summary): string =>
  COLUMNS.map((column) => csvCell(summary[column])).join(",");

/** The whole of `summary.csv`, lines in the order given. */
export const summaryCsv = (lines: readonly string[]): string =>
  `${[COLUMNS.join(","), ...lines].join("\r\n")}\r\n`;

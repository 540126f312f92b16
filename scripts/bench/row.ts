/** One line of the table: what was measured, against which goal. */
export type Row = {
  readonly what: string;
  readonly measured: string;
  /** Empty where nothing is asked of it: it stands there to be compared. */
  readonly goal: string;
  /** Null where there is no goal. */
  readonly isMet: boolean | null;
  readonly note?: string;
};

const HEADINGS = ["what", "measured", "goal", "met", ""] as const;

const cellsOf = ({ what, measured, goal, isMet, note }: Row): readonly string[] => [
  what,
  measured,
  goal,
  isMet === null ? "" : isMet ? "yes" : "NO",
  note ?? "",
];

export const printRows = (title: string, rows: readonly Row[]): void => {
  const all = [[...HEADINGS], ...rows.map(cellsOf)];
  const widths = HEADINGS.map((_, i) => Math.max(...all.map((cells) => cells[i]?.length ?? 0)));
  console.log(`\n${title}`);
  for (const cells of all) {
    console.log(`  ${cells.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join("  ")}`.trimEnd());
  }
};

/** Three digits that count, in plain figures. */
export const short = (value: number): string =>
  value >= 1000 ? Math.round(value).toLocaleString("en-GB") : String(Number(value.toPrecision(3)));

/** An error, as a power of ten: its size is what counts. */
export const small = (value: number): string => (value === 0 ? "0" : value.toExponential(0));

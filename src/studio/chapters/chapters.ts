/** The chapters, in working order. */
export const CHAPTERS = [
  "measures",
  "cloth",
  "block",
  "alterations",
  "ribs",
  "turnings",
  "paper",
  "making",
] as const;
export type Chapter = (typeof CHAPTERS)[number];

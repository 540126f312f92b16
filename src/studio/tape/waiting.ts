/** Checks that wait for a body: the ones every garment has. */
export const WAITING = [
  "raglan-front-match",
  "raglan-back-match",
  "side-match",
  "underarm-match",
  "neckline-turn",
  "underarm-turn",
  "chest-ease",
  "head-passes",
  "hand-passes-cuff",
  "hem-band-passes",
  "v-insert-match",
];

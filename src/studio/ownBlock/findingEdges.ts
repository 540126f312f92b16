/** The edges that each finding of the doctor looked at: drawn heavier while it is in hand. */
const EDGES = {
  "raglan-front-match": ["front.raglan", "sleeve.raglanFront"],
  "raglan-back-match": ["back.raglan", "sleeve.raglanBack"],
  "side-match": ["front.side", "back.side"],
  "underarm-match": ["sleeve.underarmFront", "sleeve.underarmBack"],
  "neckline-turn": ["front.neckline", "back.neckline", "sleeve.neckline"],
  "underarm-turn-body": ["front.raglan", "back.raglan"],
  "underarm-turn-sleeve": ["sleeve.raglanFront", "sleeve.raglanBack"],
  "front-neckline-square": ["front.neckline"],
  "front-hem-square": ["front.hem"],
  "back-neckline-square": ["back.neckline"],
  "back-hem-square": ["back.hem"],
  "sleeve-level": ["sleeve.underarmFront", "sleeve.underarmBack"],
  "sleeve-middle": ["sleeve.wrist"],
  "raglan-balance": ["front.raglan", "back.raglan"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type FindingId = keyof typeof EDGES;

export const isFindingId = (id: string): id is FindingId => Object.hasOwn(EDGES, id);

export const edgesOfFinding = (id: string): readonly string[] => (isFindingId(id) ? EDGES[id] : []);

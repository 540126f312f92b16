import type { EdgeName, PieceName } from "../../drafting/piece.ts";
import type { Seam } from "../../drafting/seams.ts";
import type { FieldId } from "../fields/fields.ts";

export type Place = `${PieceName}.${EdgeName}`;
export const place = (piece: PieceName, edge: EdgeName): Place => `${piece}.${edge}`;

const NECK: readonly Place[] = ["front.neckline", "back.neckline", "sleeve.neckline"];
const V: readonly Place[] = ["front.v", "vInsert.left", "vInsert.right"];
const RAGLANS: readonly Place[] = [
  "front.raglan",
  "back.raglan",
  "sleeve.raglanFront",
  "sleeve.raglanBack",
];
const SIDES: readonly Place[] = ["front.side", "back.side"];
const UNDERARMS: readonly Place[] = ["sleeve.underarmFront", "sleeve.underarmBack"];
const HEMS: readonly Place[] = ["front.hem", "back.hem"];
const TURNED: readonly Place[] = [...NECK, ...HEMS, "sleeve.wrist"];

/** The lines that a number moves: drawn heavier while it is in hand. */
const OF_FIELD: { readonly [K in FieldId]?: readonly Place[] } = {
  "fit.chestEase": [...SIDES, ...RAGLANS],
  "fit.upperArmEase": UNDERARMS,
  "fit.lengthBelowHip": HEMS,
  "moveSideSeams.by": SIDES,
  "raiseHem.by": HEMS,
  "endSleeve.aboveWrist": ["sleeve.wrist"],
  "neckline.lowerFront": ["front.neckline"],
  "neckline.lowerBack": ["back.neckline"],
  "neckline.widen": NECK,
  "vInsert.halfWidth": V,
  "vInsert.depth": V,
  "vInsert.allowance": V,
  "allowances.raglan": RAGLANS,
  "allowances.side": SIDES,
  "allowances.underarm": UNDERARMS,
  "allowances.bands": TURNED,
  "cuff.cutHeight": ["cuff.bottom"],
  "cuff.ease": ["cuff.endA", "cuff.endB"],
  "hemBand.cutHeight": ["hemBand.bottom"],
  "hemBand.ease": ["hemBand.endA", "hemBand.endB"],
  "neckband.finishedDepth": ["neckband.bottom"],
  "neckband.ratio": ["neckband.endA", "neckband.endB"],
};

/** What a check measured: drawn wide while its card is open. */
const OF_CHECK: Readonly<Record<string, readonly Place[]>> = {
  "raglan-front-match": ["front.raglan", "sleeve.raglanFront"],
  "raglan-back-match": ["back.raglan", "sleeve.raglanBack"],
  "side-match": SIDES,
  "underarm-match": UNDERARMS,
  "neckline-turn": NECK,
  "underarm-turn": [...SIDES, ...UNDERARMS],
  "hem-turn": HEMS,
  "wrist-turn": ["sleeve.wrist"],
  "chest-ease": SIDES,
  "hip-ease": HEMS,
  "upper-arm-ease": UNDERARMS,
  "head-passes": ["neckband.top"],
  "neckline-passes": NECK,
  "neckband-lies-flat": ["neckband.top", ...NECK],
  "neckband-stands": ["neckband.top", ...NECK],
  "neckband-sews": ["neckband.top", ...NECK],
  "hand-passes-cuff": ["cuff.top"],
  "cuff-holds": ["cuff.top", "sleeve.wrist"],
  "cuff-pressure": ["cuff.top"],
  "hem-band-passes": ["hemBand.top"],
  "hem-band-holds": ["hemBand.top", ...HEMS],
  "hem-band-pressure": ["hemBand.top"],
  "v-insert-match": V,
  "side-seam-move": RAGLANS,
};

export const linesOfField = (field: FieldId | null): readonly Place[] =>
  (field === null ? undefined : OF_FIELD[field]) ?? [];

export const linesOfCheck = (check: string | null): readonly Place[] =>
  (check === null ? undefined : OF_CHECK[check]) ?? [];

/** The edges that an edge is sewn to. */
export const partnersOf = (seams: readonly Seam[], at: Place | null): readonly Place[] =>
  seams.flatMap(({ a, b }) => {
    const sides = [a, b].map((side) => side.map(([piece, edge]) => place(piece, edge)));
    const mine = sides.findIndex((side) => side.some((name) => name === at));
    return mine < 0 ? [] : (sides[1 - mine] ?? []);
  });

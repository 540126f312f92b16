import type { MarkTo } from "../../bands/band.ts";
import type { PieceName } from "../../drafting/piece.ts";

type PieceTitle = {
  readonly title: string;
  readonly cloth: "body cloth" | "rib";
  /** How it is cut; what from stands before it. */
  readonly how: string;
};

/** What each piece is called on paper, what it is cut from and how. */
export const PIECE_TITLES: Readonly<Record<PieceName, PieceTitle>> = {
  front: { title: "Front", cloth: "body cloth", how: ", on the fold" },
  back: { title: "Back", cloth: "body cloth", how: ", on the fold" },
  sleeve: { title: "Sleeve", cloth: "body cloth", how: ", a mirrored pair" },
  vInsert: { title: "V-insert", cloth: "body cloth", how: "" },
  neckband: { title: "Neckband", cloth: "rib", how: ", stretch along its length" },
  cuff: { title: "Cuff", cloth: "rib", how: ", stretch along its length" },
  hemBand: { title: "Hem band", cloth: "rib", how: ", stretch along its length" },
};

/** Where each of the neckband's marks comes to lie. */
export const MARK_WORDS: Readonly<Record<MarkTo, string>> = {
  "centre-back": "centre back",
  "raglan-back": "raglan, back",
  "half-way": "half way",
  "raglan-front": "raglan, front",
  "centre-front": "centre front",
};

/** The quarter marks of cuff and hem band, in the order in which they stand on the band. */
export const CUFF_MARKS: readonly string[] = ["underarm seam", "quarter", "half", "quarter"];
export const HEM_MARKS: readonly string[] = ["side", "centre front", "side", "centre back"];

import type { PieceName } from "../drafting/piece.ts";
import type { Assumption, ClothNeeded, Needed } from "../lay/clothNeeded.ts";
import { count, given, said, share, type Told, told, words } from "./words/told.ts";

const pieceWord = (piece: PieceName): Told => said(`piece.${piece}`);

const neededSentence = (cloth: "body" | "rib", needed: Needed): Told => {
  const width = given(needed.width);
  if (needed.kind === "too-narrow") {
    const piece = words(pieceWord(needed.piece));
    return told("cloth.narrow", { piece, needs: given(needed.needs), width });
  }
  const length = given(needed.buy);
  return cloth === "rib"
    ? told("cloth.rib", { width, length })
    : told("cloth.body", { width, length, laid: words(said(`cloth.${needed.laid}`)) });
};

/** How much cloth and rib is needed at each width, or which piece is too wide for it. */
export const clothSentences = ({ body, rib }: ClothNeeded): readonly Told[] => [
  ...body.map((needed) => neededSentence("body", needed)),
  ...rib.map((needed) => neededSentence("rib", needed)),
];

const assumedSentence = (assumption: Assumption): Told => {
  switch (assumption.id) {
    case "rows":
      return said("cloth.rows");
    case "gap":
      return told("cloth.gap", { gap: given(assumption.gap) });
    case "one-way":
      return said("cloth.oneWay");
    case "washed-first":
      return said("cloth.washedFirst");
    case "enlarged":
      return told("cloth.enlarged", {
        length: share(assumption.length),
        width: share(assumption.width),
      });
    case "rib-across":
      return said("cloth.ribAcross");
    case "rib-washed":
      return said("cloth.ribWashed");
    case "in-parts":
      return told("cloth.inParts", {
        piece: words(pieceWord(assumption.piece)),
        width: given(assumption.width),
        parts: count(assumption.parts),
      });
    case "rounded":
      return told("cloth.rounded", { by: given(assumption.by) });
  }
};

/** What was taken for granted in reckoning the cloth. */
export const assumedSentences = ({ assumed }: ClothNeeded): readonly Told[] =>
  assumed.map(assumedSentence);

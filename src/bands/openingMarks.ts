import type { FinishedPieces } from "../drafting/finishedPieces.ts";
import type { Notches } from "../drafting/notches.ts";
import type { Notch, PieceName } from "../drafting/piece.ts";
import type { Mm } from "../geometry/units.ts";

type Mark = { readonly piece: PieceName; readonly notch: Notch };

const mark = (piece: PieceName, edge: Notch["edge"], at: Mm, seam: string): Mark => ({
  piece,
  notch: { edge, at, seam },
});

/** The neckband's mark half way between centre back and centre front: not a raglan seam. */
const halfWayMark = ({ back, sleeve, front }: FinishedPieces, opening: Mm): Mark => {
  const way = opening / 4;
  if (way <= back.neckline.length) return mark("back", "neckline", way, "neckband");
  const onSleeve = way - back.neckline.length;
  if (onSleeve <= sleeve.neckline.length) {
    return mark("sleeve", "neckline", onSleeve, "neckband");
  }
  const onFront = front.neckline.length - (onSleeve - sleeve.neckline.length);
  return mark("front", "neckline", Math.max(0, onFront), "neckband");
};

/** Where the bands' marks stand on the edges that they are sewn to (method 5.2, 5.3). In mm. */
const openingMarks = (pieces: FinishedPieces, neckOpening: Mm): readonly Mark[] => {
  const { front, back, sleeve, vInsert } = pieces;
  const wrist = sleeve.wrist.length;
  return [
    mark("back", "neckline", 0, "neckband"),
    vInsert
      ? mark("vInsert", "top", vInsert.top.length / 2, "neckband")
      : mark("front", "neckline", 0, "neckband"),
    halfWayMark(pieces, neckOpening),
    mark("front", "hem", 0, "hem-band"),
    mark("front", "hem", front.hem.length, "hem-band"),
    mark("back", "hem", 0, "hem-band"),
    mark("back", "hem", back.hem.length, "hem-band"),
    ...[0, 1, 2, 3].map((i) => mark("sleeve", "wrist", (wrist * i) / 4, "cuff")),
  ];
};

/** The notches of the seams with the marks of the bands beside them. */
export const withOpeningMarks = (
  notches: Notches,
  pieces: FinishedPieces,
  neckOpening: Mm,
): Notches => {
  const marks = openingMarks(pieces, neckOpening);
  const of = (piece: PieceName): readonly Notch[] => [
    ...notches[piece],
    ...marks.filter((m) => m.piece === piece).map((m) => m.notch),
  ];
  return {
    front: of("front"),
    back: of("back"),
    sleeve: of("sleeve"),
    vInsert: of("vInsert"),
    neckband: of("neckband"),
    cuff: of("cuff"),
    hemBand: of("hemBand"),
  };
};

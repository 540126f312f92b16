import type { DrawnEdge, Piece } from "../drafting/piece.ts";
import { endOf } from "../geometry/path.ts";
import { along, minus, type Point, plus, stepped, times } from "../geometry/point.ts";
import type { Degrees, Mm } from "../geometry/units.ts";
import { ASCENT } from "./data/letterWidths.ts";
import { bandMarkWords } from "./pieceFacts.ts";
import { foldEnds, isBand, type NotchPlace, notchPlaces } from "./pieceLines.ts";
import { cosSin } from "./placing.ts";
import type { SheetSubject } from "./subject.ts";
import { widthOf } from "./word.ts";

/** Where the middle of a word may stand, and how it reads: 0 across, -90 up the piece. */
type Place = { readonly at: Point; readonly turn: Degrees };

/**
 * A word that belongs beside a line, in the piece's own frame. It stands at the first of its places
 * that is clear; where none is, it is left out.
 */
export type FixedWord = {
  readonly text: string;
  readonly size: Mm;
  readonly strong: boolean;
  readonly places: readonly Place[];
};

const SMALL: Mm = 2.5;
const PLAIN: Mm = 2.9;
const SIDE: Mm = 5;
/** From a line to the letters beside it. */
const OFF: Mm = 1.6;
/** The same, and farther off where so near a word would lie over the joint of two sheets. */
const OFFS: readonly Mm[] = [OFF, 7, 11];
/** The sleeve's sides are named so far out to either side, and so far below the underarm. */
const SIDE_SHARES: readonly number[] = [0.68, 0.55, 0.42, 0.3];
const SIDE_DOWNS: readonly Mm[] = [26, 42, 62, 10, -10, 85, 110];

/** A place beside a point of a line: the letters stand on that side of it, `away` from it. */
const beside = (
  at: Point,
  turn: Degrees,
  size: Mm,
  side: "over" | "under",
  off: Mm = OFF,
): Place => {
  const [cos, sin] = cosSin(turn);
  const down = { x: -sin, y: cos };
  return { at: stepped(at, down, side === "over" ? -off : off + size * ASCENT), turn };
};

/** The way in which a line is read: straight up where it is steep, else across. */
const readingOf = (from: Point, to: Point): Degrees =>
  Math.abs(to.y - from.y) > Math.abs(to.x - from.x) ? -90 : 0;

const grainWord = ({ grain: { from, to } }: Piece): FixedWord => {
  const turn = readingOf(from, to);
  const shares = [0.5, 0.3, 0.7];
  const places = OFFS.flatMap((off) =>
    shares.flatMap((share) => [
      beside(along(from, to, share), turn, PLAIN, "over", off),
      beside(along(from, to, share), turn, PLAIN, "under", off),
    ]),
  );
  return { text: "grain", size: PLAIN, strong: false, places };
};

/** Along the upright of the fold's bracket. */
const foldWords = (piece: Piece): readonly FixedWord[] => {
  const ends = foldEnds(piece);
  if (!ends) return [];
  const places = OFFS.flatMap((off) =>
    [0.5, 0.4, 0.6, 0.25, 0.75].map((share) =>
      beside(along(ends[0], ends[1], share), -90, PLAIN, "under", off),
    ),
  );
  const long = Math.abs(ends[1].y - ends[0].y);
  const text = widthOf(LONG_FOLD, PLAIN) < long ? LONG_FOLD : "fold";
  return [{ text, size: PLAIN, strong: false, places }];
};
const LONG_FOLD = "place on the fold";

/** What a band's mark meets, read up the band beside the mark, on its right or else on its left. */
const bandWords = (piece: Piece, garment: SheetSubject["garment"]): readonly FixedWord[] => {
  const words = bandMarkWords(piece, garment);
  return notchPlaces(piece).map(({ at }, i) => {
    const text = words[i] ?? "";
    const middle = plus(at, { x: 0, y: OFF + widthOf(text, SMALL) / 2 });
    const aside = plus(middle, { x: OFF, y: 0 });
    const places = [
      beside(middle, -90, SMALL, "under"),
      beside(middle, -90, SMALL, "over"),
      beside(aside, -90, SMALL, "under"),
    ];
    return { text, size: SMALL, strong: false, places };
  });
};

/** What the mark of a body piece's neckline meets; other notches have one partner and no name. */
const neckMark = ({ name }: Piece, { notch }: NotchPlace): string | null => {
  if (notch.seam === "shoulder") return "shoulder";
  if (notch.seam !== "neckband") return null;
  if (name === "back" && notch.at === 0) return "centre back";
  return name === "vInsert" || (name === "front" && notch.at === 0) ? "centre front" : "half way";
};

/** Inside the piece under the mark: in its middle, or to either side, or a line lower. */
const neckWords = (piece: Piece): readonly FixedWord[] =>
  notchPlaces(piece).flatMap((place) => {
    const text = neckMark(piece, place);
    if (text === null) return [];
    const inward = times(place.outward, -1);
    const half = widthOf(text, SMALL) / 2;
    const places = [0, 1, 2].flatMap((row) =>
      [0, half, -half].map((aside) => ({
        at: plus(stepped(place.at, inward, OFF + SMALL * (1 + 1.3 * row)), { x: aside, y: 0 }),
        turn: 0,
      })),
    );
    return [{ text, size: SMALL, strong: false, places }];
  });

const edgeEnd = (edges: readonly DrawnEdge[], name: string): Point | null => {
  const edge = edges.find((e) => e.name === name);
  return edge ? endOf(edge.path) : null;
};

/** Which half of the sleeve is the front; its two raglan seams look alike. */
export const sideWords = ({ name, edges }: Piece): readonly FixedWord[] => {
  const front = edgeEnd(edges, "raglanFront");
  const back = edgeEnd(edges, "underarmBack");
  if (name !== "sleeve" || !front || !back) return [];
  const centre = times(plus(front, back), 0.5);
  return [
    { text: "front", end: front },
    { text: "back", end: back },
  ].map(({ text, end }) => {
    const places = SIDE_SHARES.flatMap((share) => {
      const foot = plus(centre, times(minus(end, centre), share));
      return SIDE_DOWNS.map((down) => ({ at: plus(foot, { x: 0, y: down }), turn: 0 }));
    });
    return { text, size: SIDE, strong: true, places };
  });
};

/** Words that have their place beside a line of the piece, and hardly another. */
export const lineWords = (piece: Piece, garment: SheetSubject["garment"]): readonly FixedWord[] => [
  ...(isBand(piece) ? bandWords(piece, garment) : neckWords(piece)),
  grainWord(piece),
  ...foldWords(piece),
];

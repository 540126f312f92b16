import type { Mm } from "../../geometry/units.ts";
import { type Finding, SAME_LENGTH, SAME_PLACE, unlike, words } from "./finding.ts";
import { edgeNamed, type MeasuredPiece, type MeasuredReport } from "./measured.ts";

/** Seams whose notches meet; the other edge of some runs the other way (contract, "Frames"). */
const PARTNERS = [
  { seam: "raglan-front", one: "front.raglan", other: "sleeve.raglanFront", turned: false },
  { seam: "raglan-back", one: "back.raglan", other: "sleeve.raglanBack", turned: true },
  { seam: "side", one: "front.side", other: "back.side", turned: false },
  { seam: "underarm", one: "sleeve.underarmFront", other: "sleeve.underarmBack", turned: true },
  { seam: "cuff", one: "sleeve.wrist", other: "cuff.top", turned: false },
] as const;
type Partners = (typeof PARTNERS)[number];

const isOnEdge = ({ name, piece, edges }: MeasuredPiece): readonly Finding[] =>
  piece.notches.flatMap(({ edge, at, seam }): readonly Finding[] => {
    const on = edges.find((one) => one.edge === edge);
    const where = `${name}.${edge}`;
    if (!on) return [{ where, what: `A notch of ${seam} is on it, but there is no such edge.` }];
    if (at >= -SAME_LENGTH && at <= on.drawn + SAME_LENGTH) return [];
    return [{ where, what: `A notch of ${seam} stands at ${words(at)}, off its end.` }];
  });

/** Where the notches of a seam stand on an edge, as parts of its length, in order. */
const sharesOn = (
  { pieces, ...measured }: MeasuredReport,
  name: string,
  seam: string,
): readonly number[] => {
  const drawn = edgeNamed({ pieces, ...measured }, name)?.drawn ?? 0;
  return pieces
    .flatMap((piece) => piece.piece.notches.map((notch) => ({ ...notch, piece: piece.name })))
    .filter((notch) => notch.seam === seam && `${notch.piece}.${notch.edge}` === name)
    .map(({ at }) => (drawn > 0 ? at / drawn : 0))
    .sort((a, b) => a - b);
};

/** Notches of two joined edges stand at the same part of their lengths, from the same end. */
const partnersMeet = (measured: MeasuredReport, partners: Partners): readonly Finding[] => {
  const { seam, one, other, turned } = partners;
  const mine = sharesOn(measured, one, seam);
  const theirs = sharesOn(measured, other, seam)
    .map((share) => (turned ? 1 - share : share))
    .sort((a, b) => a - b);
  if (mine.length !== theirs.length)
    return [
      { where: seam, what: `${one} has ${mine.length} notches, ${other} has ${theirs.length}.` },
    ];
  const length = edgeNamed(measured, one)?.drawn ?? 0;
  return mine.flatMap((share, place): readonly Finding[] => {
    const off: Mm = Math.abs(share - (theirs[place] ?? 0)) * length;
    if (off <= SAME_PLACE) return [];
    return [
      {
        where: seam,
        what: `Notch ${place + 1} of ${one} misses its partner on ${other} by ${words(off)}.`,
      },
    ];
  });
};

/** The marks of a band are also the notches on its top edge. */
const marksAreNotches = (
  { pieces, report }: MeasuredReport,
  band: "neckband" | "cuff" | "hemBand",
): readonly Finding[] => {
  const marks =
    band === "neckband"
      ? report.bands.neckband.marks.map(({ at }) => at)
      : report.bands[band].quarterMarks;
  const notches = (pieces.find(({ name }) => name === band)?.piece.notches ?? [])
    .filter(({ edge }) => edge === "top")
    .map(({ at }) => at);
  const where = `${band}.top`;
  if (marks.length !== notches.length)
    return [{ where, what: `It has ${notches.length} notches for ${marks.length} marks.` }];
  const inOrder = (places: readonly number[]) => [...places].sort((a, b) => a - b);
  const drawn = inOrder(notches);
  return inOrder(marks).flatMap((mark, place) =>
    unlike(where, `Mark ${place + 1}`, [mark, drawn[place] ?? 0], SAME_PLACE),
  );
};

/** What does not hold of the notches. */
export const notchFindings = (measured: MeasuredReport): readonly Finding[] => [
  ...measured.pieces.flatMap(isOnEdge),
  ...PARTNERS.flatMap((partners) => partnersMeet(measured, partners)),
  ...(["neckband", "cuff", "hemBand"] as const).flatMap((band) => marksAreNotches(measured, band)),
];

import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { clearest, coverOf, type Place, type Taken } from "./clearPlace.ts";
import { SQUARE_WORDS } from "./data/frontWords.ts";
import { PIECE_TITLES } from "./data/pieceWords.ts";
import type { LayoutDrawing } from "./drawing.ts";
import { type CornerMark, jointIn, type Neighbours, neighboursOf } from "./joints.ts";
import { madeForWords } from "./madeFor.ts";
import {
  boxRun,
  FINE,
  joinArt,
  NO_ART,
  type PageArt,
  ruled,
  straightRun,
  wordOf,
} from "./pageArt.ts";
import { bodyName } from "./pieceFacts.ts";
import type { SheetPage, Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { blockOf, plainLines, type TextBlock, wordsAt } from "./textBlock.ts";
import { sheetName, windowOf } from "./tiles.ts";
import { boxOf, meets, type Word, widthOf } from "./word.ts";

/** A sheet of the pattern and all that its furniture must know. */
export type SheetScene = {
  readonly subject: SheetSubject;
  readonly sheets: Sheets;
  readonly drawing: LayoutDrawing;
  readonly marks: readonly CornerMark[];
  readonly page: SheetPage;
};

const DIAMOND: Mm = 4.3;
const MARK_LETTER: Mm = 3.6;
const DASH: readonly Mm[] = [3, 2];
const STRIP_WORD: Mm = 2.2;
const NAME: Mm = 8;
const NAME_TEXT: Mm = 2.8;
/** What stands beside it is broken to the one of these widths that finds the highest clear place. */
const NAME_WIDTHS: readonly Mm[] = [100, 52, 36];
const windowOfScene = ({ sheets, page }: SheetScene): Box =>
  windowOf(sheets.grid, page.row, page.column);

/** A diamond with its letter. Joined sheets show one whole diamond and one whole letter. */
const cornerMark = ({ at: { x, y }, letter }: CornerMark): PageArt => {
  const points = [
    { x: x - DIAMOND, y },
    { x, y: y - DIAMOND },
    { x: x + DIAMOND, y },
    { x, y: y + DIAMOND },
  ];
  const foot = { x, y: y + MARK_LETTER * 0.28 };
  return {
    shapes: [ruled([{ points, closed: true }], 0.25)],
    words: [wordOf(letter, foot, MARK_LETTER, { from: "middle" })],
  };
};

/** A joint as pieces of line that leave its corner marks free. */
const jointRuns = (from: Point, to: Point, marks: readonly CornerMark[]) => {
  const down = from.x === to.x;
  const [start, end] = down ? [from.y, to.y] : [from.x, to.x];
  const stops = marks
    .filter(({ at }) => (down ? at.x === from.x : at.y === from.y))
    .map(({ at }) => (down ? at.y : at.x))
    .filter((along) => along > start && along < end)
    .sort((a, b) => a - b);
  const at = (along: Mm): Point => (down ? { x: from.x, y: along } : { x: along, y: from.y });
  const cuts = [start, ...stops.flatMap((s) => [s - DIAMOND, s + DIAMOND]), end];
  return cuts.flatMap((cut, i) => {
    const next = cuts[i + 1];
    return i % 2 === 0 && next !== undefined && next > cut ? [straightRun(at(cut), at(next))] : [];
  });
};

type Side = keyof Neighbours;
type Joint = {
  readonly side: Side;
  readonly from: Point;
  readonly to: Point;
  readonly word: string;
};

/** Overlapping sheets are cut off left and above and laid on the one before; butt ones all round. */
const isTrimmed = (side: Side, { print }: Sheets): boolean =>
  print.join === "butt" || side === "left" || side === "above";
const meetsWord = ({ print }: Sheets): string => (print.join === "butt" ? "meets" : "lay on");

const jointsOf = (scene: SheetScene): readonly Joint[] => {
  const { left, top, right, bottom } = windowOfScene(scene);
  const inward = jointIn(scene.sheets.grid);
  const [x0, x1] = [left + inward, right - inward];
  const [y0, y1] = [top + inward, bottom - inward];
  const near = neighboursOf(scene.sheets, scene.page);
  const joints: readonly (Omit<Joint, "word"> & { readonly name: string | null })[] = [
    { side: "left", from: { x: x0, y: top }, to: { x: x0, y: bottom }, name: near.left },
    { side: "above", from: { x: left, y: y0 }, to: { x: right, y: y0 }, name: near.above },
    { side: "right", from: { x: x1, y: top }, to: { x: x1, y: bottom }, name: near.right },
    { side: "below", from: { x: left, y: y1 }, to: { x: right, y: y1 }, name: near.below },
  ];
  return joints.flatMap(({ name, ...joint }) => {
    if (name === null) return [];
    // Along the foot and the right the scale leaves room for few letters; the line itself says cut.
    const isBefore = joint.side === "left" || joint.side === "above";
    const word = isBefore ? `cut off here, ${meetsWord(scene.sheets)} ${name}` : `to ${name}`;
    return [{ ...joint, word }];
  });
};

/** Places for the word of a joint: in the strip outside of it, from its middle outwards. */
const stripPlaces = ({ side, from, to, word }: Joint, inward: Mm): readonly Word[] => {
  const down = from.x === to.x;
  const outside = side === "left" || side === "above" ? -1.5 : 3.2;
  const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
  const late = side === "right" || side === "below";
  const half = widthOf(word, STRIP_WORD) / 2;
  // Along the foot and the right the scale comes first; what it leaves free lies at its end.
  const end = length - inward - DIAMOND - 1 - half;
  const places = late
    ? [0, 6, 12, 18, 24, 30].map((back) => end - back)
    : [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((share) => share * length);
  return places.map((along) =>
    wordOf(
      word,
      down
        ? { x: from.x + outside, y: from.y + along }
        : { x: from.x + along, y: from.y + outside },
      STRIP_WORD,
      { turn: down ? -90 : 0, from: "middle" },
    ),
  );
};

const jointArt = (joint: Joint, scene: SheetScene, taken: Taken): PageArt => {
  const trims = isTrimmed(joint.side, scene.sheets);
  const runs = jointRuns(joint.from, joint.to, scene.marks);
  const word = stripPlaces(joint, jointIn(scene.sheets.grid)).find(
    (place) => coverOf(taken, boxOf(place)) === 0,
  );
  return {
    shapes: [ruled(runs, trims ? 0.25 : FINE, trims ? [] : DASH)],
    words: word ? [word] : [],
  };
};

/** The pieces of which a sheet shows lines. */
const piecesOn = ({ drawing, subject, page }: SheetScene): string =>
  subject.garment.pieces
    .filter((_, i) => drawing.pieces[i]?.isOn(page.row, page.column))
    .map(({ name }) => PIECE_TITLES[name].title)
    .join(", ");

const nameBlock = (scene: SheetScene, wide: Mm): TextBlock => {
  const { subject, sheets, page } = scene;
  const place = sheets.pages.indexOf(page) + 1;
  const madeFor = madeForWords(sheets.print);
  const lines = [
    `sheet ${place} of ${sheets.pages.length}, ${bodyName(subject.body)}`,
    piecesOn(scene),
    ...(madeFor === null ? [] : [madeFor]),
  ];
  return blockOf(lines.flatMap((text) => plainLines(text, NAME_TEXT, wide)));
};

/** The sheet's name, large, and beside it whose it is, as near to the upper left as is clear. */
const nameArt = (scene: SheetScene, taken: Taken): PageArt => {
  const { row, column } = scene.page;
  const name = sheetName(row, column);
  const aside = widthOf(name, NAME) + 2.5;
  const window = windowOfScene(scene);
  const { overlap } = scene.sheets.grid;
  // Clear of lines before all; then near the top, where one looks for it.
  let best: (Place & { readonly block: TextBlock }) | null = null;
  for (const wide of NAME_WIDTHS) {
    const block = nameBlock(scene, wide);
    const height = Math.max(block.height, NAME);
    const width = aside + block.width;
    const place = clearest(taken, { window, overlap, width, height, from: "upper left" });
    if (place === null) continue;
    const isBetter =
      best === null ||
      place.cover < best.cover ||
      (place.cover === best.cover && place.box.top < best.box.top);
    if (isBetter) best = { ...place, block };
    if (best?.cover === 0 && best.box.top === window.top + overlap) break;
  }
  if (!best) return NO_ART;
  const { box, block } = best;
  const foot = { x: box.left, y: box.top + NAME * 0.86 };
  const words = wordsAt(block, { x: box.left + aside, y: box.top });
  return { shapes: [], words: [wordOf(name, foot, NAME, { strong: true }), ...words] };
};

const squareArt = ({ drawing, sheets, page }: SheetScene): PageArt => {
  const box = drawing.squares[sheets.pages.indexOf(page)];
  if (!box) return NO_ART;
  const middle = (box.left + box.right) / 2;
  const at = (down: Mm): Point => ({ x: middle, y: box.top + down });
  const style = { from: "middle" as const };
  return {
    shapes: [ruled([boxRun(box)], 0.25)],
    words: [
      wordOf("Test square", at(20), 3.2, { ...style, strong: true }),
      wordOf("50 mm from line to line,", at(25), 2.8, style),
      wordOf("both ways", at(29), 2.8, style),
      ...SQUARE_WORDS.map((text, i) => wordOf(text, at(36 + i * 3.2), 2.2, style)),
    ],
  };
};

/** Everything on a sheet but the pattern itself and the scales. */
export const sheetArt = (scene: SheetScene): PageArt => {
  const { drawing, marks } = scene;
  const window = windowOfScene(scene);
  const boxes = [...drawing.wordBoxes, ...drawing.squares].filter((box) => meets(box, window));
  const taken: Taken = { ink: drawing.ink, boxes };
  const corners = marks.filter(({ at: { x, y } }) =>
    meets({ left: x, top: y, right: x, bottom: y }, window),
  );
  return joinArt(
    ...corners.map(cornerMark),
    ...jointsOf(scene).map((joint) => jointArt(joint, scene, taken)),
    nameArt(scene, taken),
    squareArt(scene),
  );
};

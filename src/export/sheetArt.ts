import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { PIECE_TITLES } from "./data/pieceWords.ts";
import type { LayoutDrawing } from "./drawing.ts";
import { inkIn } from "./freeSpace.ts";
import { type CornerMark, JOINT_IN, type Neighbours, neighboursOf } from "./joints.ts";
import { boxRun, FINE, joinArt, type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import { bodyName } from "./pieceFacts.ts";
import type { SheetPage, Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { blockOf, type TextBlock, wordsAt } from "./textBlock.ts";
import { gridOf, sheetName, windowOf } from "./tiles.ts";
import { boxOf, grown, meets, type Word, widthOf } from "./word.ts";

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
/** The side of the test square. */
export const TEST_SQUARE: Mm = 50;
const NAME: Mm = 8;
const NAME_TEXT: Mm = 2.8;
/** Places for furniture are tried so far apart. */
const STRIDE: Mm = 3;
const CLEAR: Mm = 2.5;

/** Ink and words that furniture should keep clear of. */
type Taken = { readonly scene: SheetScene; readonly boxes: readonly Box[] };

/** How much a box would cover: squares with ink, and words, which weigh more. */
const coverOf = ({ scene, boxes }: Taken, box: Box): number =>
  inkIn(scene.drawing.ink, box) + 100 * boxes.filter((other) => meets(other, box)).length;

/** Of the boxes given the first that is clear, else the one that covers least. */
const clearest = (taken: Taken, boxes: Iterable<Box>): Box | null => {
  let best: Box | null = null;
  let least = Infinity;
  for (const box of boxes) {
    const cover = coverOf(taken, grown(box, CLEAR));
    if (cover < least) [best, least] = [box, cover];
    if (cover === 0) break;
  }
  return best;
};

const windowOfScene = ({ sheets, page }: SheetScene): Box =>
  windowOf(gridOf(sheets.width, sheets.height), page.row, page.column);

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
  const stops = marks
    .filter(({ at }) => (down ? at.x === from.x : at.y === from.y))
    .map(({ at }) => (down ? at.y : at.x))
    .sort((a, b) => a - b);
  const [start, end] = down ? [from.y, to.y] : [from.x, to.x];
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

const jointsOf = (scene: SheetScene): readonly Joint[] => {
  const { left, top, right, bottom } = windowOfScene(scene);
  const [x0, x1] = [left + JOINT_IN, right - JOINT_IN];
  const [y0, y1] = [top + JOINT_IN, bottom - JOINT_IN];
  const near = neighboursOf(scene.sheets, scene.page);
  const joints: readonly (Omit<Joint, "word"> & { readonly name: string | null })[] = [
    { side: "left", from: { x: x0, y: top }, to: { x: x0, y: bottom }, name: near.left },
    { side: "above", from: { x: left, y: y0 }, to: { x: right, y: y0 }, name: near.above },
    { side: "right", from: { x: x1, y: top }, to: { x: x1, y: bottom }, name: near.right },
    { side: "below", from: { x: left, y: y1 }, to: { x: right, y: y1 }, name: near.below },
  ];
  return joints.flatMap(({ name, ...joint }) => {
    if (name === null) return [];
    const trims = joint.side === "left" || joint.side === "above";
    return [{ ...joint, word: trims ? `cut off here, lay on ${name}` : `to ${name}` }];
  });
};

/** Places for the word of a joint: in the strip outside of it, from its middle outwards. */
const stripPlaces = ({ side, from, to, word }: Joint): readonly Word[] => {
  const down = from.x === to.x;
  const outside = side === "left" || side === "above" ? -1.5 : 3.2;
  const length = Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
  const late = side === "right" || side === "below";
  const half = widthOf(word, STRIP_WORD) / 2;
  // Along the foot and the right the scale comes first; what it leaves free lies at its end.
  const end = length - JOINT_IN - DIAMOND - 1 - half;
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
  const trims = joint.side === "left" || joint.side === "above";
  const runs = jointRuns(joint.from, joint.to, scene.marks);
  const word = stripPlaces(joint).find((place) => coverOf(taken, boxOf(place)) === 0);
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

const nameBlock = (scene: SheetScene): TextBlock => {
  const { subject, sheets, page } = scene;
  const place = sheets.pages.indexOf(page) + 1;
  const lines = [
    `sheet ${place} of ${sheets.pages.length}, ${bodyName(subject.body)}`,
    piecesOn(scene),
  ];
  return blockOf(lines.map((text) => ({ text, size: NAME_TEXT, strong: false })));
};

function* placesAlong(window: Box, width: Mm, height: Mm): Generator<Box> {
  const room = grown(window, -2 * JOINT_IN);
  for (let top = room.top; top + height <= room.bottom; top += STRIDE) {
    for (let left = room.left; left + width <= room.right; left += STRIDE) {
      yield { left, top, right: left + width, bottom: top + height };
    }
  }
}

/** The sheet's name, large, and beside it whose it is, as near to the upper left as is clear. */
const nameArt = (scene: SheetScene, taken: Taken): { art: PageArt; box: Box } | null => {
  const { row, column } = scene.page;
  const name = sheetName(row, column);
  const block = nameBlock(scene);
  const aside = widthOf(name, NAME) + 2.5;
  const places = placesAlong(windowOfScene(scene), aside + block.width, block.height);
  const box = clearest(taken, places);
  if (!box) return null;
  const foot = { x: box.left, y: box.top + block.height / 2 + NAME * 0.36 };
  const words = wordsAt(block, { x: box.left + aside, y: box.top });
  return {
    art: { shapes: [], words: [wordOf(name, foot, NAME, { strong: true }), ...words] },
    box,
  };
};

/** From the lower right to the upper left. */
function* squarePlaces(window: Box): Generator<Box> {
  const room = grown(window, -2 * JOINT_IN);
  for (let bottom = room.bottom; bottom - TEST_SQUARE >= room.top; bottom -= STRIDE) {
    for (let right = room.right; right - TEST_SQUARE >= room.left; right -= STRIDE) {
      yield { left: right - TEST_SQUARE, top: bottom - TEST_SQUARE, right, bottom };
    }
  }
}

const squareArt = (scene: SheetScene, taken: Taken): PageArt => {
  const box = clearest(taken, squarePlaces(windowOfScene(scene)));
  if (!box) return { shapes: [], words: [] };
  const middle = (box.left + box.right) / 2;
  const at = (down: Mm): Point => ({ x: middle, y: box.top + down });
  const style = { from: "middle" as const };
  return {
    shapes: [ruled([boxRun(box)], 0.25)],
    words: [
      wordOf("Test square", at(22), 3.2, { ...style, strong: true }),
      wordOf("50 mm from line to line,", at(27), 2.8, style),
      wordOf("both ways", at(31), 2.8, style),
    ],
  };
};

/** Everything on a sheet but the pattern itself and the scales. */
export const sheetArt = (scene: SheetScene): PageArt => {
  const window = windowOfScene(scene);
  const words = scene.drawing.pieces.flatMap((piece) => piece.words.map(boxOf));
  const taken: Taken = { scene, boxes: words.filter((box) => meets(box, window)) };
  const corners = scene.marks.filter(({ at: { x, y } }) =>
    meets({ left: x, top: y, right: x, bottom: y }, window),
  );
  const name = nameArt(scene, taken);
  const rest: Taken = { scene, boxes: name ? [...taken.boxes, name.box] : taken.boxes };
  return joinArt(
    ...corners.map(cornerMark),
    ...jointsOf(scene).map((joint) => jointArt(joint, scene, taken)),
    ...(name ? [name.art] : []),
    squareArt(scene, rest),
  );
};

import type { Box } from "../geometry/outline.ts";
import { mapPath } from "../geometry/path.ts";
import { type Point, plus } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { count, given, said, told } from "../guide/words/told.ts";
import { MARKER_NAMES, type MarkerName } from "../trace/photo/markerDesign.ts";
import { markerSheet } from "../trace/photo/markerSheet.ts";
import { TEST_SQUARE } from "./data/paper.ts";
import { flattened } from "./flatten.ts";
import { boxed, LETTERS } from "./guideParts.ts";
import { boxRun, joinArt, type PageArt, ruled, type Shape, wordOf } from "./pageArt.ts";
import { type PrintOptions, pagesPdf, printOf, roomOn, together, widthIn } from "./printPage.ts";
import { heading, hung, paragraph } from "./stack.ts";

/** Marks that a picture of one piece needs; more of them tell the lens's bending. */
export const FEWEST_MARKS = 4;
export const MOST_MARKS = MARKER_NAMES.length;

/** Chords of a printed circle stray from it by no more than this: a tenth of a printer's dot. */
const ROUND: Mm = 0.005;
/** The fine lines that show where the middle lies, and the test square's. */
const LINE: Mm = 0.3;
const SQUARE_LINE: Mm = 0.2;
const GAP: Mm = 5;

/** A mark with its middle at a place of the page. */
const markArt = (name: MarkerName, middle: Point): PageArt => {
  const { fills, strokes } = markerSheet(name);
  const placed = (path: (typeof strokes)[number]) =>
    flattened(
      mapPath(path, (p) => plus(p, middle)),
      ROUND,
    );
  const filled = fills.map(
    ({ path, ink }): Shape => ({
      runs: [{ points: placed(path), closed: true }],
      width: 0,
      dash: [],
      fill: ink === "black" ? 0 : 1,
    }),
  );
  const lines = strokes.map((path) => ({ points: placed(path), closed: false }));
  return { shapes: [...filled, ruled(lines, LINE)], words: [] };
};

/** The square by which the maker sees that the page was printed at true scale. */
const squareArt = (left: Mm, bottom: Mm, voice: Voice): PageArt => {
  const box: Box = { left, top: bottom - TEST_SQUARE, right: left + TEST_SQUARE, bottom };
  const middle = { x: left + TEST_SQUARE / 2, y: bottom - TEST_SQUARE / 2 };
  const text = tell(voice, told("markers.square", { side: given(TEST_SQUARE) }));
  return {
    shapes: [ruled([boxRun(box)], SQUARE_LINE)],
    words: [wordOf(text, middle, 3, { from: "middle" })],
  };
};

const SENTENCES = ["lay", "hold", "measure", "take"] as const;

/** One mark's page: the mark above, how to use it below, the square and the cautions at the foot. */
const pageArt = (name: MarkerName, of: number, room: Box, voice: Voice): PageArt => {
  const { keepClear } = markerSheet(name);
  const width = widthIn(room);
  const mark = markArt(name, { x: room.left + width / 2, y: room.top + keepClear });
  const print = told("markers.print", { side: given(TEST_SQUARE) });
  const lines = [print, ...SENTENCES.map((key) => said(`markers.${key}`))];
  const text = together(
    1.4,
    heading(`${tell(voice, said("markers.title"))} ${name}`, LETTERS.title),
    paragraph(tell(voice, told("markers.of", { of: count(of) })), LETTERS.text, width),
    ...lines.map((line, i) => hung(`${i + 1}`, tell(voice, line), LETTERS.table, width)),
  )(room.left, room.top + 2 * keepClear);
  const care = boxed(
    said("paper.cautions"),
    [said("markers.caution")],
    width - TEST_SQUARE - GAP,
    voice,
  );
  const top = room.bottom - TEST_SQUARE;
  return joinArt(
    mark,
    text.art,
    squareArt(room.left, room.bottom, voice),
    care(room.left + TEST_SQUARE + GAP, top).art,
  );
};

/** The first so many of the tool's own marks as a PDF at true scale, one a page. */
export const markersPdf = async (marks: number, options: PrintOptions): Promise<Uint8Array> => {
  const print = printOf("Ribwright", options);
  const room = roomOn(options.paper);
  const pages = MARKER_NAMES.slice(0, marks).map((name) => ({
    art: pageArt(name, marks, room, print.voice),
    lying: false,
  }));
  return pagesPdf("Ribwright marks", pages, print);
};

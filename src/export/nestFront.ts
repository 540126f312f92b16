import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { stopList } from "./checkList.ts";
import { cutList } from "./cutList.ts";
import { LAYER_STYLES } from "./data/layerStyles.ts";
import type { FrontScene } from "./frontPage.ts";
import { frontSize, insideMargins } from "./frontSize.ts";
import { type Nest, nameOfBody } from "./nest.ts";
import { FINE, joinArt, type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import { ASIDE, scaleTest, squaresBeside } from "./scaleTest.ts";
import {
  fittedHeading,
  heading,
  lineHeight,
  type Part,
  paragraph,
  space,
  stacked,
} from "./stack.ts";
import { widthOf } from "./word.ts";

const TEXT: Mm = 3;
const HEAD: Mm = 3.8;
const ROW: Mm = 4.3;
const SIZE: Mm = 2.8;
const SAMPLE: Mm = 34;
/** Where each column begins, as a share of the width; the line's sample stands in the first. */
const STARTS = [0, 0.2, 0.46, 0.58, 0.7, 0.83] as const;
const HEADINGS = ["Line", "Size or body", "Chest", "Neckband", "Cuffs", "Hem band"] as const;

const LAYER_WORDS =
  "Each size is a layer: open the list of layers in your PDF reader and switch off those that you do not want before you print. Without such a reader follow one kind of line; its name stands along it. Seam lines are a layer of their own, switched off.";

const cut = (text: string, room: Mm): string =>
  widthOf(text, SIZE) <= room ? text : `${text.slice(0, Math.max(1, Math.floor(room / 1.8)))}…`;

/** One size: its line as it is drawn, its name, and how long its bands are cut. */
const rowArt = (nest: Nest, place: number, left: Mm, y: Mm, width: Mm): PageArt => {
  const subject = nest[place] ?? nest[0];
  const { measures, bands } = subject.garment;
  const style = LAYER_STYLES[place] ?? { width: FINE, dash: [] };
  const room = width * ((STARTS[2] ?? 1) - (STARTS[1] ?? 0)) - 2;
  const cells = [
    cut(nameOfBody(subject), room),
    asMm(measures.chest),
    asMm(bands.neckband.cutLength),
    asMm(bands.cuff.cutLength),
    asMm(bands.hemBand.cutLength),
  ];
  const middle = y - SIZE * 0.28;
  const sample = straightRun({ x: left, y: middle }, { x: left + SAMPLE, y: middle });
  return {
    shapes: [ruled([sample], style.width, style.dash)],
    words: cells.map((text, i) =>
      wordOf(text, { x: left + (STARTS[i + 1] ?? 0) * width, y }, SIZE, { strong: i === 0 }),
    ),
  };
};

/** The key to the sizes. */
const sizesPart =
  (nest: Nest, width: Mm): Part =>
  (left, top) => {
    const head = top + lineHeight(SIZE);
    const heads = HEADINGS.map((text, i) =>
      wordOf(text, { x: left + (STARTS[i] ?? 0) * width, y: head - 0.6 }, 2.6),
    );
    const rule = (y: Mm) => straightRun({ x: left, y }, { x: left + width, y });
    const bottom = head + 1.4 + ROW * nest.length;
    const rows = nest.map((_, i) => rowArt(nest, i, left, head + ROW * (i + 0.9), width));
    return {
      art: joinArt(
        { shapes: [ruled([rule(head + 0.6), rule(bottom)], FINE)], words: heads },
        ...rows,
      ),
      bottom,
    };
  };

/** The first page of several sizes in one file. */
export const nestFront = (nest: Nest, scene: FrontScene): PageArt => {
  const front = frontSize(scene.sheets);
  const room = insideMargins(front);
  const width = room.right - room.left;
  const { sheets, date } = scene;
  const drawn = date === null ? "" : ` Drawn ${date}.`;
  const stops = nest.flatMap((subject) =>
    subject.checks
      .filter(({ verdict }) => verdict === "stop")
      .map((check) => ({ ...check, message: `${nameOfBody(subject)}: ${check.message}` })),
  );
  const parts = stacked(
    paragraph("Raglan sweatshirt, sewing pattern", 3.4, width),
    fittedHeading(`${nest.length} sizes in one`, [8, 6.5], width),
    paragraph(
      `${sheets.pages.length} sheets, after this page and the page map.${drawn}`,
      TEXT,
      width,
    ),
    space(2),
    stopList(stops, width, room.bottom - room.top) ?? space(0),
    squaresBeside(scaleTest(front.print, width - ASIDE)),
    space(3),
    heading("Sizes", HEAD),
    paragraph(LAYER_WORDS, TEXT, width),
    sizesPart(nest, width),
    space(3),
    heading("What to cut", HEAD),
    cutList(scene, width),
  );
  return parts(room.left, room.top).art;
};

import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { anyCrosses } from "./clip.ts";
import { BUTT_WORDS, JOINING_WORDS } from "./data/frontWords.ts";
import { PIECE_TITLES } from "./data/pieceWords.ts";
import { flattened } from "./flatten.ts";
import type { FrontScene } from "./frontPage.ts";
import { frontSize, insideMargins } from "./frontSize.ts";
import { isPrintedAt, jointIn } from "./joints.ts";
import { boxRun, joinArt, type PageArt, type Run, ruled, type Shape, wordOf } from "./pageArt.ts";
import { bodyName } from "./pieceFacts.ts";
import { plainCount } from "./plainRows.ts";
import type { Sheets } from "./sheets.ts";
import { heading, heightOf, hung, type Part, paragraph, space, stacked } from "./stack.ts";
import { type Grid, sheetName, windowOf } from "./tiles.ts";
import { boxOf, grown, isWithin, meets, type Word, widthOf } from "./word.ts";

const TEXT: Mm = 3;
const GREY = 0.82;
const TINT = 0.9;
/** Between a map and the steps that stand beside it, and the least width for them. */
const ASIDE: Mm = 6;
const NARROWEST: Mm = 48;
const ENDLESS: Mm = 1e6;
/** The letters of a piece's name. */
const NAME: Mm = 3;
/** Lines of pieces are drawn true to this on paper. */
const WITHIN: Mm = 0.05;

/** How the layout is brought down to the map. */
type MapView = {
  readonly sheets: Sheets;
  readonly grid: Grid;
  readonly scale: number;
  readonly left: Mm;
  readonly top: Mm;
};

const onMap = ({ scale, left, top }: MapView, { x, y }: Point): Point => ({
  x: left + x * scale,
  y: top + y * scale,
});

const boxOnMap = (view: MapView, box: Box): Box => {
  const a = onMap(view, { x: box.left, y: box.top });
  const b = onMap(view, { x: box.right, y: box.bottom });
  return { left: a.x, top: a.y, right: b.x, bottom: b.y };
};

/** What is seen of a sheet once all are joined. */
const cellOf = ({ sheets, grid }: MapView, row: number, column: number): Box => {
  const { left, top, right, bottom } = windowOf(grid, row, column);
  const inward = jointIn(grid);
  return {
    left: column === 0 ? left : left + inward,
    top: row === 0 ? top : top + inward,
    right: column === sheets.columns - 1 ? right : right - inward,
    bottom: row === sheets.rows - 1 ? bottom : bottom - inward,
  };
};

type Cell = { readonly row: number; readonly column: number; readonly printed: boolean };

const cellsOf = ({ sheets }: MapView): readonly Cell[] =>
  Array.from({ length: sheets.rows * sheets.columns }, (_, i) => {
    const [row, column] = [Math.floor(i / sheets.columns), i % sheets.columns];
    return { row, column, printed: isPrintedAt(sheets, row, column) };
  });

const filled = (boxes: readonly Box[], fill: number): Shape => ({
  runs: boxes.map(boxRun),
  width: 0,
  dash: [],
  fill,
});

/** Where printed sheets overlap, on either side of their joints. */
const overlaps = (view: MapView): readonly Box[] =>
  cellsOf(view)
    .filter(({ printed }) => printed)
    .flatMap(({ row, column }) => {
      const { left, top, right, bottom } = windowOf(view.grid, row, column);
      const beside = isPrintedAt(view.sheets, row, column + 1);
      const below = isPrintedAt(view.sheets, row + 1, column);
      return [
        ...(beside ? [{ left: right - view.grid.overlap, top, right, bottom }] : []),
        ...(below ? [{ left, top: bottom - view.grid.overlap, right, bottom }] : []),
      ];
    })
    .map((box) => boxOnMap(view, box));

const ground = (view: MapView): readonly Shape[] => {
  const cells = cellsOf(view);
  const boxes = (printed: boolean): readonly Box[] =>
    cells
      .filter((cell) => cell.printed === printed)
      .map(({ row, column }) => boxOnMap(view, cellOf(view, row, column)));
  return [
    filled(boxes(false), GREY),
    filled(overlaps(view), TINT),
    ruled(boxes(false).map(boxRun), 0.1),
    ruled(boxes(true).map(boxRun), 0.3),
  ];
};

/** Cut lines and folds of all pieces, small. */
const pieceRuns = (view: MapView, { drawing }: FrontScene): readonly Run[] =>
  drawing.pieces.flatMap(({ strokes }) =>
    strokes
      .filter(({ kind }) => kind === "cut" || kind === "fold")
      .map(({ path, closed }) => ({
        points: flattened(path, WITHIN / view.scale).map((p) => onMap(view, p)),
        closed,
      })),
  );

/** Sheet names in the upper left of their cells; the page of the file under them where it fits. */
const cellWords = (view: MapView): readonly Word[] =>
  cellsOf(view).flatMap(({ row, column, printed }) => {
    const box = boxOnMap(view, cellOf(view, row, column));
    const [wide, high] = [box.right - box.left, box.bottom - box.top];
    const size = Math.min(4.2, high * 0.16, wide * 0.22);
    const at = { x: box.left + size * 0.4, y: box.top + size * 1.15 };
    if (printed) return [wordOf(sheetName(row, column), at, size, { strong: true })];
    const small = Math.min(2.2, wide * 0.13);
    const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
    return [
      wordOf(sheetName(row, column), at, size * 0.8),
      wordOf("left out", middle, small, { from: "middle" }),
    ];
  });

/** Where a piece's name may stand on the map: along its middle, then round its outside. */
const namePlaces = (name: string, { left, top, right, bottom }: Box): readonly Word[] => {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const long = widthOf(name, NAME);
  const tall = bottom - top > 2.5 * (right - left);
  const [wide, high] = [right - left, bottom - top];
  const inside = [0, 0.15, -0.15, 0.3, -0.3].map((share) =>
    tall
      ? wordOf(name, { x: x + NAME / 3, y: y + share * high }, NAME, { turn: -90, from: "middle" })
      : wordOf(
          name,
          { x: x + (wide > high ? share * wide : 0), y: y + (wide > high ? 1 : share * high) },
          NAME,
          { from: "middle" },
        ),
  );
  const outside = [
    wordOf(name, { x: right + 1, y: y + 1 }, NAME),
    wordOf(name, { x: left - 1 - long, y: y + 1 }, NAME),
    wordOf(name, { x, y: bottom + 3.4 }, NAME, { from: "middle" }),
    wordOf(name, { x, y: top - 1.4 }, NAME, { from: "middle" }),
  ];
  const fits = tall ? high > long + 2 : wide > long + 4 && high > 1.6 * NAME;
  return fits ? [...inside, ...outside] : [...outside, ...inside];
};

/** What the names on the map keep clear of: the names of sheets, and lines if they can. */
type MapTaken = { readonly boxes: Box[]; readonly runs: readonly Run[] };

/** Every piece's name, clear of the names of sheets, inside the map, off the lines if it can be. */
const pieceNames = (view: MapView, scene: FrontScene, taken: MapTaken): readonly Word[] => {
  const { rows, columns } = view.sheets;
  const last = boxOnMap(view, windowOf(view.grid, rows - 1, columns - 1));
  const map = { left: view.left, top: view.top, right: last.right, bottom: last.bottom };
  const lines = taken.runs.map(({ points }) => points);
  return scene.drawing.pieces.map(({ piece, box }) => {
    const free = namePlaces(PIECE_TITLES[piece].title, boxOnMap(view, box)).filter((word) => {
      const room = grown(boxOf(word), 0.3);
      return isWithin(room, map) && !taken.boxes.some((other) => meets(other, room));
    });
    const off = free.find((word) => !anyCrosses(lines, grown(boxOf(word), 0.3)));
    const word = off ?? free[0] ?? wordOf("", { x: map.left, y: map.top }, NAME);
    taken.boxes.push(boxOf(word));
    return word;
  });
};

/** The window of the last sheet: how far the layout reaches. */
const reachOf = ({ grid, rows, columns }: Sheets): Box => windowOf(grid, rows - 1, columns - 1);

const viewOf = (sheets: Sheets, room: Box): MapView => {
  const last = reachOf(sheets);
  const scale = Math.min(
    (room.right - room.left) / last.right,
    (room.bottom - room.top) / last.bottom,
  );
  return { sheets, grid: sheets.grid, scale, left: room.left, top: room.top };
};

const mapArt = (scene: FrontScene, room: Box): PageArt => {
  const view = viewOf(scene.sheets, room);
  const words = cellWords(view);
  const runs = pieceRuns(view, scene);
  const names = pieceNames(view, scene, { boxes: words.map(boxOf), runs });
  // White behind words that stand on white, so that no line runs through them.
  const behind = [...words.filter(({ strong }) => strong), ...names];
  return {
    shapes: [
      ...ground(view),
      ruled(runs, scene.subject.body.among === undefined ? 0.35 : 0.12),
      filled(
        behind.map((word) => grown(boxOf(word), 0.2)),
        1,
      ),
    ],
    words: [...words, ...names],
  };
};

const headPart = ({ subject, sheets }: FrontScene, width: Mm): Part => {
  const left = sheets.rows * sheets.columns - sheets.pages.length;
  const out = left === 0 ? "" : ` ${left} hold nothing and are left out.`;
  const plain = plainCount(subject.garment.pieces, sheets);
  const saved = plain > sheets.pages.length ? `; plain rows would need ${plain}` : "";
  return stacked(
    heading("How the sheets go together", 6),
    paragraph(
      `${bodyName(subject.body)}. ${sheets.pages.length} sheets${saved}.${out}`,
      TEXT,
      width,
    ),
    space(2.5),
  );
};

const stepsPart = ({ print }: Sheets, width: Mm): Part =>
  stacked(
    ...(print.join === "butt" ? BUTT_WORDS : JOINING_WORDS).map((text, i) =>
      stacked(hung(String(i + 1), text, TEXT, width), space(1)),
    ),
  );

/** How wide a map is that fills a room from top to bottom. */
const widthAt = (sheets: Sheets, room: Box): Mm => {
  const { scale } = viewOf(sheets, { ...room, right: room.left + ENDLESS });
  return viewOf(sheets, room).scale < scale ? Infinity : reachOf(sheets).right * scale;
};

/** The second page: all sheets with their pieces, and how to join them, beside or under the map. */
export const mapPage = (scene: FrontScene): PageArt => {
  const room = insideMargins(frontSize(scene.sheets));
  const width = room.right - room.left;
  const head = headPart(scene, width)(room.left, room.top);
  const below = { ...room, top: head.bottom };
  const left = room.left + widthAt(scene.sheets, below) + ASIDE;
  if (room.right - left >= NARROWEST) {
    const steps = stepsPart(scene.sheets, room.right - left)(left, below.top);
    return joinArt(head.art, mapArt(scene, { ...below, right: left - ASIDE }), steps.art);
  }
  const steps = stepsPart(scene.sheets, width);
  const foot = room.bottom - heightOf(steps);
  return joinArt(
    head.art,
    mapArt(scene, { ...below, bottom: foot - 3 }),
    steps(room.left, foot).art,
  );
};

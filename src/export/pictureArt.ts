import type { Box } from "../geometry/outline.ts";
import { type Point, point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { hatchOf } from "../guide/hatch.ts";
import type { MarkKind, Picture, PictureStroke } from "../guide/picture.ts";
import { tell, type Voice } from "../guide/words/tell.ts";
import { clipArea, clipRun } from "./clipRun.ts";
import {
  MARK_STYLES,
  PICTURE_LETTERS,
  RIB,
  RIGHT_GREY,
  STOP,
  WRONG,
} from "./data/pictureStyles.ts";
import { flattened } from "./flatten.ts";
import { type PageArt, type Run, ruled, type Shape, straightRun, wordOf } from "./pageArt.ts";
import { boxOf, isWithin, type Word } from "./word.ts";

/** How true the lines of a picture are on paper. */
const WITHIN: Mm = 0.01;

/** Where and how small a picture stands on a page. */
type Frame = { readonly view: Box; readonly scale: number; readonly at: Point; readonly box: Box };

const frameOf = (
  { view }: Picture,
  at: Point,
  most: { readonly width: Mm; readonly height: Mm },
) => {
  const [wide, high] = [view.right - view.left, view.bottom - view.top];
  const scale = Math.min(most.width / wide, most.height / high);
  const box = { left: at.x, top: at.y, right: at.x + wide * scale, bottom: at.y + high * scale };
  return { view, scale, at, box };
};

const onPage = ({ view, scale, at }: Frame, p: Point): Point =>
  point(at.x + (p.x - view.left) * scale, at.y + (p.y - view.top) * scale);

const pointsOf = (frame: Frame, { path }: PictureStroke): readonly Point[] =>
  flattened(path, WITHIN / frame.scale).map((p) => onPage(frame, p));

const closedRun = (points: readonly Point[]): Run => ({ points, closed: true });
const openRun = (points: readonly Point[]): Run => ({ points, closed: false });

const area = (points: readonly Point[], fill: number, width: Mm): Shape => ({
  runs: [closedRun(points)],
  width,
  dash: [],
  fill,
});

const HALF = Math.SQRT1_2;

/** The way of a rib: square to the length of its band as it lies; none for a bent band. */
const ribWay = ({ origin }: PictureStroke): Point | null =>
  origin ? point(origin.place.c, origin.place.d) : null;

const fillShapes = (frame: Frame, stroke: PictureStroke): readonly Shape[] => {
  const points = clipArea(pointsOf(frame, stroke), frame.box);
  if (points.length < 3) return [];
  if (stroke.kind === "right") return [area(points, RIGHT_GREY, 0)];
  if (stroke.kind === "wrong") {
    const lines = hatchOf(points, { ...WRONG, way: point(HALF, -HALF) });
    return [
      area(points, 1, 0),
      ruled(
        lines.map(([a, b]) => straightRun(a, b)),
        WRONG.width,
      ),
    ];
  }
  const way = ribWay(stroke);
  const ribs = way ? hatchOf(points, { apart: RIB.apart, way, dash: 0, gap: 0 }) : [];
  return [
    area(points, RIB.grey, RIB.edge),
    ruled(
      ribs.map(([a, b]) => straightRun(a, b)),
      RIB.width,
    ),
  ];
};

const ROUND = 24;

/** A round dot: straights enough that it looks round. */
const dot = ({ x, y }: Point, across: Mm): Shape => {
  const points = Array.from({ length: ROUND }, (_, i) => {
    const turn = (2 * Math.PI * i) / ROUND;
    return point(x + (Math.cos(turn) * across) / 2, y + (Math.sin(turn) * across) / 2);
  });
  return area(points, 0, 0);
};

const markShapes = (frame: Frame, kind: MarkKind, stroke: PictureStroke): readonly Shape[] => {
  const points = pointsOf(frame, stroke);
  if (kind === "stop") return points.slice(0, 1).map((p) => dot(p, STOP));
  const { width, dash } = MARK_STYLES[kind];
  const runs = clipRun(points, frame.box).map(openRun);
  return runs.length > 0 ? [ruled(runs, width, dash)] : [];
};

const shapesOf = (frame: Frame, stroke: PictureStroke): readonly Shape[] => {
  const { kind } = stroke;
  return kind === "right" || kind === "wrong" || kind === "rib"
    ? fillShapes(frame, stroke)
    : markShapes(frame, kind, stroke);
};

/** White under letters, so that a hatch does not run through them. */
const plate = (word: Word): Shape => {
  const { left, top, right, bottom } = boxOf(word);
  return area(
    [point(left, top), point(right, top), point(right, bottom), point(left, bottom)],
    1,
    0,
  );
};

const wordsOf = (frame: Frame, { words }: Picture, voice: Voice): readonly Word[] =>
  words.map(({ told, at, from }) => {
    const { x, y } = onPage(frame, at);
    return wordOf(tell(voice, told), point(x, y + PICTURE_LETTERS * 0.35), PICTURE_LETTERS, {
      from,
    });
  });

/** A picture drawn with its upper left corner at a point, as large as fits; what lies outside is cut. */
export const pictureArt = (
  picture: Picture,
  at: Point,
  most: { readonly width: Mm; readonly height: Mm },
  voice: Voice,
): { readonly art: PageArt; readonly box: Box } => {
  const frame = frameOf(picture, at, most);
  const words = wordsOf(frame, picture, voice).filter((word) => isWithin(boxOf(word), frame.box));
  const shapes = picture.strokes.flatMap((stroke) => shapesOf(frame, stroke));
  return { art: { shapes: [...shapes, ...words.map(plate)], words }, box: frame.box };
};

import { clipArea, clipRun } from "../../export/clipRun.ts";
import { flattened } from "../../export/flatten.ts";
import { type Point, point } from "../../geometry/point.ts";
import { hatchOf } from "../../guide/hatch.ts";
import type { FillKind, MarkKind, Picture, PictureStroke } from "../../guide/picture.ts";
import { tell, type Voice } from "../../guide/words/tell.ts";
import type { Size } from "../table/view.ts";

type ShapeKind = FillKind | MarkKind | "hatch" | "ribs";
type Shape = { readonly kind: ShapeKind; readonly d: string };
type Word = {
  readonly x: number;
  readonly y: number;
  readonly from: "start" | "middle";
  readonly text: string;
};

/** A picture of the guide in px, to be drawn as it stands. */
export type DrawnPicture = Size & {
  readonly shapes: readonly Shape[];
  readonly words: readonly Word[];
};

/** On the screen, in px whatever the picture's scale. */
const WRONG = { apart: 6.4, dash: 5.6, gap: 5.3, way: point(Math.SQRT1_2, -Math.SQRT1_2) };
const RIBS_APART = 4.4;
const STOP = 5;
const WITHIN = 0.15;
/** Height of letters, and their width as a share of it: a word is kept within the picture. */
export const PICTURE_LETTERS = 13;
const LETTER_WIDE = 0.53;

const px = (value: number): string => value.toFixed(1);
const run = (points: readonly Point[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${px(x)} ${px(y)}`).join("");

const dot = ({ x, y }: Point): string =>
  `M${px(x - STOP)} ${px(y)}a${STOP} ${STOP} 0 1 0 ${2 * STOP} 0a${STOP} ${STOP} 0 1 0 ${-2 * STOP} 0Z`;

type Frame = { readonly size: Size; readonly at: (p: Point) => Point; readonly scale: number };

const frameOf = ({ view }: Picture, most: Size): Frame => {
  const [wide, high] = [view.right - view.left, view.bottom - view.top];
  const scale = Math.min(most.width / wide, most.height / high);
  return {
    scale,
    size: { width: wide * scale, height: high * scale },
    at: ({ x, y }) => point((x - view.left) * scale, (y - view.top) * scale),
  };
};

const boxOf = ({ width, height }: Size) => ({ left: 0, top: 0, right: width, bottom: height });

const hatched = (kind: "wrong" | "rib", points: readonly Point[], stroke: PictureStroke): Shape => {
  const { origin } = stroke;
  const ribs = origin ? point(origin.place.c, origin.place.d) : null;
  const straights =
    kind === "wrong"
      ? hatchOf(points, WRONG)
      : ribs
        ? hatchOf(points, { apart: RIBS_APART, way: ribs, dash: 0, gap: 0 })
        : [];
  return { kind: kind === "wrong" ? "hatch" : "ribs", d: straights.map(run).join("") };
};

const shapesOf = (frame: Frame, stroke: PictureStroke): readonly Shape[] => {
  const { kind } = stroke;
  const points = flattened(stroke.path, WITHIN / frame.scale).map(frame.at);
  const box = boxOf(frame.size);
  if (kind === "right" || kind === "wrong" || kind === "rib") {
    const inside = clipArea(points, box);
    if (inside.length < 3) return [];
    const fill = { kind, d: `${run(inside)}Z` };
    return kind === "right" ? [fill] : [fill, hatched(kind, inside, stroke)];
  }
  const [first] = points;
  if (kind === "stop") return first ? [{ kind, d: dot(first) }] : [];
  const d = clipRun(points, box).map(run).join("");
  return d === "" ? [] : [{ kind, d }];
};

const wordsOf = ({ size, at }: Frame, { words }: Picture, voice: Voice): readonly Word[] =>
  words.map(({ told, at: place, from }) => {
    const text = tell(voice, told);
    const { x, y } = at(place);
    const wide = text.length * PICTURE_LETTERS * LETTER_WIDE;
    const [least, most] =
      from === "middle" ? [wide / 2, size.width - wide / 2] : [0, size.width - wide];
    return {
      x: Math.max(least, Math.min(most, x)),
      y: Math.max(PICTURE_LETTERS, Math.min(size.height - 3, y + PICTURE_LETTERS * 0.35)),
      from,
      text,
    };
  });

/** A picture as large as fits; what lies outside its view is cut. */
export const drawnPicture = (picture: Picture, most: Size, voice: Voice): DrawnPicture => {
  const frame = frameOf(picture, most);
  return {
    ...frame.size,
    shapes: picture.strokes.flatMap((stroke) => shapesOf(frame, stroke)),
    words: wordsOf(frame, picture, voice),
  };
};

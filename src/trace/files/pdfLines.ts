import { mapSegment } from "../../geometry/curve.ts";
import { pathOf } from "../../geometry/path.ts";
import { along, type Point } from "../../geometry/point.ts";
import { cubic, line, type Segment } from "../../geometry/segment.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { type Affine, movedBy, UNMOVED, within } from "./affine.ts";
import type { PageWord, ReadLine } from "./drawing.ts";
import type { PdfPage, PdfStep } from "./pdfReader.ts";

const MM_PER_POINT = MM_PER_INCH / 72;

/** From a page's own units to mm, x right and y down from the upper left corner as it is read. */
const toPage = ({ box, unit, turn }: PdfPage): Affine => {
  const [left, bottom, right, top] = box;
  const by = MM_PER_POINT * unit;
  switch (((turn % 360) + 360) % 360) {
    case 90:
      return { a: 0, b: by, c: by, d: 0, e: -bottom * by, f: -left * by };
    case 180:
      return { a: -by, b: 0, c: 0, d: by, e: right * by, f: -bottom * by };
    case 270:
      return { a: 0, b: -by, c: -by, d: 0, e: top * by, f: right * by };
    default:
      return { a: by, b: 0, c: 0, d: -by, e: -left * by, f: top * by };
  }
};

/** Width and height of a page as it is read, mm. */
export const pageSize = ({
  box,
  unit,
  turn,
}: PdfPage): { readonly width: number; readonly height: number } => {
  const [left, bottom, right, top] = box;
  const across = (right - left) * MM_PER_POINT * unit;
  const up = (top - bottom) * MM_PER_POINT * unit;
  return turn % 180 === 0 ? { width: across, height: up } : { width: up, height: across };
};

/** Its words, each where it begins, mm from the upper left corner. */
export const wordsOfPage = (page: PdfPage): readonly PageWord[] => {
  const to = toPage(page);
  return page.words.map(({ text, x, y }) => ({ text: text.trim(), at: movedBy(to, { x, y }) }));
};

const isNumber = (value: unknown): value is number => typeof value === "number";

/** Six numbers of a matrix as a transform; null where they are something else. */
const affineOf = (given: readonly unknown[]): Affine | null => {
  const numbers = given.filter(isNumber);
  if (numbers.length !== 6) return null;
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = numbers;
  return { a, b, c, d, e, f };
};

/** Codes of the library's path data: move, line, curve, quadratic curve, close. */
const MOVE = 0;
const LINE = 1;
const CURVE = 2;
const QUADRATIC = 3;

type Run = { readonly segments: Segment[]; isClosed: boolean };

/** Path data of the library as runs. */
const runsIn = (data: ArrayLike<number>): readonly Run[] => {
  const runs: Run[] = [];
  let at: Point = { x: 0, y: 0 };
  let start = at;
  let run: Run = { segments: [], isClosed: false };
  let i = 0;
  const next = (): Point => {
    const p = { x: data[i] ?? 0, y: data[i + 1] ?? 0 };
    i += 2;
    return p;
  };
  const straight = (to: Point): void => {
    if (to.x !== at.x || to.y !== at.y) run.segments.push(line(at, to));
    at = to;
  };
  while (i < data.length) {
    const code = data[i++];
    if (code === MOVE) {
      at = next();
      start = at;
      run = { segments: [], isClosed: false };
      runs.push(run);
    } else if (code === LINE) straight(next());
    else if (code === CURVE) {
      const [p, q, end] = [next(), next(), next()];
      run.segments.push(cubic(at, p, q, end));
      at = end;
    } else if (code === QUADRATIC) {
      const [p, end] = [next(), next()];
      run.segments.push(cubic(at, along(at, p, 2 / 3), along(end, p, 2 / 3), end));
      at = end;
    } else {
      straight(start);
      run.isClosed = true;
    }
  }
  return runs;
};

const isNumbers = (value: unknown): value is ArrayLike<number> =>
  ArrayBuffer.isView(value) || (Array.isArray(value) && value.every(isNumber));

/** Instructions that put ink on a path: with them a path is drawn, without it only cuts others off. */
const INKED = new Set([
  "stroke",
  "closeStroke",
  "fill",
  "eoFill",
  "fillStroke",
  "eoFillStroke",
  "closeFillStroke",
  "closeEOFillStroke",
]);

type State = {
  readonly to: Affine;
  readonly layers: readonly { readonly name: string; readonly isShown: boolean }[];
};

type Walk = {
  readonly page: PdfPage;
  readonly inked: ReadonlySet<number>;
  readonly saved: State["to"][];
  readonly lines: ReadLine[];
  to: Affine;
  layers: State["layers"];
};

/** A path's runs as lines in mm, where it is inked and its layers are shown. */
const takePath = (walk: Walk, given: readonly unknown[]): void => {
  const [ink, parts] = given;
  const [data] = Array.isArray(parts) ? parts : [];
  if (!isNumber(ink) || !walk.inked.has(ink) || !isNumbers(data)) return;
  if (walk.layers.some(({ isShown }) => !isShown)) return;
  const names = walk.layers.map(({ name }) => name).filter((name) => name !== "");
  for (const { segments, isClosed } of runsIn(data)) {
    if (segments.length === 0) continue;
    const path = pathOf(segments.map((s) => mapSegment(s, (p) => movedBy(walk.to, p))));
    walk.lines.push({ names, path, isClosed });
  }
};

/** The layer that marked content belongs to, where it belongs to one. */
const layerOf = (page: PdfPage, given: readonly unknown[]): State["layers"][number] => {
  const [kind, properties] = given;
  const id =
    kind === "OC" && typeof properties === "object" && properties !== null && "id" in properties
      ? properties.id
      : null;
  return typeof id === "string" ? page.layer(id) : { name: "", isShown: true };
};

const takeStep = (walk: Walk, { name, given }: PdfStep): void => {
  switch (name) {
    case "save":
      walk.saved.push(walk.to);
      break;
    case "restore":
      walk.to = walk.saved.pop() ?? walk.to;
      break;
    case "transform":
      walk.to = within(walk.to, affineOf(given) ?? UNMOVED);
      break;
    case "paintFormXObjectBegin": {
      const [matrix] = given;
      walk.saved.push(walk.to);
      walk.to = within(walk.to, affineOf(isNumbers(matrix) ? Array.from(matrix) : []) ?? UNMOVED);
      break;
    }
    case "paintFormXObjectEnd":
      walk.to = walk.saved.pop() ?? walk.to;
      break;
    case "beginMarkedContent":
    case "beginMarkedContentProps":
      walk.layers = [...walk.layers, layerOf(walk.page, given)];
      break;
    case "endMarkedContent":
      walk.layers = walk.layers.slice(0, -1);
      break;
    case "constructPath":
      takePath(walk, given);
      break;
  }
};

/** The lines that a page draws, in mm from its upper left corner, y down. Words are no lines. */
export const linesOfPage = (page: PdfPage): readonly ReadLine[] => {
  const inked = new Set([...INKED].flatMap((name) => page.codes.get(name) ?? []));
  const walk: Walk = { page, inked, saved: [], lines: [], to: toPage(page), layers: [] };
  for (const step of page.steps) takeStep(walk, step);
  return walk.lines;
};

import type { Garment } from "../bands/garment.ts";
import type { Piece, PieceName } from "../drafting/piece.ts";
import { straight } from "../geometry/path.ts";
import {
  along,
  minus,
  out,
  type Point,
  plus,
  point,
  times as scaled,
  stepped,
  unit,
} from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_STYLES } from "./data/lineStyles.ts";
import { flattened } from "./flatten.ts";
import { type Nested, nestOn, type Outline, type Quarter, turnedPoint } from "./nestSheet.ts";
import { joinArt, NO_ART, type PageArt, type Run, ruled, type Shape, wordOf } from "./pageArt.ts";

/** How true a small drawing is: a class measures on it with a rule. */
const WITHIN: Mm = 0.003;
/** How true the outlines are by which pieces are kept apart. */
const APART_WITHIN: Mm = 0.1;
/** Between pieces: room for scissors, and what is enough where the sheet is full. */
const ROOMY: Mm = 7;
const TIGHT: Mm = 2;
const OUTLINE: Mm = 0.35;
/** A front that lies over a back is told apart by its dashes. */
const OVER: readonly Mm[] = [3, 1.2];
const TITLE: Mm = 4.2;
const HEAD: Mm = 2.4;

/** Pieces that stand together on a sheet: one, or front and back over each other on one fold. */
type Group = readonly Piece[];

type Size = { readonly width: Mm; readonly height: Mm };

type PieceTitle = (name: PieceName) => string;

/** Where on the page the pieces may stand, how small they are, what they are called. */
export type SmallPage = {
  readonly corner: Point;
  readonly size: Size;
  readonly times: number;
  readonly titles: PieceTitle;
};

const outlineOf = (group: Group, times: number): Outline =>
  group.flatMap(({ edges }) =>
    edges
      .flatMap(({ path }) => flattened(path, APART_WITHIN * times))
      .map((p) => scaled(p, 1 / times)),
  );

/** From a piece's frame to the page. */
type Way = (p: Point) => Point;

const wayOf = (
  group: Group,
  { quarter, at }: Nested,
  { corner, times }: Pick<SmallPage, "corner" | "times">,
): Way => {
  const turned = outlineOf(group, times).map((p) => turnedPoint(p, quarter));
  const left = Math.min(...turned.map(({ x }) => x));
  const top = Math.min(...turned.map(({ y }) => y));
  return (p) => {
    const { x, y } = turnedPoint(scaled(p, 1 / times), quarter);
    return point(corner.x + at.x + x - left, corner.y + at.y + y - top);
  };
};

const runOf = (path: Path, way: Way, times: number): Run => ({
  points: flattened(path, WITHIN * times).map(way),
  closed: false,
});

/** Heads at both ends of the grain: the piece may lie either way round. */
const grainRuns = ({ grain: { from, to } }: Piece, way: Way, times: number): readonly Run[] => {
  const [a, b] = [way(from), way(to)];
  const ahead = unit(minus(b, a));
  const heads = [
    { tip: b, back: scaled(ahead, -1) },
    { tip: a, back: ahead },
  ].map(({ tip, back }) => {
    const foot = stepped(tip, back, HEAD);
    const side = scaled(out(back), HEAD / 3);
    return { points: [plus(foot, side), tip, minus(foot, side)], closed: false };
  });
  return [runOf(straight(from, to), way, times), ...heads];
};

/** Every edge is a run of its own, as long on the sheet as on the piece over the scale. */
const pieceShapes = (
  piece: Piece,
  way: Way,
  { times, over }: { readonly times: number; readonly over: boolean },
): readonly Shape[] => {
  const runs = (isFold: boolean): readonly Run[] =>
    piece.edges
      .filter(({ name }) => (name === piece.onFold) === isFold)
      .map(({ path }) => runOf(path, way, times));
  const folds = over ? [] : runs(true);
  return [
    ruled(runs(false), OUTLINE, over ? OVER : []),
    ...(folds.length > 0 ? [ruled(folds, LINE_STYLES.fold.width, [7, 2, 1, 2])] : []),
    ...(over ? [] : [ruled(grainRuns(piece, way, times), LINE_STYLES.grain.width)]),
  ];
};

/** The names of pieces under their grain, or beside it where it runs across the sheet. */
const titlesOf = (group: Group, way: Way, quarter: Quarter, titles: PieceTitle): PageArt => {
  const [piece] = group;
  if (!piece) return NO_ART;
  const { from, to } = piece.grain;
  const [middle, a, b] = [way(along(from, to, 0.5)), way(from), way(to)];
  const at =
    quarter % 2 === 1
      ? point(middle.x, middle.y - TITLE)
      : point(middle.x, Math.max(a.y, b.y) + 1.5 * TITLE);
  const words = group.map(({ name }, i) =>
    wordOf(titles(name), point(at.x, at.y + i * 1.4 * TITLE), TITLE, {
      from: "middle",
      strong: i === 0,
    }),
  );
  return { shapes: [], words };
};

const drawn = (groups: readonly Group[], nested: readonly Nested[], page: SmallPage): PageArt =>
  joinArt(
    ...groups.flatMap((group, i) => {
      const place = nested[i];
      if (!place) return [];
      const way = wayOf(group, place, page);
      const shapes = group.flatMap((piece, over) =>
        pieceShapes(piece, way, { times: page.times, over: over > 0 }),
      );
      return [{ shapes, words: [] }, titlesOf(group, way, place.quarter, page.titles)];
    }),
  );

/** Groups of pieces on one sheet, roomily where they go so; null where they do not at all. */
const onOne = (groups: readonly Group[], page: SmallPage): PageArt | null => {
  const outlines = groups.map((group) => outlineOf(group, page.times));
  const nested =
    nestOn(outlines, { ...page.size, gap: ROOMY }) ??
    nestOn(outlines, { ...page.size, gap: TIGHT });
  return nested ? drawn(groups, nested, page) : null;
};

type Block = Garment["block"];

/** Front, back and sleeve apart from each other on one sheet; null where they do not go on one. */
export const blockApart = ({ front, back, sleeve }: Block, page: SmallPage): PageArt | null =>
  onOne([[front], [back], [sleeve]], page);

/** The same with the front over the back, on one fold, which takes less of a sheet. */
export const blockOverlaid = ({ front, back, sleeve }: Block, page: SmallPage): PageArt | null =>
  onOne([[back, front], [sleeve]], page);

/** The block on as many sheets as it takes. A piece larger than a sheet is left out. */
export const blockOnSheets = (block: Block, page: SmallPage): readonly PageArt[] => {
  const one = blockApart(block, page);
  if (one) return [one];
  const { front, back, sleeve } = block;
  const bodies = onOne([[front], [back]], page);
  const sheets = bodies ? [bodies] : [onOne([[front]], page), onOne([[back]], page)];
  return [...sheets, onOne([[sleeve]], page)].flatMap((art) => art ?? []);
};

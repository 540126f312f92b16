import type { Mm } from "../geometry/units.ts";
import { LINE_KINDS, LINE_STYLES, type LineKind } from "./data/lineStyles.ts";
import { joinArt, type Run, ruled, straightRun } from "./pageArt.ts";
import { type Part, paragraph, space, stacked } from "./stack.ts";

const SAMPLE: Mm = 20;
const GAP: Mm = 3;
const SIZE: Mm = 2.9;

/** A sample of a kind of line, from `left`, at height `y`. */
const sampleRuns = (kind: LineKind, left: Mm, y: Mm): readonly Run[] => {
  const right = left + SAMPLE;
  if (kind === "notch") {
    return [7, 12].map((x) =>
      straightRun({ x: left + x, y: y - 2.4 }, { x: left + x, y: y + 2.4 }),
    );
  }
  const shaft = straightRun({ x: left, y }, { x: right, y });
  if (kind !== "grain") return [shaft];
  const heads = [
    { tip: left, back: 4 },
    { tip: right, back: -4 },
  ].map(({ tip, back }) => ({
    points: [
      { x: tip + back, y: y - 1.3 },
      { x: tip, y },
      { x: tip + back, y: y + 1.3 },
    ],
    closed: false,
  }));
  return [shaft, ...heads];
};

const entry =
  (kind: LineKind, width: Mm): Part =>
  (left, top) => {
    const { width: pen, dash, means } = LINE_STYLES[kind];
    const words = paragraph(means, SIZE, width - SAMPLE - GAP)(left + SAMPLE + GAP, top);
    const sample = ruled(sampleRuns(kind, left, top + SIZE * 0.68), pen, dash);
    return { art: joinArt({ shapes: [sample], words: [] }, words.art), bottom: words.bottom };
  };

/** Between the columns of the key. */
const BETWEEN: Mm = 6;

/** What each kind of line means. */
export const lineKey =
  (width: Mm, columns: 1 | 2): Part =>
  (left, top) => {
    const wide = (width - (columns - 1) * BETWEEN) / columns;
    const kinds = LINE_KINDS.filter((kind) => LINE_STYLES[kind].means !== "");
    const each = Math.ceil(kinds.length / columns);
    const parts = Array.from({ length: columns }, (_, i) =>
      stacked(
        ...kinds.slice(i * each, (i + 1) * each).flatMap((kind) => [entry(kind, wide), space(1)]),
      )(left + i * (wide + BETWEEN), top),
    );
    return {
      art: joinArt(...parts.map(({ art }) => art)),
      bottom: Math.max(...parts.map(({ bottom }) => bottom)),
    };
  };

import type { Block } from "../../drafting/piece.ts";
import { pointAt } from "../../geometry/curve.ts";
import { apart } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { balanceFindings } from "./balanceFindings.ts";
import type { Finding, Remedy } from "./remedy.ts";
import { seamFindings } from "./seamFindings.ts";
import { turnFindings } from "./turnFindings.ts";

/** All that the doctor looks at in a block, sound findings too. Lengths in mm, angles in degrees. */
export const examine = (block: Block): readonly Finding[] => [
  ...seamFindings(block),
  ...turnFindings(block),
  ...balanceFindings(block),
];

/** What a remedy would do, before it is done. */
export type Preview = {
  readonly block: Block;
  readonly before: readonly Finding[];
  readonly after: readonly Finding[];
  /** How far the farthest point of each piece would move, mm. */
  readonly moves: { readonly front: Mm; readonly back: Mm; readonly sleeve: Mm };
  /** Findings that were sound and would not be any more, by their ids. */
  readonly worse: readonly string[];
};

const SAMPLES = [0, 0.25, 0.5, 0.75, 1] as const;

const farthest = (before: Path, after: Path): Mm => {
  let far = 0;
  for (const [i, s] of before.entries()) {
    const other = after[i];
    if (!other) continue;
    for (const t of SAMPLES) far = Math.max(far, apart(pointAt(s, t), pointAt(other, t)));
  }
  return far;
};

const movedMost = (
  before: Readonly<Record<string, Path>>,
  after: Readonly<Record<string, Path>>,
): Mm =>
  Math.max(0, ...Object.entries(before).map(([name, path]) => farthest(path, after[name] ?? path)));

/** A remedy tried on a block: the block it would give, what the doctor would find, what moves. */
export const preview = (block: Block, remedy: Remedy): Preview => {
  const next = remedy.apply(block);
  const [before, after] = [examine(block), examine(next)];
  const wasSound = new Set(before.filter((f) => f.verdict === "sound").map(({ id }) => id));
  return {
    block: next,
    before,
    after,
    moves: {
      front: movedMost(block.front, next.front),
      back: movedMost(block.back, next.back),
      sleeve: movedMost(block.sleeve, next.sleeve),
    },
    worse: after.filter((f) => f.verdict !== "sound" && wasSound.has(f.id)).map(({ id }) => id),
  };
};

import type { Garment } from "../../bands/garment.ts";
import type { PieceName } from "../../drafting/piece.ts";
import { endOf, lastOf, mapPath } from "../../geometry/path.ts";
import type { Path } from "../../geometry/segment.ts";

/**
 * How far the altered sleeve was moved up or down when its underarm was set on y = 0 (method 3.4).
 * The raglan goes on straight from its old end, so that end is where the last line begins.
 */
const sleeveMove = (old: Path, altered: Path, prolonged: boolean): number => {
  const last = lastOf(altered);
  const oldEnd = prolonged && last.kind === "line" ? last.start : last.end;
  return oldEnd.y - endOf(old).y;
};

/** The block's own lines, in the frame of the altered piece, so that old lies under new. */
export const oldLinesOf = (garment: Garment, name: PieceName): readonly Path[] => {
  const { block, finished, choices } = garment;
  if (name !== "front" && name !== "back" && name !== "sleeve") return [];
  const edges = block[name].edges.filter((edge) => edge.name !== "centre");
  if (name !== "sleeve") return edges.map(({ path }) => path);
  const raglan = edges.find((edge) => edge.name === "raglanFront");
  const { on, by } = choices.alterations.moveSideSeams;
  const down = raglan ? sleeveMove(raglan.path, finished.sleeve.raglanFront.path, on && by > 0) : 0;
  return edges.map(({ path }) => mapPath(path, (p) => ({ x: p.x, y: p.y + down })));
};

import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { after, type Homography, SAME } from "./homography.ts";
import { hullOf } from "./hull.ts";
import { type Plane, planeOf } from "./plane.ts";
import type { TablePicture } from "./rectify.ts";
import type { Rigid } from "./rigid.ts";

/** The plane of a second picture in the first one's frame: mm of the first to its own pixels. */
export const planeInFrame = ({ toPicture, lens }: Plane, { turn, moved }: Rigid): Plane => {
  // The way back from the first frame: undo the shift, then the turn.
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const shift = moved({ x: 0, y: 0 });
  const back: Homography = {
    ...SAME,
    a: c,
    b: s,
    c: -c * shift.x - s * shift.y,
    d: -s,
    e: c,
    f: s * shift.x - c * shift.y,
  };
  return planeOf(after(back, toPicture), lens);
};

/** From where to where a row of the table crosses a convex ring; empty where it does not. */
const spanOf = (ring: readonly Point[], y: Mm): readonly [Mm, Mm] => {
  let [from, to] = [Infinity, -Infinity];
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a.y <= y === b.y <= y) continue;
    const x = a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y);
    from = Math.min(from, x);
    to = Math.max(to, x);
  }
  return [from, to];
};

/** One picture of the table, and the marks that it was placed by. */
export type TablePart = { readonly table: TablePicture; readonly marks: readonly Point[] };

/**
 * One picture of the table from several over the same window: each cell as the first picture shows it
 * between whose marks it lies, for there it is surest; elsewhere as the first that shows it at all.
 */
export const joinTables = (first: TablePart, more: readonly TablePart[]): TablePicture => {
  if (more.length === 0) return first.table;
  const { window } = first.table;
  const grey = new Uint8Array(first.table.grey);
  const rings = [first, ...more].map(({ marks }) => hullOf(marks));
  for (let j = 0; j < window.height; j++) {
    const y = window.top + (j + 0.5) * window.step;
    const spans = rings.map((ring) => spanOf(ring, y));
    for (let i = 0; i < window.width; i++) {
      const x = window.left + (i + 0.5) * window.step;
      const at = spans.findIndex(([from, to]) => x >= from && x <= to);
      const k = j * window.width + i;
      if (at > 0) grey[k] = more[at - 1]?.table.grey[k] ?? 0;
      else if (at < 0 && grey[k] === 0) {
        grey[k] = more.find(({ table }) => table.grey[k] !== 0)?.table.grey[k] ?? 0;
      }
    }
  }
  return { ...first.table, grey };
};

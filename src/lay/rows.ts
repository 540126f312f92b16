import type { Mm } from "../geometry/units.ts";

/** Something that takes up an upright rectangle of cloth: its width, and its length along the grain. */
export type Boxed = {
  readonly across: Mm;
  readonly along: Mm;
  /** It lies on the fold of the cloth, so it stands first in its row and alone there. */
  readonly onFold: boolean;
};

/** What one row across the cloth holds, side by side, and how much length it takes. */
export type Row<Item> = { readonly items: readonly Item[]; readonly along: Mm };

/** How wide the cloth is, and how far pieces stay apart. */
export type Room = { readonly width: Mm; readonly gap: Mm };

/** More things than this are not tried in every way: it would take seconds. */
const MOST_ITEMS = 12;

/** Rounding must not push out what just fits. */
const JUST_FITS: Mm = 1e-6;

const itemsOf = <Item>(items: readonly Item[], set: number): readonly Item[] =>
  items.filter((_, i) => (set & (1 << i)) !== 0);

/** The length of a row of these, or Infinity where they do not lie side by side. */
const rowLength = (row: readonly Boxed[], { width, gap }: Room): Mm => {
  let taken = gap * (row.length - 1);
  let along = 0;
  let onFold = 0;
  for (const item of row) {
    taken += item.across;
    along = Math.max(along, item.along);
    if (item.onFold) onFold++;
  }
  return taken <= width + JUST_FITS && onFold <= 1 ? along : Infinity;
};

/** For every set of things: the least length they need, and the row that holds the first of them. */
type Best = { readonly length: Float64Array; readonly row: Int32Array };

const bestOf = (items: readonly Boxed[], room: Room): Best => {
  const sets = 1 << items.length;
  const alone = Float64Array.from({ length: sets }, (_, set) =>
    set === 0 ? 0 : rowLength(itemsOf(items, set), room),
  );
  const length = new Float64Array(sets).fill(Infinity);
  const row = new Int32Array(sets);
  length[0] = 0;
  for (let set = 1; set < sets; set++) {
    const first = set & -set;
    // Every row that holds the first thing of the set, taken from the set.
    for (let part = set; part > 0; part = (part - 1) & set) {
      if ((part & first) === 0) continue;
      const whole = (alone[part] ?? Infinity) + (length[set ^ part] ?? Infinity);
      if (whole < (length[set] ?? Infinity)) {
        length[set] = whole;
        row[set] = part;
      }
    }
  }
  return { length, row };
};

/**
 * Things laid in rows across the cloth so that the rows together are as short as rows can be: every
 * way of sharing them out is tried. Null where one of them is wider than the cloth. In mm.
 */
export const packRows = <Item extends Boxed>(
  items: readonly Item[],
  room: Room,
): readonly Row<Item>[] | null => {
  if (items.length > MOST_ITEMS)
    throw new Error(`Rows are packed of ${MOST_ITEMS} things at most.`);
  const { length, row } = bestOf(items, room);
  const rows: Row<Item>[] = [];
  let left = (1 << items.length) - 1;
  if (length[left] === Infinity) return null;
  while (left > 0) {
    const part = row[left] ?? 0;
    const held = itemsOf(items, part);
    const ordered = [...held.filter((i) => i.onFold), ...held.filter((i) => !i.onFold)];
    rows.push({ items: ordered, along: Math.max(...held.map((item) => item.along)) });
    left ^= part;
  }
  return rows;
};

/** A grid of costs to cross a cell; whole numbers from 1. */
export type Costs = {
  readonly cost: Uint16Array;
  readonly width: number;
  readonly height: number;
};

/** A straight step costs 10 times its cell, a slanting one 14. */
const STRAIGHT = 10;
const SLANTING = 14;
const UNREACHED = 0xffffffff;

/** Cells waiting by their cost, in a ring of buckets: the least is found without sorting. */
const bucketsOf = (most: number) => {
  const ring: number[][] = Array.from({ length: most + 1 }, () => []);
  let at = 0;
  let waiting = 0;
  return {
    put: (cell: number, cost: number): void => {
      ring[cost % ring.length]?.push(cell);
      waiting++;
    },
    /** The next cell and the cost that it was put at; -1 where none is left. */
    take: (): number => {
      while (waiting > 0) {
        const cell = ring[at % ring.length]?.pop();
        if (cell !== undefined) {
          waiting--;
          return cell;
        }
        at++;
      }
      return -1;
    },
    at: (): number => at,
  };
};

const wayBack = (came: Int32Array, from: number, to: number): readonly number[] => {
  const way = [to];
  let at = to;
  while (at !== from) {
    at = came[at] ?? -1;
    if (at < 0) return [];
    way.push(at);
  }
  return way.reverse();
};

/**
 * The cheapest way over a grid from one cell to another, as cells (Dijkstra's rule with buckets, as
 * Dial has it; from memory). Empty where there is none.
 */
export const cheapestWay = (
  { cost, width, height }: Costs,
  from: number,
  to: number,
): readonly number[] => {
  let most = 1;
  for (let k = 0; k < cost.length; k++) if ((cost[k] ?? 0) > most) most = cost[k] ?? 0;
  const buckets = bucketsOf(most * SLANTING);
  const paid = new Uint32Array(cost.length).fill(UNREACHED);
  const came = new Int32Array(cost.length).fill(-1);
  const shifts = [-1, 1, -width, width, -width - 1, -width + 1, width - 1, width + 1];
  paid[from] = 0;
  buckets.put(from, 0);
  for (;;) {
    const cell = buckets.take();
    if (cell < 0 || cell === to) break;
    const so = paid[cell] ?? 0;
    if (so < buckets.at()) continue;
    const x = cell % width;
    for (let n = 0; n < 8; n++) {
      const next = cell + (shifts[n] ?? 0);
      if (next < 0 || next >= width * height) continue;
      if (Math.abs((next % width) - x) > 1) continue;
      const price = so + (cost[next] ?? 1) * (n < 4 ? STRAIGHT : SLANTING);
      if (price >= (paid[next] ?? UNREACHED)) continue;
      paid[next] = price;
      came[next] = cell;
      buckets.put(next, price);
    }
  }
  return wayBack(came, from, to);
};

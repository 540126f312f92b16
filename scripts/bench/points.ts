import { Bezier } from "bezier-js";
import { svgPathProperties } from "svg-path-properties";
import { pointAt } from "../../src/geometry/curve.ts";
import { parameterAtLength } from "../../src/geometry/length.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import type { Cubic } from "../../src/geometry/segment.ts";
import { CURVES, EQUAL, referenceLength, SMOOTH } from "./curves.ts";
import { paperCurve, valuesOf } from "./paperCurve.ts";
import { type Row, short, small } from "./row.ts";
import { keep, race } from "./timing.ts";

type XY = { readonly x: number; readonly y: number };

/** The job: a curve that is new to it, and the points at these lengths along it. */
type Peer = {
  readonly name: string;
  readonly points: (c: Cubic, lengths: readonly number[]) => readonly XY[];
  /** Null: nothing is asked of it. */
  readonly goal: number | null;
};

const bezierOf = ({ start: a, startHandle: b, endHandle: c, end: d }: Cubic): Bezier =>
  new Bezier(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y);

/** bezier-js gives a table of points, not a point at a length: this is how a table is used. */
const byTable =
  (size: number): Peer["points"] =>
  (c, asked) => {
    const curve = bezierOf(c);
    const table = curve.getLUT(size);
    const lengths = [0];
    for (let i = 1; i < table.length; i++) {
      const [p, q] = [table[i - 1], table[i]];
      lengths.push((lengths[i - 1] ?? 0) + (p && q ? Math.hypot(q.x - p.x, q.y - p.y) : 0));
    }
    return asked.map((length) => {
      let low = 0;
      let high = lengths.length - 1;
      while (high - low > 1) {
        const mid = (low + high) >> 1;
        if ((lengths[mid] ?? 0) <= length) low = mid;
        else high = mid;
      }
      const from = lengths[low] ?? 0;
      const part = (length - from) / ((lengths[high] ?? 0) - from);
      return curve.get((low + part) / (table.length - 1));
    });
  };

const NEWTON_STEPS = 12;
/** A first part of no length at all is not split off. */
const LEAST_PART = 1e-12;

/** The sharpest way to ask bezier-js: Newton's rule on its own length of the first part. */
const byNewton: Peer["points"] = (c, asked) => {
  const curve = bezierOf(c);
  const whole = curve.length();
  return asked.map((length) => {
    let t = length / whole;
    for (let step = 0; step < NEWTON_STEPS; step++) {
      const over = curve.split(0, t).length() - length;
      if (Math.abs(over) < EQUAL / 2) break;
      const { x, y } = curve.derivative(t);
      t = Math.min(1, Math.max(LEAST_PART, t - over / Math.hypot(x, y)));
    }
    return curve.get(t);
  });
};

const PEERS: readonly Peer[] = [
  {
    name: "own",
    goal: null,
    points: (c, asked) => asked.map((length) => pointAt(c, parameterAtLength(c, length))),
  },
  { name: "bezier-js, table of 200", goal: null, points: byTable(200) },
  { name: "bezier-js, table of 20,000", goal: 0.95, points: byTable(20_000) },
  { name: "bezier-js, Newton's rule", goal: 0.95, points: byNewton },
  {
    name: "svg-path-properties",
    goal: 1,
    points: (c, asked) => {
      const path = new svgPathProperties(toPathData([c]));
      return asked.map((length) => path.getPointAtLength(length));
    },
  },
  {
    name: "paper",
    goal: null,
    points: (c, asked) => {
      const values = valuesOf(c);
      return asked.map((length) =>
        paperCurve.getPoint(values, paperCurve.getTimeAt(values, length)),
      );
    },
  },
];

const POINTS = 20;
const SHARES = Array.from({ length: POINTS }, (_, i) => (i + 0.5) / POINTS);
const ROUNDS = 15;

/** The parameter at a length by halving, on the reference length: slow and plain. */
const referencePoint = (c: Cubic, length: number): XY => {
  let low = 0;
  let high = 1;
  let atLow = 0;
  while (high - low > 1e-14) {
    const t = (low + high) / 2;
    if (t === low || t === high) break;
    const onward = atLow + referenceLength(c, low, t);
    if (onward <= length) {
      low = t;
      atLow = onward;
    } else high = t;
  }
  return pointAt(c, low);
};

/** Only some points are held against the reference, as it takes a second for each ten. */
const HELD = [2, 9, 17] as const;
const EVERY = 5;

type Truth = {
  readonly curve: Cubic;
  readonly length: number;
  readonly truth: XY;
  readonly isSmooth: boolean;
};

const truthsOf = (lengths: readonly number[]): readonly Truth[] =>
  CURVES.flatMap((curve, i) => {
    if (i % EVERY !== 0) return [];
    return HELD.map((k) => {
      const length = (lengths[i] ?? 0) * (SHARES[k] ?? 0);
      return { curve, length, truth: referencePoint(curve, length), isSmooth: SMOOTH[i] ?? false };
    });
  });

const missOf = (peer: Peer, { curve, length, truth }: Truth): number => {
  const [p] = peer.points(curve, [length]);
  return p ? Math.hypot(p.x - truth.x, p.y - truth.y) : Number.NaN;
};

/** The point at a length, twenty to a new curve, against the peers. */
export const benchPoints = (): readonly Row[] => {
  const lengths = CURVES.map((c) => referenceLength(c));
  const truths = truthsOf(lengths);
  const asked = lengths.map((length) => SHARES.map((share) => share * length));
  const timed = race(
    PEERS.map(({ name, points }) => ({
      name,
      run: () => {
        for (const [i, c] of CURVES.entries()) keep(points(c, asked[i] ?? []));
      },
    })),
    ROUNDS,
    2,
  );
  return PEERS.map((peer, k): Row => {
    const { micros = 0, ratio = 0 } = timed[k] ?? {};
    const misses = truths.map((truth) => missOf(peer, truth));
    const smooth = Math.max(...misses.filter((_, i) => truths[i]?.isSmooth));
    const all = Math.max(...misses);
    const note = `worst miss, smooth and all: ${small(smooth)}, ${small(all)} mm`;
    if (k === 0) {
      const each = `${short(micros / CURVES.length)} µs`;
      return {
        what: `20 points, ${peer.name}`,
        measured: each,
        goal: "1e-6 mm",
        isMet: all <= EQUAL,
        note,
      };
    }
    const goal = peer.goal === null ? "" : peer.goal < 1 ? "level or more" : "more than 1";
    return {
      what: `20 points, ${peer.name}`,
      measured: `${short(ratio)} of own`,
      goal,
      isMet: peer.goal === null ? null : ratio >= peer.goal,
      note,
    };
  });
};

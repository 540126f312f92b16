import { Bezier } from "bezier-js";
import { svgPathProperties } from "svg-path-properties";
import { splitSegment } from "../../src/geometry/curve.ts";
import { cubicLength } from "../../src/geometry/length.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import type { Cubic } from "../../src/geometry/segment.ts";
import { CURVES, EQUAL, referenceLength, SMOOTH } from "./curves.ts";
import { paperCurve, valuesOf } from "./paperCurve.ts";
import { type Row, short, small } from "./row.ts";
import { keep, race } from "./timing.ts";

/** A library that can tell a length. What it is given is made beforehand and not timed. */
type Peer = {
  readonly name: string;
  readonly prepare: (c: Cubic) => () => number;
};

const OWN: Peer = { name: "own", prepare: (c) => () => cubicLength(c) };

const PEERS: readonly Peer[] = [
  {
    name: "bezier-js",
    prepare: ({ start: a, startHandle: b, endHandle: c, end: d }) => {
      const curve = new Bezier(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y);
      return () => curve.length();
    },
  },
  {
    name: "svg-path-properties",
    // Its length is worked out while the path is read, so that is timed with it.
    prepare: (c) => {
      const data = toPathData([c]);
      return () => new svgPathProperties(data).getTotalLength();
    },
  },
  {
    name: "paper",
    prepare: (c) => {
      const values = valuesOf(c);
      return () => paperCurve.getLength(values);
    },
  },
];

const MOST_HALVINGS = 9;

/** A curve cut into so many equal parts in t, by halving. */
const halved = (c: Cubic, times: number): readonly Cubic[] => {
  if (times === 0) return [c];
  const [a, b] = splitSegment(c, 0.5);
  if (a.kind !== "cubic" || b.kind !== "cubic") return [c];
  return [...halved(a, times - 1), ...halved(b, times - 1)];
};

type Fair = { readonly calls: readonly (() => number)[]; readonly reached: boolean };

/**
 * The rule of equal accuracy, the kindest that we could think of: each curve is cut, beforehand and
 * untimed, into the fewest halves at which the peer's own length of the parts is right to 1e-6 mm.
 */
const fairly = (peer: Peer, c: Cubic, truth: number): Fair => {
  for (let times = 0; times <= MOST_HALVINGS; times++) {
    const calls = halved(c, times).map(peer.prepare);
    const sum = calls.reduce((total, call) => total + call(), 0);
    if (Math.abs(sum - truth) <= EQUAL) return { calls, reached: true };
  }
  return { calls: halved(c, MOST_HALVINGS).map(peer.prepare), reached: false };
};

const ROUNDS = 61;

type Calls = readonly (() => number)[];

const asRun = (calls: Calls) => () => {
  let sum = 0;
  for (const call of calls) sum += call();
  keep(sum);
};

/** A peer against ours on the same curves, in one race: how many times our time it takes. */
const ratioOn = (own: Calls, peer: Calls): number =>
  race(
    [
      { name: "own", run: asRun(own) },
      { name: "peer", run: asRun(peer) },
    ],
    ROUNDS,
  )[1]?.ratio ?? Number.NaN;

const TRUTHS = CURVES.map((c) => referenceLength(c));
const errorsOf = (calls: Calls): readonly number[] =>
  calls.map((call, i) => Math.abs(call() - (TRUTHS[i] ?? Number.NaN)));

const worst = (errors: readonly number[]): string => {
  const smooth = Math.max(...errors.filter((_, i) => SMOOTH[i]));
  return `worst error, smooth and all: ${small(smooth)}, ${small(Math.max(...errors))} mm`;
};

/** The goal of a peer at equal accuracy: level with bezier-js, quicker than the others but paper. */
const GOALS: Readonly<Record<string, { readonly least: number; readonly words: string }>> = {
  "bezier-js": { least: 0.95, words: "level or more" },
  "svg-path-properties": { least: 1, words: "more than 1" },
};

const rowsOf = (peer: Peer, own: Calls): readonly Row[] => {
  const calls = CURVES.map(peer.prepare);
  const errors = errorsOf(calls);
  const goal = GOALS[peer.name];
  const held = (ratio: number): Pick<Row, "measured" | "goal" | "isMet"> => ({
    measured: `${short(ratio)} of own`,
    goal: goal?.words ?? "",
    isMet: goal ? ratio >= goal.least : null,
  });
  const right = errors.map((error) => error <= EQUAL);
  const rightOf = (all: Calls): Calls => all.filter((_, i) => right[i]);
  const count = rightOf(calls).length;
  const fair = CURVES.map((c, i) => fairly(peer, c, TRUTHS[i] ?? Number.NaN));
  const missed = fair.filter(({ reached }) => !reached).length;
  return [
    {
      what: `length, ${peer.name}`,
      measured: `${short(ratioOn(own, calls))} of own`,
      goal: "",
      isMet: null,
      note: worst(errors),
    },
    {
      what: "  each curve in the fewest halves that reach 1e-6 mm",
      ...held(
        ratioOn(
          own,
          fair.flatMap((f) => f.calls),
        ),
      ),
      note: missed > 0 ? `${missed} of ${CURVES.length} do not in 512 parts` : "",
    },
    ...(count > 0
      ? [
          {
            what: "  only the curves that it has right to 1e-6 mm as it comes",
            ...held(ratioOn(rightOf(own), rightOf(calls))),
            note: `${count} of ${CURVES.length} curves`,
          },
        ]
      : []),
  ];
};

/** Length of a curve against the peers: as they come, and by two rules of equal accuracy. */
export const benchLengths = (): readonly Row[] => {
  const own = CURVES.map(OWN.prepare);
  const errors = errorsOf(own);
  const [alone] = race([{ name: "own", run: asRun(own) }], ROUNDS);
  return [
    {
      what: "length, own",
      measured: `${short((alone?.micros ?? 0) / CURVES.length)} µs`,
      goal: `${small(EQUAL)} mm`,
      isMet: Math.max(...errors) <= EQUAL,
      note: worst(errors),
    },
    ...PEERS.flatMap((peer) => rowsOf(peer, own)),
  ];
};

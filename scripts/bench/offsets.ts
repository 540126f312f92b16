import { Bezier } from "bezier-js";
import { pointAt } from "../../src/geometry/curve.ts";
import { nearestOnPath } from "../../src/geometry/nearest.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import type { Cubic } from "../../src/geometry/segment.ts";
import { SMOOTH_CURVES } from "./curves.ts";
import { type Row, short, small } from "./row.ts";
import { keep, race } from "./timing.ts";

const DISTANCE = 10; // mm: an allowance
const ALLOWED = 0.01; // mm: what a cut line may stray by
const TIMES_QUICKER = 10;
const ROUNDS = 31;
const TRIED = 16;

type XY = { readonly x: number; readonly y: number };

const bezierOf = ({ start: a, startHandle: b, endHandle: c, end: d }: Cubic): Bezier =>
  new Bezier(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y);

/** Points on our offset, away from its ends, where nothing else is nearer. */
const ownPoints = (c: Cubic): readonly XY[] =>
  offsetPath([c], DISTANCE).flatMap((part) =>
    Array.from({ length: TRIED }, (_, i) => pointAt(part, (i + 0.5) / TRIED)),
  );

const peerPoints = (c: Cubic): readonly XY[] => {
  const parts = bezierOf(c).offset(DISTANCE);
  if (!Array.isArray(parts)) return [];
  return parts.flatMap((part) =>
    Array.from({ length: TRIED }, (_, i) => part.get((i + 0.5) / TRIED)),
  );
};

/** How far a drawn offset strays from lying 10 mm from the curve, at the worst point tried. */
const strays = (c: Cubic, points: readonly XY[]): number =>
  Math.max(0, ...points.map((p) => Math.abs(nearestOnPath([c], p).away - DISTANCE)));

/** A curve moved sideways by an allowance; of the peers only bezier-js can. Smooth curves only. */
export const benchOffsets = (): readonly Row[] => {
  const curves = SMOOTH_CURVES;
  const beziers = curves.map(bezierOf);
  const [own, peer] = race(
    [
      {
        name: "own",
        run: () => {
          for (const c of curves) keep(offsetPath([c], DISTANCE));
        },
      },
      {
        name: "bezier-js",
        run: () => {
          for (const b of beziers) keep(b.offset(DISTANCE));
        },
      },
    ],
    ROUNDS,
  );
  const ownStray = Math.max(...curves.map((c) => strays(c, ownPoints(c))));
  const peerStray = Math.max(...curves.map((c) => strays(c, peerPoints(c))));
  return [
    {
      what: "offset by 10 mm, own",
      measured: `${short((own?.micros ?? 0) / curves.length)} µs`,
      goal: `stray ${ALLOWED} mm`,
      isMet: ownStray <= ALLOWED,
      note: `worst stray on ${curves.length} smooth curves ${small(ownStray)} mm`,
    },
    {
      what: "offset by 10 mm, bezier-js",
      measured: `${short(peer?.ratio ?? 0)} of own`,
      goal: `${TIMES_QUICKER} or more`,
      isMet: (peer?.ratio ?? 0) >= TIMES_QUICKER,
      note: `worst stray ${small(peerStray)} mm`,
    },
  ];
};

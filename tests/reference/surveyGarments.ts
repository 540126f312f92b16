import { worstOf } from "../../src/checks/checkGarment.ts";
import type { Choices } from "../../src/drafting/choices.ts";
import type { Body } from "../../src/drafting/measures.ts";
import type { EdgeName, Piece } from "../../src/drafting/piece.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { ang, minus } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { degrees } from "../../src/geometry/units.ts";
import { type Made, make } from "../../src/project/make.ts";

/** What is kept of a garment for the table of method 9: numbers by the table's own rows. */
export type Row = Readonly<Record<string, number>>;

const edgeOf = ({ edges }: Piece, wanted: EdgeName): Path => {
  const found = edges.find(({ name }) => name === wanted);
  if (!found) throw new Error(`There is no edge ${wanted}.`);
  return found.path;
};

/**
 * How far the sleeve's centre line falls below level when it is laid beside the block's front, the
 * chord of its raglan on the front's: in degrees.
 */
const lieOf = ({ block }: Made["garment"]): number => {
  const [front, sleeve] = [edgeOf(block.front, "raglan"), edgeOf(block.sleeve, "raglanFront")];
  const body = ang(minus(endOf(front), startOf(front)));
  const { x, y } = minus(endOf(sleeve), startOf(sleeve));
  return degrees(Math.PI / 2 + body - Math.atan2(y, -x));
};

/** What the fold loses to each radian of the ring's turning, and so what is left between marks. */
const shortestInner = ({ ring, bands }: Made["garment"]): number => {
  const lost = (ring.opening - bands.neckband.bodyRing) / ring.turning;
  const inner = ring.stations.map(({ way, turning }) => way - turning * lost);
  return Math.min(...inner.slice(1).map((next, i) => next - (inner[i] ?? Number.NaN)));
};

/** How much further from centre back the first raglan mark stands than an even one would. */
const markShift = ({ ring, bands }: Made["garment"]): number => {
  const { marks, finishedLength } = bands.neckband;
  const way = ring.stations[1]?.way ?? Number.NaN;
  return (marks[1]?.at ?? Number.NaN) - (finishedLength * way) / ring.opening;
};

const rowOf = ({ garment, checks, body }: Made): Row => {
  const { finished, bands, ring } = garment;
  const { neckBase } = body.measures;
  const { neckband } = bands;
  const valueIn = (id: string): number =>
    checks.find((check) => check.id === id)?.value ?? Number.NaN;
  const differences = garment.seams
    .filter(({ id }) => id.startsWith("raglan"))
    .map(({ difference }) => Math.abs(difference));
  return {
    "front raglan": finished.front.raglan.length,
    "back raglan": finished.back.raglan.length,
    side: finished.front.side.length,
    underarm: finished.sleeve.underarmFront.length,
    "raglan difference": Math.max(...differences),
    "cap height": -startOf(edgeOf(garment.block.sleeve, "raglanFront")).y,
    "neck edge": finished.sleeve.neckline.length,
    "lie of the sleeve": lieOf(garment),
    "neckline-turn": valueIn("neckline-turn"),
    "underarm-turn": valueIn("underarm-turn"),
    "wrist-turn": valueIn("wrist-turn"),
    opening: ring.opening,
    "inner ring": neckband.innerRing / neckBase,
    "body ring": neckband.bodyRing / neckBase,
    "body over inner": neckband.bodyRing / neckband.innerRing,
    gap: neckband.neckGap ?? Number.NaN,
    ratio: neckband.ratio,
    "at rest": valueIn("neckband-lies-flat"),
    "mark shift": markShift(garment),
    "shortest inner": shortestInner(garment),
    "hip-ease": valueIn("hip-ease"),
    "neck pressure": neckband.pressure,
    "v short": (finished.front.v?.length ?? NaN) - (finished.vInsert?.left.length ?? NaN),
    "v stretch": (finished.front.v?.length ?? NaN) / (finished.vInsert?.left.length ?? NaN) - 1,
    "other pressure": Math.max(bands.cuff.pressure, bands.hemBand.pressure),
  };
};

/** How many bodies attend by each check, and the worst verdict of each body. */
export const tally = (bodies: readonly Body[], choices: Choices) => {
  const attends = new Map<string, number>();
  const verdicts = { sound: 0, attend: 0, stop: 0 };
  const attendWithoutMeasures: boolean[] = [];
  const rows = bodies.map((body) => {
    const made = make(body, choices, null);
    const told = made.checks.filter(({ verdict }) => verdict !== "sound");
    for (const { id } of told) attends.set(id, (attends.get(id) ?? 0) + 1);
    verdicts[worstOf(made.checks)] += 1;
    attendWithoutMeasures.push(told.some(({ id }) => !id.startsWith("measure-")));
    return rowOf(made);
  });
  return { rows, attends, verdicts, attendWithoutMeasures };
};

export type Tally = ReturnType<typeof tally>;

/**
 * Smallest, 5 %, middle, 95 %, largest, each as the two values that it lies between: how a share
 * that falls between two bodies is read, the table does not say.
 */
export const spreadOf = (values: readonly number[]): readonly (readonly [number, number])[] => {
  const sorted = [...values].sort((a, b) => a - b);
  return [0, 0.05, 0.5, 0.95, 1].map((share) => {
    const place = share * (sorted.length - 1);
    return [sorted[Math.floor(place)] ?? Number.NaN, sorted[Math.ceil(place)] ?? Number.NaN];
  });
};

import { startDirection } from "../../geometry/curve.ts";
import { cubicLength, lengthOf } from "../../geometry/length.ts";
import { mirroredPath, reversed } from "../../geometry/path.ts";
import { mirrored, type Point, point, times } from "../../geometry/point.ts";
import { type Cubic, line, type Path } from "../../geometry/segment.ts";
import { type Equation, solveNear } from "../../geometry/solve.ts";
import type { Mm, Radians } from "../../geometry/units.ts";
import { BLOCK } from "../data/blockConstants.ts";
import type { Measures } from "../measures.ts";
import type { BodyEdges, SleeveEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { cornerOf, drawNeckEdge } from "./neckEdge.ts";
import { drawRaglan } from "./raglanLine.ts";
import { sleeveRails } from "./sleeveRails.ts";

/** What the sleeve must meet and how large it is. Lengths in mm. */
type SleeveSize = {
  readonly frontRaglan: Mm;
  readonly backRaglan: Mm;
  readonly frontCorner: Radians;
  readonly backCorner: Radians;
  /** The neckline that the sleeve's top takes the place of. */
  readonly neck: Mm;
  readonly halfWidth: Mm;
  readonly halfWrist: Mm;
  /** From the sleeve's top to the wrist. */
  readonly long: Mm;
};

/** The sleeve's cap for one taper: where its two raglans start, drawn on the right. */
type Cap = {
  readonly span: Mm;
  readonly frontHeight: Mm;
  readonly backHeight: Mm;
  readonly front: Cubic;
  /** Mirrored to the right, as it is drawn. */
  readonly back: Cubic;
  readonly neckEdge: Cubic;
  /** No span gave the neck edge its length. */
  readonly short: boolean;
};

const { cornerFront, cornerBack } = BLOCK;
const FRONT_SHARE = cornerFront / (cornerFront + cornerBack);
const BACK_SHARE = cornerBack / (cornerFront + cornerBack);

/** A raglan to be drawn from (q, -h), at a height h to be found. */
type Raglan = {
  readonly q: Mm;
  readonly underarm: Point;
  readonly reach: Point;
  readonly length: Mm;
};

const raglanFrom = ({ q, underarm, reach }: Raglan, height: Mm): Cubic =>
  drawRaglan(point(q, -height), underarm, reach, BLOCK.sleeveRaglan);

/** The height at which a raglan from (q, -h) to the underarm has its length (method 2.5, 16). */
const capHeight = (raglan: Raglan, near: Mm): Mm => {
  const { length } = raglan;
  const of = (h: Mm): number => cubicLength(raglanFrom(raglan, h)) - length;
  return solveNear({ of, low: BLOCK.capLeast * length, high: length }, near) ?? length;
};

/** The cap of a given span and taper (method 2.5, steps 15 to 17). */
const capOf = (size: SleeveSize, tau: Radians, span: Mm, near: Cap | null): Cap => {
  const underarm = point(size.halfWidth, 0);
  const reach = point(Math.cos(tau), Math.sin(tau));
  const { frontRaglan, backRaglan } = size;
  const onFront = { q: span * FRONT_SHARE, underarm, reach, length: frontRaglan };
  const onBack = { q: span * BACK_SHARE, underarm, reach, length: backRaglan };
  const frontHeight = capHeight(onFront, near?.frontHeight ?? 0.8 * frontRaglan);
  const backHeight = capHeight(onBack, near?.backHeight ?? 0.8 * backRaglan);
  const front = raglanFrom(onFront, frontHeight);
  const back = raglanFrom(onBack, backHeight);
  const neckEdge = drawNeckEdge({
    back: mirrored(back.start),
    front: front.start,
    backRaglan: times(mirrored(startDirection(back)), -1),
    frontRaglan: startDirection(front),
    backCorner: size.backCorner,
    frontCorner: size.frontCorner,
  });
  return { span, frontHeight, backHeight, front, back, neckEdge, short: false };
};

/** The cap whose neck edge is as long as the neckline it replaces (method 2.5, step 18). */
const solveSpan = (size: SleeveSize, tau: Radians, near: Cap | null): Cap => {
  let cap = near;
  const of = (span: Mm): number => {
    const tried = capOf(size, tau, span, cap);
    cap = tried;
    return cubicLength(tried.neckEdge) - size.neck;
  };
  const equation: Equation = { of, low: BLOCK.spanLeast * size.neck, high: size.neck };
  const span = solveNear(equation, near?.span ?? 0.93 * size.neck);
  if (span === null) {
    return { ...capOf(size, tau, BLOCK.spanElse * size.neck, cap), short: true };
  }
  // The root is most often the span tried last, and its cap is there already.
  return cap?.span === span ? cap : capOf(size, tau, span, cap);
};

const ROUNDS = 60;
const TAPER_AT_REST: Radians = 1e-13;
/** Steps smaller than this say nothing of where they lead: they are rounding. */
const TAPER_FAR: Radians = 1e-8;

/** Cap and taper, each worked from the other until they agree (method 2.5, step 19). */
const solveCap = (size: SleeveSize) => {
  const { halfWidth, halfWrist, long, frontRaglan, backRaglan } = size;
  let wanted = long - (0.8 * (frontRaglan + backRaglan)) / 2;
  const taper = (): Radians =>
    Math.atan((halfWidth - halfWrist) / Math.max(wanted, BLOCK.sleeveLeast));
  let tau = taper();
  let cap = solveSpan(size, tau, null);
  let [tauBefore, stepBefore] = [tau, Infinity];
  for (let round = 1; round < ROUNDS; round++) {
    wanted = long - (cap.frontHeight + cap.backHeight) / 2;
    const step = taper() - tau;
    if (Math.abs(step) < TAPER_AT_REST) break;
    // Each step is nearly the same share of the one before: on to where they lead, by the secant.
    const share = (tau - tauBefore) / (stepBefore - step);
    const leads = Math.abs(step) > TAPER_FAR && Number.isFinite(share) && share > 0;
    [tauBefore, stepBefore] = [tau, step];
    tau += leads ? step * share : step;
    cap = solveSpan(size, tau, cap);
  }
  return { cap, wantedLength: wanted, length: Math.max(wanted, BLOCK.sleeveLeast) };
};

/** Widths and length of the sleeve, each held to what can be drawn (method 2.5, step 14). */
const sizeOf = (
  body: Measures,
  ease: Mm,
  front: BodyEdges,
  back: BodyEdges,
): Omit<SleeveSize, "neck" | "long"> & { readonly wantedWidth: Mm; readonly wantedWrist: Mm } => {
  const [frontRaglan, backRaglan] = [lengthOf(front.raglan), lengthOf(back.raglan)];
  const wantedWidth = (body.upperArm + ease) / 2;
  const halfWidth = Math.min(
    wantedWidth,
    BLOCK.sleeveWidthMost * Math.min(frontRaglan, backRaglan),
  );
  const wantedWrist = Math.max(body.wrist + BLOCK.wristOut, body.hand + BLOCK.handOut) / 2;
  return {
    frontRaglan,
    backRaglan,
    frontCorner: cornerOf(front.neckline, front.raglan),
    backCorner: cornerOf(back.neckline, back.raglan),
    halfWidth,
    halfWrist: Math.min(wantedWrist, BLOCK.wristMost * halfWidth),
    wantedWidth,
    wantedWrist,
  };
};

/** The edges round the sleeve from its cap: the back half is the mirror image (method 2.5, 20). */
const edgesOf = (cap: Cap, size: { halfWidth: Mm; halfWrist: Mm }, length: Mm): SleeveEdges => {
  const { halfWidth, halfWrist } = size;
  const [wristFront, wristBack] = [point(halfWrist, length), point(-halfWrist, length)];
  const backOnRight: Path = [cap.back];
  return {
    neckline: [cap.neckEdge],
    raglanFront: [cap.front],
    underarmFront: [line(point(halfWidth, 0), wristFront)],
    wrist: [line(wristFront, wristBack)],
    underarmBack: [line(wristBack, point(-halfWidth, 0))],
    raglanBack: reversed(mirroredPath(backOnRight)),
  };
};

/**
 * The sleeve, whole: both raglans exactly as long as the body's, its top exactly as long as the
 * neckline it replaces (method 2.5; our own geometry). `widened` as in Necklines. In mm.
 */
export const drawSleeve = (
  { body, ease, widened }: { readonly body: Measures; readonly ease: Mm; readonly widened: Mm },
  front: BodyEdges,
  back: BodyEdges,
): { readonly sleeve: SleeveEdges; readonly rails: readonly Rail[] } => {
  const widths = sizeOf(body, ease, front, back);
  const size: SleeveSize = {
    ...widths,
    neck: (cornerBack + cornerFront) * body.neckBase,
    long: body.shoulder + body.armLength - widened,
  };
  const { cap, wantedLength, length } = solveCap(size);
  const rails = sleeveRails({
    width: [widths.wantedWidth, widths.halfWidth],
    wrist: [widths.wantedWrist, widths.halfWrist],
    length: [wantedLength, length],
    neck: cap.short ? [size.neck, cubicLength(cap.neckEdge)] : null,
  });
  return { sleeve: edgesOf(cap, size, length), rails };
};

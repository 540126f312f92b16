import type { Mm } from "../geometry/units.ts";
import { MEASURE_NAMES } from "./data/measureNames.ts";
import { SIGMA_LIMIT } from "./data/predictor.ts";
import { heldEstimate } from "./estimate.ts";
import { foretellingsFor, valuesOf } from "./foretelling.ts";
import { valueBy } from "./linearRule.ts";
import { type Body, MEASURE_IDS, type MeasureId } from "./measures.ts";
import { fitsBetterSwapped } from "./waistHipSwap.ts";
import { asMm } from "./words.ts";

/** A given measure that is worth taking again. */
export type Doubt = {
  readonly id: MeasureId;
  readonly value: Mm;
  /** What the other measures foretell; with `logic` the value that it must not reach. */
  readonly foretold: Mm;
  readonly reason: "logic" | "unlikely";
  /** With `logic`: the measure that it is held against. */
  readonly other?: MeasureId;
  /** Measure, value, limit, what to do. */
  readonly message: string;
};

type Order = {
  readonly id: MeasureId;
  /** The measures that stand on the other side, added. */
  readonly others: readonly [MeasureId, ...MeasureId[]];
  readonly mustBe: "less" | "more";
};

/** Orders that hold on every one of the 6,068 survey bodies. Method, section 7. */
const ORDERS: readonly Order[] = [
  { id: "wrist", others: ["hand"], mustBe: "less" },
  { id: "scyeDepth", others: ["napeToWaist"], mustBe: "less" },
  { id: "napeToWaist", others: ["napeToHip"], mustBe: "less" },
  { id: "neckBase", others: ["head"], mustBe: "less" },
  { id: "spineToWrist", others: ["armLength", "shoulder"], mustBe: "more" },
];

/** What is foretold is told to a whole mm: its tenths would say more than is known. */
const foretoldMm = (length: Mm): string => asMm(Math.round(length));
const titleOf = (id: MeasureId): string => MEASURE_NAMES[id].title;

const againstOrder = ({ measures }: Body, { id, others, mustBe }: Order): readonly Doubt[] => {
  const value = measures[id];
  const otherSide = others.reduce((sum, other) => sum + (measures[other] ?? Number.NaN), 0);
  // Where one of them is not given nothing is decided: no order holds or breaks against NaN.
  const breaks = (mustBe: Order["mustBe"], given: Mm): boolean =>
    mustBe === "less" ? given >= otherSide : given <= otherSide;
  if (value === undefined || !breaks(mustBe, value)) return [];
  const names = others.map((other) => titleOf(other).toLowerCase()).join(" and ");
  const message = `${titleOf(id)} is ${asMm(value)} and must be ${mustBe} than ${names}, ${asMm(otherSide)}. Measure them again.`;
  return [{ id, value, foretold: otherSide, reason: "logic", other: others[0], message }];
};

/** "height and hip girth foretell", "the other measures foretell". */
const foretellersOf = (from: readonly MeasureId[]): string => {
  const names = from.map((id) => titleOf(id).toLowerCase());
  const last = names.at(-1);
  if (last === undefined) return "the other measures foretell";
  if (names.length === 1) return `${last} alone foretells`;
  return `${names.slice(0, -1).join(", ")} and ${last} foretell`;
};

const cureFor = (body: Body, id: MeasureId): string =>
  (id === "waist" || id === "hip") && fitsBetterSwapped(body)
    ? "Are waist and hip exchanged? If not, measure again."
    : "Measure it again.";

const unlikely = (body: Body): readonly Doubt[] => {
  const values = valuesOf(body);
  return foretellingsFor(body).judged.flatMap(({ id, rule, from }) => {
    const value = body.measures[id];
    const foretold = valueBy(rule, values);
    if (value === undefined || Math.abs(value - foretold) <= SIGMA_LIMIT * rule.sd) return [];
    const message = `${titleOf(id)} is ${asMm(value)}; ${foretellersOf(from)} ${foretoldMm(foretold)}. ${cureFor(body, id)}`;
    return [{ id, value, foretold, reason: "unlikely", message }];
  });
};

/** Measures that were not given, and that the others foretell beyond what any may be. */
const heldBack = (body: Body): readonly Doubt[] => {
  const values = valuesOf(body);
  return foretellingsFor(body).missing.flatMap(({ id, rule }) => {
    const foretold = valueBy(rule, values);
    const value = heldEstimate(id, foretold);
    if (value === foretold) return [];
    const message = `${titleOf(id)} was not given and is taken as ${asMm(value)}; the other measures foretell ${foretoldMm(foretold)}. Measure it, and look for a slip in the others.`;
    return [{ id, value, foretold, reason: "unlikely", message }];
  });
};

/**
 * Given measures that cannot be, or that lie far from what the others foretell, and estimates that
 * had to be held, in the order of MEASURE_IDS; a measure is doubted once, logic first. Height is
 * never doubted, and a doubt never stops a draft.
 *
 * Unit: mm. Source: method, section 7.
 */
export const doubtfulMeasures = (body: Body): readonly Doubt[] => {
  const byLogic = ORDERS.flatMap((order) => againstOrder(body, order));
  const all = [...byLogic, ...unlikely(body), ...heldBack(body)];
  return MEASURE_IDS.flatMap((id) => all.find((doubt) => doubt.id === id) ?? []);
};

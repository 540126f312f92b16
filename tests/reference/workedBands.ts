import { cutNeckband, foldRings, neckbandBounds } from "../../src/bands/neckband.ts";
import type { Station } from "../../src/bands/necklineRing.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { referenceText } from "./table.ts";
import { choicesWith, evenRing, ringWith } from "./worked/bandRing.ts";

type Value = number | string | boolean | null | readonly Value[] | { readonly [k: string]: Value };
type Fields = { readonly [key: string]: Value };
type Case = {
  readonly id: string;
  readonly what: string;
  readonly inputs: Fields;
  readonly expected: Fields;
};

const cases: { readonly cases: readonly Case[] } = JSON.parse(referenceText("worked-bands.json"));

/** A worked case on rib bands, its fields read by name; W01 to W26. */
export const bandCase = (id: string) => {
  const found = cases.cases.find((one) => one.id === id);
  if (found === undefined) throw new Error(`There is no worked case ${id}.`);
  const of = (fields: Fields, key: string): number => {
    const value = fields[key];
    if (typeof value !== "number") throw new Error(`${id} has no number ${key}.`);
    return value;
  };
  const list = (fields: Fields, key: string): readonly number[] => {
    const value = fields[key];
    if (!Array.isArray(value)) throw new Error(`${id} has no list ${key}.`);
    return value.map(Number);
  };
  return {
    what: found.what,
    given: (key: string) => of(found.inputs, key),
    givenList: (key: string) => list(found.inputs, key),
    expected: (key: string) => of(found.expected, key),
    expectedList: (key: string) => list(found.expected, key),
    expectedText: (key: string) => String(found.expected[key]),
    isExpected: (key: string) => found.expected[key] === true,
    isGiven: (key: string) => typeof found.inputs[key] === "number",
  };
};
export type BandCase = ReturnType<typeof bandCase>;

export const allBandCases: readonly string[] = cases.cases.map(({ id }) => id);

/** The rings of a case whose neck is given; without one the garment alone, on a table. */
export const ringsOf = (c: BandCase) =>
  foldRings(
    { opening: c.given("O"), turning: c.given("theta") },
    c.given("depth"),
    c.isGiven("neckBase") ? c.given("neckBase") : 0,
  );

const ribOf = (c: BandCase) => ({ stretch: c.given("stretch"), recovery: c.given("recovery") });

/** All that the project works for the neckband of a case. */
export const neckbandOf = (c: BandCase) => {
  const body = { ...WORKED_EXAMPLE, neckBase: c.given("neckBase"), head: c.given("head") };
  const choices = choicesWith({ rib: ribOf(c), neckband: { finishedDepth: c.given("depth") } });
  const ring = evenRing(c.given("O"), c.given("theta"));
  const { bodyRing } = ringsOf(c);
  return {
    bounds: neckbandBounds(c.given("O"), bodyRing, c.given("head"), ribOf(c)),
    ...cutNeckband(ring, body, choices).neckband,
  };
};

/** The first five marks of a neckband with stations where the case has them. */
export const marksAt = (c: BandCase, stations: readonly Station[], share: "ring" | "even") => {
  const ring = ringWith(c.given("O"), c.given("theta"), stations);
  const choices = choicesWith({ neckband: { finishedDepth: c.given("depth"), share } });
  return cutNeckband(ring, WORKED_EXAMPLE, choices).neckband;
};

import { expect } from "vitest";
import { type Point, point } from "../../src/geometry/point.ts";
import { referenceText } from "./table.ts";

type Json = number | string | boolean | null | readonly Json[] | { readonly [key: string]: Json };
type Row = {
  readonly id: string;
  readonly title: string;
  readonly given: { readonly op: string; readonly [key: string]: Json };
  readonly expected: Json;
  /** Absolute, or `relative 1e-7`. */
  readonly tolerance: number | string;
};

/** A worked check: what is given, by name, and what must come out, as a flat list of numbers. */
export type WorkedCheck = {
  readonly id: string;
  readonly title: string;
  readonly op: string;
  readonly number: (key: string) => number;
  readonly numbers: (key: string) => readonly number[];
  readonly rows: (key: string) => readonly (readonly number[])[];
  readonly points: (key: string) => readonly Point[];
  readonly text: (key: string) => string;
  readonly expected: readonly number[];
  readonly tolerance: { readonly of: number; readonly isRelative: boolean };
};

/** Numbers in order; the fields of an object by their names' order; true is 1. */
const flat = (value: Json): readonly number[] => {
  if (typeof value === "number") return [value];
  if (typeof value === "boolean") return [value ? 1 : 0];
  if (value === null || typeof value === "string") return [];
  if (Array.isArray(value)) return value.flatMap(flat);
  return Object.entries(value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, inner]) => flat(inner));
};

const listOf = (value: Json | undefined): readonly Json[] => (Array.isArray(value) ? value : []);

const checkOf = ({ id, title, given, expected, tolerance }: Row): WorkedCheck => {
  const numbers = (key: string): readonly number[] => flat(given[key] ?? null);
  const rows = (key: string) => listOf(given[key]).map(flat);
  return {
    id,
    title,
    op: given.op,
    number: (key) => numbers(key)[0] ?? Number.NaN,
    numbers,
    rows,
    points: (key) => rows(key).map(([x = Number.NaN, y = Number.NaN]) => point(x, y)),
    text: (key) => String(given[key]),
    expected: flat(expected),
    tolerance: {
      of: Number(String(tolerance).replace("relative ", "")),
      isRelative: String(tolerance).startsWith("relative"),
    },
  };
};

const rows: readonly Row[] = JSON.parse(referenceText("worked-checks.json"));

/** All 86, in their order. Each has its source in data/worked-checks.json. */
export const workedChecks: readonly WorkedCheck[] = rows.map(checkOf);

/** One by its id. */
export const workedCheck = (id: string): WorkedCheck => {
  const found = workedChecks.find((check) => check.id === id);
  if (found === undefined) throw new Error(`There is no worked check ${id}.`);
  return found;
};

/** A tolerance of nothing still allows the last places of a double. */
const LEAST_TOLERANCE = 1e-12;

/** Holds numbers got from the project against a worked check, within the check's own tolerance. */
export const expectWorked = (
  { id, expected, tolerance }: WorkedCheck,
  got: readonly number[],
): void => {
  expect(got, id).toHaveLength(expected.length);
  expected.forEach((wanted, i) => {
    const within = tolerance.isRelative ? tolerance.of * Math.abs(wanted) : tolerance.of;
    const off = Math.abs((got[i] ?? Number.NaN) - wanted);
    expect(off, `${id}: ${got[i]} for ${wanted}`).toBeLessThanOrEqual(
      Math.max(within, LEAST_TOLERANCE),
    );
  });
};

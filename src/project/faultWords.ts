import type * as z from "zod/mini";
import type { Range } from "../drafting/data/ranges.ts";
import type { Fault } from "../drafting/fault.ts";
import { nearest } from "./nearest.ts";

type Issue = z.core.$ZodIssue;

/** What a value from a file looks like in a sentence; a long text is cut, the rest is named. */
export const shown = (value: unknown): string => {
  if (Array.isArray(value)) return "a list";
  if (isObject(value)) return "a group in braces";
  const text = typeof value === "string" ? JSON.stringify(value) : String(value ?? null);
  return text.length > SHOWN_AT_MOST ? `${text.slice(0, SHOWN_AT_MOST)}…` : text;
};
const SHOWN_AT_MOST = 60; // ours: about a line of a terminal

/** "-60 to 400 mm", "0.02 to 2 (0.8 means 80 %)" */
export const rangeWords = ({ least, most, unit }: Range): string =>
  `${least} to ${most} ${unit === "mm" ? "mm" : "(0.8 means 80 %)"}`;

/** The path of a value in its file, as a maker would write it: `fit.chestEase`. */
const fieldOf = (path: readonly PropertyKey[]): string => path.map(String).join(".");

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const valueAt = (sample: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (at, key) => (isObject(at) && typeof key === "string" ? at[key] : undefined),
    sample,
  );

const unknownKey = (key: string, path: readonly PropertyKey[], sample: unknown): Fault => {
  const group = valueAt(sample, path);
  const known = isObject(group) ? Object.keys(group) : [];
  const meant = nearest(key, known, Math.floor(key.length / 2));
  return {
    field: fieldOf([...path, key]),
    value: key,
    reason: `"${key}" is not known${path.length > 0 ? ` in ${fieldOf(path)}` : ""}; known are ${known.join(", ")}.`,
    do: meant === null ? "Take it out." : `Did you mean ${meant}? Else take it out.`,
  };
};

/** What to do about a value that is not what it may be. */
const cureOf = (given: unknown, otherwise: unknown): string => {
  if (given === undefined) return "Write it.";
  if (otherwise === undefined || isObject(otherwise)) return "Change it.";
  return `Change it, or leave it out to take ${shown(otherwise)}.`;
};

/**
 * What a schema found, in words. The message of an issue is the phrase that its schema was given:
 * what the value may be. `sample` is a file with every key; values in it are the defaults.
 */
export const faultsOf = (issues: readonly Issue[], sample: unknown): readonly Fault[] =>
  issues.flatMap((issue): readonly Fault[] => {
    if (issue.code === "unrecognized_keys")
      return issue.keys.map((key) => unknownKey(key, issue.path, sample));
    const field = fieldOf(issue.path);
    const is = issue.input === undefined ? "is missing" : `is ${shown(issue.input)}`;
    const reason = `${field === "" ? "The file" : field} ${is}; it must be ${issue.message}.`;
    const cure = cureOf(issue.input, valueAt(sample, issue.path));
    const value = issue.input === undefined ? "" : shown(issue.input);
    return [{ field, value, reason, do: cure }];
  });

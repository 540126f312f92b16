type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain => typeof value === "object" && value !== null;

/** Each part of the one is in the other, and the other has no more. No list is made: it is asked often. */
const sameParts = (a: Plain, b: Plain, within: number): boolean => {
  let more = Object.keys(b).length;
  for (const key in a) {
    if (!sameValue(a[key], b[key], within)) return false;
    more--;
  }
  return more === 0;
};

/**
 * Two plain values that hold the same, all the way down; numbers may be `within` of each other.
 * Cheap where parts are shared.
 */
export const sameValue = (a: unknown, b: unknown, within = 0): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= within;
  if (!isPlain(a) || !isPlain(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  return sameParts(a, b, within);
};

/** The new list, with each part that holds the same as before left as it was. */
export const keptParts = <T>(before: readonly T[], after: readonly T[]): readonly T[] =>
  after.map((part, i) => {
    const was = before[i];
    return was !== undefined && sameValue(was, part) ? was : part;
  });

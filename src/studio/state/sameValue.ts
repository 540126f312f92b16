/** Two plain values that hold the same, all the way down. Cheap where parts are shared. */
export const sameValue = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a)) {
    return Array.isArray(b) && a.length === b.length && a.every((part, i) => sameValue(part, b[i]));
  }
  const [left, right] = [Object.entries(a), new Map(Object.entries(b))];
  return left.length === right.size && left.every(([key, part]) => sameValue(part, right.get(key)));
};

/** The new list, with each part that holds the same as before left as it was. */
export const keptParts = <T>(before: readonly T[], after: readonly T[]): readonly T[] =>
  after.map((part, i) => {
    const was = before[i];
    return was !== undefined && sameValue(was, part) ? was : part;
  });

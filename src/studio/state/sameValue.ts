type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain => typeof value === "object" && value !== null;

/** Item by item and by name: asked of whole pieces at every move, and no pairs are made for it. */
const sameItems = (a: readonly unknown[], b: readonly unknown[], within: number): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!sameValue(a[i], b[i], within)) return false;
  return true;
};

const sameParts = (a: Plain, b: Plain, within: number): boolean => {
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  for (const name of names) {
    if (!sameValue(a[name], b[name], within)) return false;
  }
  return true;
};

/**
 * Two plain values that hold the same, all the way down; numbers may be `within` of each other.
 * Cheap where parts are shared.
 */
export const sameValue = (a: unknown, b: unknown, within = 0): boolean => {
  if (Object.is(a, b)) return true;
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= within;
  if (Array.isArray(a)) return Array.isArray(b) && sameItems(a, b, within);
  return isPlain(a) && isPlain(b) && !Array.isArray(b) && sameParts(a, b, within);
};

/** The new list, with each part that holds the same as before left as it was. */
export const keptParts = <T>(before: readonly T[], after: readonly T[]): readonly T[] =>
  after.map((part, i) => {
    const was = before[i];
    return was !== undefined && sameValue(was, part) ? was : part;
  });

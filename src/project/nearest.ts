/** How many letters must be changed, added or dropped to get from one word to the other. */
export const lettersOff = (one: string, other: string): number => {
  const last = Array.from(one).reduce<readonly number[]>(
    (above, letter, row) => {
      const line = [row + 1];
      for (const [column, wanted] of Array.from(other).entries()) {
        const swapped = (above[column] ?? 0) + (letter === wanted ? 0 : 1);
        const dropped = (above[column + 1] ?? 0) + 1;
        const added = (line[column] ?? 0) + 1;
        line.push(Math.min(swapped, dropped, added));
      }
      return line;
    },
    Array.from({ length: Array.from(other).length + 1 }, (_, column) => column),
  );
  return last.at(-1) ?? 0;
};

/** A word without what the eye skips: case, blanks, and the marks that stand in for blanks. */
export const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]+/gu, "");

/** The word among these that is fewest letters off, if it is within `most` letters. */
export const nearest = (word: string, among: readonly string[], most: number): string | null => {
  const bare = plain(word);
  return among.reduce<{ readonly name: string | null; readonly off: number }>(
    (best, name) => {
      const off = lettersOff(bare, plain(name));
      return off < best.off ? { name, off } : best;
    },
    { name: null, off: most + 1 },
  ).name;
};

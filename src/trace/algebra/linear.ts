/** A square system of equations, by rows. */
export type Rows = readonly (readonly number[])[];

/** A pivot this small beside the largest of the matrix is nought but for rounding. */
const SINGULAR = 1e-13;

/** The row at or below `from` with the largest value in its column. */
const pivotRow = (rows: readonly number[][], from: number): number => {
  let best = from;
  for (let r = from + 1; r < rows.length; r++) {
    if (Math.abs(rows[r]?.[from] ?? 0) > Math.abs(rows[best]?.[from] ?? 0)) best = r;
  }
  return best;
};

/** `rows` brought to a triangle in place; false where they do not determine their unknowns. */
const triangulate = (rows: number[][], unknowns: number): boolean => {
  let largest = 0;
  for (const row of rows)
    for (const v of row.slice(0, unknowns)) largest = Math.max(largest, Math.abs(v));
  for (let i = 0; i < unknowns; i++) {
    const p = pivotRow(rows, i);
    const pivot = rows[p];
    const here = rows[i];
    if (!pivot || !here || !(Math.abs(pivot[i] ?? 0) > SINGULAR * largest)) return false;
    rows[p] = here;
    rows[i] = pivot;
    for (let r = i + 1; r < rows.length; r++) {
      const row = rows[r] ?? [];
      const by = (row[i] ?? 0) / (pivot[i] ?? 1);
      for (let c = i; c < row.length; c++) row[c] = (row[c] ?? 0) - by * (pivot[c] ?? 0);
    }
  }
  return true;
};

/**
 * The unknowns of a square system, by Gauss's elimination with pivots; null where the rows do not
 * determine them. For systems of a few dozen.
 */
export const solveLinear = (matrix: Rows, right: readonly number[]): readonly number[] | null => {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  if (!triangulate(rows, n)) return null;
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] ?? [];
    let sum = row[n] ?? 0;
    for (let c = i + 1; c < n; c++) sum -= (row[c] ?? 0) * (x[c] ?? 0);
    x[i] = sum / (row[i] ?? 1);
  }
  return x;
};

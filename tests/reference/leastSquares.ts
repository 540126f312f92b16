/**
 * Least squares with an intercept, by modified Gram-Schmidt on centred columns (Björck, Numerical
 * Methods for Least Squares Problems, from memory). The normal equations would lose most digits on
 * hard data. Checked on Longley and Norris in leastSquares.test.ts.
 */
export type Fit = {
  readonly intercept: number;
  readonly coef: readonly number[];
  readonly residualSd: number;
};

type Column = readonly number[];

const dot = (a: Column, b: Column): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
};
const less = (a: Column, share: number, b: Column): Column =>
  a.map((value, i) => value - share * (b[i] ?? 0));
export const meanOf = (a: Column): number => a.reduce((sum, value) => sum + value, 0) / a.length;
const centred = (a: Column): Column => {
  const mean = meanOf(a);
  return a.map((value) => value - mean);
};

type Directions = { readonly directions: readonly Column[]; readonly upper: readonly Column[] };

/** Unit columns at right angles to each other, and how each column is made of them. */
const directionsOf = (columns: readonly Column[]): Directions =>
  columns.reduce<Directions>(
    ({ directions, upper }, column) => {
      let rest = column;
      const shares = directions.map((direction) => {
        const share = dot(direction, rest);
        rest = less(rest, share, direction);
        return share;
      });
      const size = Math.sqrt(dot(rest, rest));
      return {
        directions: [...directions, rest.map((value) => value / size)],
        upper: [...upper, [...shares, size]],
      };
    },
    { directions: [], upper: [] },
  );

/** The coefficients, last first: each from what the later ones leave. */
const solved = (upper: readonly Column[], right: Column): Column => {
  const coef = right.map(() => 0);
  for (let i = right.length - 1; i >= 0; i -= 1) {
    let rest = right[i] ?? 0;
    for (let j = i + 1; j < right.length; j += 1) rest -= (coef[j] ?? 0) * (upper[j]?.[i] ?? 0);
    coef[i] = rest / (upper[i]?.[i] ?? Number.NaN);
  }
  return coef;
};

/** `columns` are the predictors, each as long as `y`. */
export const leastSquares = (columns: readonly Column[], y: Column): Fit => {
  const { directions, upper } = directionsOf(columns.map(centred));
  let rest = centred(y);
  const right = directions.map((direction) => {
    const share = dot(direction, rest);
    rest = less(rest, share, direction);
    return share;
  });
  const coef = solved(upper, right);
  const byMeans = columns.reduce((sum, column, i) => sum + (coef[i] ?? 0) * meanOf(column), 0);
  return {
    intercept: meanOf(y) - byMeans,
    coef,
    residualSd: Math.sqrt(dot(rest, rest) / (y.length - columns.length - 1)),
  };
};

/** Nodes on [-1, 1] and their weights. */
export type GaussRule = { readonly nodes: Float64Array; readonly weights: Float64Array };

/** The largest rule kept ready; a curve that would need more is cut in two. */
export const MOST_NODES = 32;

/** P_n(x) and its derivative by the three-term recurrence. */
const legendre = (n: number, x: number): { value: number; slope: number } => {
  let [before, value] = [1, x];
  for (let k = 2; k <= n; k++) {
    [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  }
  return { value, slope: (n * (x * value - before)) / (x * x - 1) };
};

/**
 * The Gauss-Legendre rule with `n` nodes: exact for polynomials of degree 2n - 1.
 * Source: NIST Digital Library of Mathematical Functions, 3.5(v); nodes by Newton's rule.
 */
export const gaussLegendre = (n: number): GaussRule => {
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    for (let round = 0; round < 8; round++) {
      const { value, slope } = legendre(n, x);
      x -= value / slope;
    }
    const { slope } = legendre(n, x);
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
};

/** The rule of 2k + 2 nodes stands at k. */
const RULES: readonly GaussRule[] = Array.from({ length: MOST_NODES / 2 }, (_, k) =>
  gaussLegendre(2 * k + 2),
);
const LARGEST = gaussLegendre(MOST_NODES);

/** The rule with the least even number of nodes that is `n` or more, at most MOST_NODES. */
export const ruleOf = (n: number): GaussRule => RULES[Math.max(1, Math.ceil(n / 2) - 1)] ?? LARGEST;

import { describe, expect, test } from "vitest";
import { type GaussRule, gaussLegendre, MOST_NODES, ruleOf } from "../../src/geometry/gauss.ts";

/** ∫ x^k over [-1, 1] by a rule. */
const powerBy = ({ nodes, weights }: GaussRule, k: number): number =>
  nodes.reduce((sum, x, i) => sum + (weights[i] ?? Number.NaN) * x ** k, 0);

const powerExact = (k: number): number => (k % 2 === 1 ? 0 : 2 / (k + 1));

/** Source: NIST Digital Library of Mathematical Functions, 3.5(v). */
describe("a Gauss-Legendre rule", () => {
  test("of two nodes has them at ±1/√3, of weight 1", () => {
    const { nodes, weights } = gaussLegendre(2);
    expect([...nodes].sort()[0]).toBeCloseTo(-1 / Math.sqrt(3), 15);
    expect(Math.abs(nodes[0] ?? NaN)).toBeCloseTo(Math.abs(nodes[1] ?? NaN), 15);
    expect([...weights]).toEqual([expect.closeTo(1, 14), expect.closeTo(1, 14)]);
  });

  // DLMF table 3.5.1: nodes 0, 0.5384693101 and 0.9061798459; weights 128/225 and (322 ± 13√70)/900.
  test("of five nodes is the one in the tables", () => {
    const { nodes, weights } = gaussLegendre(5);
    const byNode = [...nodes]
      .map((x, i) => ({ x, weight: weights[i] }))
      .sort((a, b) => a.x - b.x)
      .slice(2);
    expect(byNode.map(({ x }) => x)).toEqual([
      expect.closeTo(0, 15),
      expect.closeTo(0.538469310105683, 14),
      expect.closeTo(0.906179845938664, 14),
    ]);
    expect(byNode.map(({ weight }) => weight)).toEqual([
      expect.closeTo(128 / 225, 14),
      expect.closeTo((322 + 13 * Math.sqrt(70)) / 900, 14),
      expect.closeTo((322 - 13 * Math.sqrt(70)) / 900, 14),
    ]);
  });

  test.each([1, 2, 3, 5, 8, 16, 24, MOST_NODES])(
    "of %s nodes is exact for powers below twice as many, and not beyond",
    (n) => {
      const rule = gaussLegendre(n);
      for (let k = 0; k < 2 * n; k++) expect(powerBy(rule, k)).toBeCloseTo(powerExact(k), 12);
      if (n < 8) expect(Math.abs(powerBy(rule, 2 * n) - powerExact(2 * n))).toBeGreaterThan(1e-9);
    },
  );

  test("has as many nodes as are asked for, an even number from four to the largest", () => {
    const sizes = [0.1, 2, 2.1, 4, 7, 31, 32, 33, 1000].map((n) => ruleOf(n).nodes.length);
    expect(sizes).toEqual([4, 4, 4, 4, 8, 32, 32, 32, 32]);
  });
});

import fc from "fast-check";

/**
 * Holds a law for every value drawn. The seed is fixed, so a run is the same each time; a law that
 * fails is told at once, with the value that broke it.
 */
export const holdsFor = <Drawn>(
  seed: number,
  drawn: fc.Arbitrary<Drawn>,
  law: (value: Drawn) => void,
  numRuns = 100,
): void => {
  const held = fc.property(drawn, (value) => {
    law(value);
  });
  fc.assert(held, { seed, endOnFailure: true, numRuns });
};

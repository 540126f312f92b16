import { describe, expect, test } from "vitest";
import { MOST_NESTED } from "../../src/export/data/layerStyles.ts";
import { newBody } from "../../src/project/work.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import { NESTED, nestedBodies, nestedFault } from "../../src/studio/files/nested.ts";

const work = choirWork();

describe("what is nested", () => {
  test("are the work's bodies, without one that cannot be drafted yet", () => {
    const [first, ...rest] = work.bodies;
    const bodies = [first, ...rest, newBody("late")] as const;
    expect(nestedBodies("work", { ...work, bodies })).toHaveLength(work.bodies.length);
  });
  test("or standard sizes of one height, each once, told by their names", () => {
    const women = nestedBodies("women", work);
    expect(women.every(({ size }) => /^W\d+-regular$/u.test(size ?? ""))).toBe(true);
    expect(new Set(women.map(({ size }) => size)).size).toBe(women.length);
    expect(nestedBodies("men", work)[0]?.body.sex).toBe("male");
  });
  test("goes into one file, whichever is chosen", () => {
    for (const of of NESTED) expect(nestedFault(nestedBodies(of, work).length)).toBeNull();
  });
  test("one alone is too few, and there are no more than there are kinds of line", () => {
    expect([0, 1, 2, MOST_NESTED, MOST_NESTED + 1].map(nestedFault)).toEqual([
      "few",
      "few",
      null,
      null,
      "many",
    ]);
  });
});

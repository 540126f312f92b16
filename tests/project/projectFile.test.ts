import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readOwnBlock } from "../../src/drafting/ownBlock.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import { blockFileOf } from "../../src/project/blockFileOf.ts";
import { readFile } from "../../src/project/projectFile.ts";
import { isBlockOfBody, NEW_WORK, type Work, withBody } from "../../src/project/work.ts";
import { PROJECT_VERSION, writeProject } from "../../src/project/writeProject.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import { drafted } from "../trace/edges/shapes.ts";

const reread = (work: Work) => readFile("it", writeProject(work));

const refusal = (text: string) => {
  const found = readFile("it", text);
  return "refusal" in found ? found.refusal : found;
};

describe("a handbook", () => {
  test("reads back as it was written", () => {
    for (const work of [NEW_WORK, choirWork()]) expect(reread(work)).toEqual({ work });
  });

  test("keeps whose its own block is; one that does not say it serves every body", () => {
    const file = blockFileOf(drafted());
    const own = readOwnBlock(file);
    if ("fault" in own) throw new Error(own.fault.reason);
    const choir = choirWork();
    const [first, second] = choir.bodies;
    const brought = { name: "own", file, block: own.block, body: first.id };
    for (const [body, serves] of [
      [first.id, true],
      [second?.id ?? "", false],
      [null, true],
    ] as const) {
      const work = { ...choir, held: 0, block: { ...brought, body } };
      const read = reread(work);
      expect(read).toEqual({ work });
      expect("work" in read && isBlockOfBody(read.work)).toBe(serves);
    }
  });

  test("reads back whatever numbers its bodies have, in their ranges", () => {
    const girth = fc.integer({ min: 400, max: 2000 });
    fc.assert(
      fc.property(girth, fc.integer({ min: 800, max: 2300 }), (chest, height) => {
        const work = withBody(NEW_WORK, (b) => ({ ...b, measures: { height, chest } }));
        expect(reread(work)).toEqual({ work });
      }),
      { seed: 5, endOnFailure: true },
    );
  });

  test("is written the same, in whatever order the measures came", () => {
    const one = withBody(NEW_WORK, (b) => ({ ...b, measures: { chest: 900, wrist: 160 } }));
    const other = withBody(NEW_WORK, (b) => ({ ...b, measures: { wrist: 160, chest: 900 } }));
    expect(writeProject(one)).toBe(writeProject(other));
  });

  test("of version 1 becomes one of today", () => {
    const body = { id: "ada", name: "Ada", measures: { chest: 930, height: 1640 } };
    const old = { format: "ribwright-project", version: 1, unit: "mm", body, choices: {} };
    const found = readFile("old", JSON.stringify(old));
    expect("work" in found && found.work.bodies[0]).toEqual({
      id: "ada",
      name: "Ada",
      part: "",
      sex: null,
      measures: { chest: 930, height: 1640 },
    });
  });

  test("of version 2, which knew the paper alone, is printed as it was", () => {
    const { print, ...rest } = JSON.parse(writeProject({ ...NEW_WORK, paper: "letter" }));
    const found = readFile("old", JSON.stringify({ ...rest, version: 2 }));
    expect(print).toEqual(DEFAULT_PRINT);
    expect(found).toEqual({ work: { ...NEW_WORK, paper: "letter" } });
  });

  test("keeps how it is printed, a paper of the maker's own size included", () => {
    const work: Work = {
      ...NEW_WORK,
      paper: "210x330",
      print: {
        margins: { top: 5, right: 6, bottom: 12, left: 7 },
        join: "butt",
        overlap: 14,
        turn: "fewest",
        square: { along: 49.3, across: 50.45 },
        only: ["A1", "AB12"],
        placed: [{ piece: "front", x: 12.5, y: -3, turn: 90 }],
      },
    };
    expect(reread(work)).toEqual({ work });
  });

  test("of a later version is refused with both versions", () => {
    const later = JSON.stringify({ format: "ribwright-project", version: PROJECT_VERSION + 1 });
    expect(refusal(later)).toEqual({
      why: "later",
      found: PROJECT_VERSION + 1,
      known: PROJECT_VERSION,
    });
  });

  test("cut short anywhere is refused, never half read", () => {
    const whole = writeProject(choirWork());
    fc.assert(
      fc.property(fc.integer({ min: 0, max: whole.trimEnd().length - 1 }), (end) => {
        expect(readFile("cut", whole.slice(0, end))).toHaveProperty("refusal");
      }),
      { seed: 5, numRuns: 60, endOnFailure: true },
    );
  });

  test.each([
    ["an unknown key", (o: Record<string, unknown>) => ({ ...o, colour: "red" }), "colour"],
    ["a paper that is none", (o: Record<string, unknown>) => ({ ...o, paper: "napkin" }), "paper"],
    [
      "a margin that leaves no room",
      (o: Record<string, unknown>) => ({ ...o, print: { margins: { left: 210 } } }),
      "print.margins.left",
    ],
    [
      "a way to join that is none",
      (o: Record<string, unknown>) => ({ ...o, print: { join: "glue" } }),
      "print.join",
    ],
    ["no bodies", (o: Record<string, unknown>) => ({ ...o, bodies: [] }), "bodies"],
    [
      "a choice out of range",
      (o: Record<string, unknown>) => ({ ...o, choices: { fit: { chestEase: 9000 } } }),
      "choices.fit.chestEase",
    ],
  ])("with %s is refused, and the field is named", (_, change, field) => {
    const file = JSON.parse(writeProject(choirWork()));
    expect(refusal(JSON.stringify(change(file)))).toMatchObject({ why: "field", field });
  });

  test.each(["", "PNG", "[]", "7", '"text"', "{}", '{"format":"other"}'])(
    "%j is foreign",
    (text) => {
      expect(refusal(text)).toMatchObject({ why: "foreign" });
    },
  );
});

import { describe, expect, test } from "vitest";
import type { Check, Verdict } from "../../src/checks/check.ts";
import { checkGarment, worstOf } from "../../src/checks/checkGarment.ts";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import { exampleBody } from "../drafting/bodies.ts";
import { garmentOf, idsIn } from "../support/workedGarment.ts";

/** Contract, "Checks, at least": those that are always there. */
const ALWAYS = [
  "raglan-front-match",
  "raglan-back-match",
  "side-match",
  "underarm-match",
  "neckline-turn",
  "underarm-turn",
  "hem-turn",
  "wrist-turn",
  "chest-ease",
  "hip-ease",
  "upper-arm-ease",
  "head-passes",
  "neckline-passes",
  "neckband-lies-flat",
  "neckband-sews",
  "hand-passes-cuff",
  "cuff-holds",
  "cuff-pressure",
  "hem-band-passes",
  "hem-band-holds",
  "hem-band-pressure",
];

const withVerdict = (verdict: Verdict): Check => ({
  id: "x",
  verdict,
  value: 0,
  limit: 0,
  unit: "mm",
  message: "",
});

describe("the checks of a garment", () => {
  test("are all of the contract's, each once", () => {
    const ids = idsIn(garmentOf());
    for (const id of ALWAYS) expect(ids).toContain(id);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...ids].sort()).toEqual([...ALWAYS, "side-seam-move", "v-insert-match"].sort());
  });

  test("are all sound on the worked example (method 8), told all the same", () => {
    const checks = checkGarment(garmentOf(), []);
    expect(checks.filter(({ verdict }) => verdict !== "sound")).toEqual([]);
    for (const { message } of checks) expect(message.length).toBeGreaterThan(20);
  });

  test("have the doubted measures last", () => {
    const checks = checkGarment(garmentOf(), doubtfulMeasures(exampleBody({ wrist: 230 })));
    expect(checks.at(-1)?.id).toMatch(/^measure-/);
  });
});

describe("the worst of a body's checks", () => {
  test("is stop where one stops, attend where one attends, else sound", () => {
    const [sound, attend, stop] = [
      withVerdict("sound"),
      withVerdict("attend"),
      withVerdict("stop"),
    ];
    expect(worstOf([sound, stop, attend])).toBe("stop");
    expect(worstOf([sound, attend])).toBe("attend");
    expect(worstOf([sound, sound])).toBe("sound");
    expect(worstOf([])).toBe("sound");
  });
});

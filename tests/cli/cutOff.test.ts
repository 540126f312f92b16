import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, json, listing, ribwright, startRibwright, tableOf } from "./ribwright.ts";

/** Starts a batch that takes seconds, waits until some bodies are there, and cuts it off. */
const cutOff = async (out: string, signal: NodeJS.Signals) => {
  mkdirSync(out, { recursive: true });
  const table = file("b.csv", tableOf(4000));
  const { child, ended } = startRibwright("batch", "--bodies", table, "--no-sheets", "--out", out);
  while (readdirSync(out).length < 50) await new Promise((resolve) => setTimeout(resolve, 5));
  child.kill(signal);
  return ended;
};

/** Every body that is there is there as a whole. */
const bodiesAreWhole = (out: string): void => {
  const there = readdirSync(out).filter((name) => name.startsWith("b"));
  expect(there.length).toBeGreaterThan(10);
  expect(there.length).toBeLessThan(4000);
  for (const id of there)
    expect(json(join(out, id, "report.json"))).toMatchObject({ body: { id }, program: {} });
};

describe("a run that is cut off", () => {
  test.each(["SIGINT", "SIGTERM"] as const)(
    "by %s leaves whole bodies and nothing else",
    async (signal) => {
      const out = join(folder(), "out");
      expect(await cutOff(out, signal)).toEqual({ code: null, signal });
      bodiesAreWhole(out);
      expect(readdirSync(out).filter((name) => !/^b\d+$/u.test(name))).toEqual([]);
    },
  );

  test("by force leaves no half file, and the next run clears up", async () => {
    const out = join(folder(), "out");
    expect(await cutOff(out, "SIGKILL")).toEqual({ code: null, signal: "SIGKILL" });
    bodiesAreWhole(out);
    // What the killed run may have left aside, and what another run is busy with right now.
    mkdirSync(join(out, ".ribwright-999999999-0a1b2c3d-b7"));
    writeFileSync(join(out, ".ribwright-999999999-0a1b2c3d-b7", "report.json"), "{");
    const alive = `.ribwright-${process.pid}-0a1b2c3d`;
    mkdirSync(join(out, alive));
    const table = file("b.csv", tableOf(2));
    expect(ribwright("batch", "--bodies", table, "--no-sheets", "--out", out).status).toBe(0);
    expect(readdirSync(out).filter((name) => name.startsWith("."))).toEqual([alive]);
    expect(listing(join(out, "b0"))).toEqual(["report.json"]);
  });
});

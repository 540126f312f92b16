import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import type { Body } from "../../src/drafting/measures.ts";

const text = readFileSync(new URL("../../public/demo/choir.csv", import.meta.url), "utf8");
const [head = "", ...lines] = text.trim().split("\n");
const columns = head.split(",");

const bodies: readonly Body[] = lines.map((line) => {
  const cells = line.split(",");
  const cell = (column: string) => cells[columns.indexOf(column)] ?? "";
  const of = (column: string) => Number(cell(column));
  return {
    id: cell("id"),
    measures: {
      height: of("height"),
      chest: of("chest"),
      hip: of("hip"),
      neckBase: of("neckBase"),
      upperArm: of("upperArm"),
      wrist: of("wrist"),
    },
  };
});

describe("the demo choir", () => {
  test("is twelve singers of six measures, three of them teens", () => {
    expect(columns.join()).toBe("id,name,age,height,chest,hip,neckBase,upperArm,wrist");
    expect(new Set(bodies.map(({ id }) => id)).size).toBe(12);
    const ages = lines.map((line) => line.split(",")[columns.indexOf("age")]);
    expect(ages.filter((age) => age !== "")).toEqual(["14", "15", "16"]);
  });

  test("has ids that every file of the contract takes", () => {
    for (const { id } of bodies) expect(id).toMatch(/^[a-z-]{1,64}$/);
  });

  test("has two singers, the two largest, who are asked to measure again", () => {
    const doubted = bodies.filter((body) => doubtfulMeasures(body).length > 0);
    const bySize = [...bodies].sort((a, b) => b.measures.chest - a.measures.chest);
    expect(doubted.map(({ id }) => id).sort()).toEqual(["anselm-greyfold", "bettany-rookmoor"]);
    expect(bySize.slice(0, 2).map(({ id }) => id)).toEqual(["anselm-greyfold", "bettany-rookmoor"]);
  });
});

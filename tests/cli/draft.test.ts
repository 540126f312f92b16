import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { bodyFile, file, folder, json, listing, ribwright } from "./ribwright.ts";

const FILES = ["pattern.dxf", "pattern.pdf", "pattern.svg", "report.json"];

const bytes = (out: string): readonly string[] =>
  FILES.map((name) => readFileSync(join(out, name)).toString("base64"));

describe("a draft", () => {
  test("writes a report and three kinds of sheets, and nothing on standard output", () => {
    const out = join(folder(), "one", "two");
    const { status, out: said, err } = ribwright("draft", "--body", bodyFile(), "--out", out);
    expect({ status, said }).toEqual({ status: 0, said: "" });
    expect(err).toMatch(/^ada: sound, in .*two$/mu);
    expect(listing(out)).toEqual(FILES);
    expect(json(join(out, "report.json"))).toMatchObject({
      format: "ribwright-report",
      version: 1,
      body: { id: "ada", measures: { chest: 960, height: 1660 } },
      choices: { fit: { chestEase: 140 } },
      sheets: { paper: "a4" },
    });
  });

  test("gives the same bytes each time, over an earlier draft too", () => {
    const [one, other] = [folder(), folder()];
    writeFileSync(join(other, "pattern.svg"), "earlier");
    writeFileSync(join(other, "notes.txt"), "mine");
    const body = bodyFile();
    for (const out of [one, other])
      expect(ribwright("draft", "--body", body, "--out", out).status).toBe(0);
    expect(bytes(one)).toEqual(bytes(other));
    expect(readFileSync(join(other, "notes.txt"), "utf8")).toBe("mine");
  });

  test("prints a date only where one is given", () => {
    const [dated, plain] = [folder(), folder()];
    const body = bodyFile();
    ribwright("draft", "--body", body, "--date", "2026-03-14", "--out", dated);
    ribwright("draft", "--body", body, "--out", plain);
    expect(bytes(dated)).not.toEqual(bytes(plain));
    const today = new Date().getUTCFullYear();
    expect(readFileSync(join(plain, "pattern.pdf"), "latin1")).not.toContain(`D:${today}`);
  });

  test("takes choices, and another paper", () => {
    const out = folder();
    const choices = file("c.json", '{ "fit": { "chestEase": 200 } }');
    const { status } = ribwright(
      ...["draft", "--body", bodyFile(), "--choices", choices, "--paper", "a0", "--out", out],
    );
    expect(status).toBe(0);
    expect(json(join(out, "report.json"))).toMatchObject({
      choices: { fit: { chestEase: 200, upperArmEase: 110 } },
      sheets: { paper: "a0", width: 841, height: 1189 },
    });
  });

  test("takes a standard size in place of a body, by its short name too", () => {
    const out = folder();
    const { status } = ribwright("draft", "--size", "w90", "--out", out);
    expect(status).toBe(0);
    expect(json(join(out, "report.json"))).toMatchObject({
      body: { id: "W90-regular", estimated: [] },
    });
  });

  test("takes the block of an earlier draft back, and drafts the same pieces from it", () => {
    const first = folder();
    ribwright("draft", "--size", "W90", "--out", first);
    const report = JSON.parse(readFileSync(join(first, "report.json"), "utf8"));
    const edges = (piece: Readonly<Record<string, { readonly path: string }>>) => ({
      edges: Object.fromEntries(Object.entries(piece).map(([name, { path }]) => [name, path])),
    });
    const { front, back, sleeve } = report.block;
    const pieces = {
      front: edges(front.edges),
      back: edges(back.edges),
      sleeve: edges(sleeve.edges),
    };
    const own = { format: "ribwright-block", version: 1, unit: "mm", pieces };
    const block = file("k.json", JSON.stringify(own));
    const second = folder();
    const { status } = ribwright("draft", "--size", "W90", "--block", block, "--out", second);
    expect(status).toBe(0);
    const again = JSON.parse(readFileSync(join(second, "report.json"), "utf8"));
    for (const [place, seam] of again.seams.entries())
      expect(seam.lengthA).toBeCloseTo(report.seams[place].lengthA, 3);
  });

  test("says what to look at before cutting, and is done all the same", () => {
    const body = file("b.json", '{"id":"b","measures":{"chest":1310,"height":1740,"hip":1260}}');
    const { status, out, err } = ribwright("draft", "--body", body, "--out", folder());
    expect({ status, out }).toEqual({ status: 0, out: "" });
    expect(err).toMatch(/^b: attend, in /mu);
    expect(err).toMatch(/^attend: .+\d.+limit.+\.$/mu);
  });
});

describe("a maker's own block", () => {
  const line = "M0 0 L10 10";
  const half = { neckline: line, raglan: line, side: line, hem: line, centre: line };
  const arm = { neckline: line, raglanFront: line, underarmFront: line, wrist: line };
  const sleeve = { ...arm, underarmBack: line, raglanBack: line };
  const withFront = (front: object) =>
    JSON.stringify({
      format: "ribwright-block",
      version: 1,
      unit: "mm",
      pieces: { front: { edges: front }, back: { edges: half }, sleeve: { edges: sleeve } },
    });

  test.each<[string, object, RegExp]>([
    ["with an edge missing", { ...half, side: undefined }, /^front\.side is missing/u],
    ["with a gap", half, /front\.\w+.*\d.*0\.5/u],
    ["with a curve of another kind", { ...half, raglan: "M0 0 Q1 1 2 2" }, /front\.raglan.*Q/u],
    ["with no line at all", { ...half, raglan: "" }, /front\.raglan/u],
  ])("%s is refused by the name of the edge", (_, front, says) => {
    const out = join(folder(), "out");
    const block = file("k.json", withFront(front));
    const words = ["draft", "--body", bodyFile(), "--block", block, "--out", out];
    const { status, out: said, err } = ribwright(...words);
    expect({ status, said }).toEqual({ status: 2, said: "" });
    expect(err).toMatch(says);
    expect(err.trim().split("\n")).toHaveLength(1);
    expect(() => listing(out)).toThrow("ENOENT");
  });
});

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Fault } from "../../../src/drafting/fault.ts";
import { faultIn } from "../../../src/studio/photo/faultWords.ts";
import { photo as de } from "../../../src/studio/words/de/photo.ts";
import { photo as en } from "../../../src/studio/words/en/photo.ts";
import { slotsOf } from "../../../src/studio/words/sentence.ts";

/** Words that stand in English sentences only. */
const ENGLISH =
  /(?<!\p{L})(?:the|is|it|must|be|and|or|of|no|not|has|have|with|limit|take|out|but|there|a)(?!\p{L})/iu;

const ROOMS = ["src/trace/photo", "src/trace/follow", "src/studio/photo"] as const;
const SOURCES = [
  ...ROOMS.flatMap((room) => readdirSync(room).map((name) => `${room}/${name}`)),
  "src/trace/edges/soundOutline.ts",
].filter((name) => name.endsWith(".ts"));

/** What stands in a slot of a sentence, so that it reads as the core would say it. */
const SAMPLES: readonly (readonly [RegExp, string])[] = [
  [/^(?:length|bytes\.length|file\.size)$/u, "4711"],
  [/size/u, "4000 × 3000"],
  [/^width\} × \$\{height/u, "4000"],
  [/\? "mark" : "marks"/u, "marks"],
  [/what/u, "line"],
  [/piece/u, "front"],
  [/names?|twice|off\.name|map/u, "A, B"],
  [/asMm/u, "12.5\u00a0mm"],
  [/asPercent|%/u, "40\u00a0%"],
  [/^at$/u, "(3.0, 4.0)"],
];

const sampled = (slot: string): string => SAMPLES.find(([known]) => known.test(slot))?.[1] ?? "7";

/** The sentences that a source tells a maker: the third and the fourth part of each fault. */
const sentencesIn = (source: string): readonly string[] => {
  const text = readFileSync(source, "utf8");
  const found = [...text.matchAll(/faulty\(([\s\S]*?)\n?\s*\);/gu)].map(([, parts]) => parts ?? "");
  const cures = [...text.matchAll(/const [A-Z_]+CURE =\s*"([^"]+)"/gu)].map(
    ([, cure]) => cure ?? "",
  );
  const quoted = found.flatMap((parts) => [
    ...[...parts.matchAll(/`((?:[^`$]|\$\{(?:[^{}]|\{[^{}]*\})*\})*)`/gu)].map(([, s]) => s ?? ""),
    ...[...parts.matchAll(/"([^"]+)"/gu)].map(([, s]) => s ?? ""),
  ]);
  return [...quoted, ...cures]
    .map((s) => s.replaceAll(/\$\{((?:[^{}]|\{[^{}]*\})*)\}/gu, (_, slot: string) => sampled(slot)))
    .filter((s) => /^[A-Z].*\.$/u.test(s));
};

const ALL = SOURCES.flatMap(sentencesIn);

describe("what is told of pictures", () => {
  test("is found in the sources", () => {
    expect(ALL.length).toBeGreaterThan(45);
  });

  test.each(ALL)("in German: %s", (sentence) => {
    const fault: Fault = { field: "picture", value: "", reason: sentence, do: sentence };
    const told = faultIn(fault, "de");
    expect(told.reason).not.toBe(sentence);
    expect(told.reason.replaceAll(/\b[A-D]\b/gu, "")).not.toMatch(ENGLISH);
    expect(told.do).toBe(told.reason);
  });

  test("has its numbers with a comma in German, and is left alone in English", () => {
    const fault: Fault = {
      field: "marks",
      value: "",
      reason: "A line traced in this picture may be out by 3.4 mm; the limit is 3 mm.",
      do: "Lay the marks further apart, round the piece, and measure their distances again.",
    };
    expect(faultIn(fault, "de").reason).toBe(
      "Eine Linie aus diesem Bild kann um 3,4 mm daneben liegen; die Grenze ist 3 mm.",
    );
    expect(faultIn(fault, "en")).toEqual({ reason: fault.reason, do: fault.do });
  });
});

describe("the words of the page", () => {
  test.each(Object.keys(en) as (keyof typeof en)[])("%s has the same slots in German", (key) => {
    expect([...slotsOf(de[key])].sort()).toEqual([...slotsOf(en[key])].sort());
    expect(de[key]).not.toBe("");
  });

  test("holds no word that is never said", () => {
    const code = readdirSync("src/studio/photo")
      .map((name) => readFileSync(`src/studio/photo/${name}`, "utf8"))
      .join("\n");
    // A key may be put together: then its first part is found.
    const unused = Object.keys(en).filter(
      (key) =>
        !code.includes(`"${key}"`) && !code.includes(`\`${key.replace(/\.[^.]+$/u, ".")}\${`),
    );
    expect(unused).toEqual([]);
  });
});

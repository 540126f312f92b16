import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { sizeOf } from "../../src/drafting/sizes.ts";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { readBody } from "../../src/project/bodySchema.ts";
import { readChoices } from "../../src/project/choicesSchema.ts";

const DOCUMENTS = [
  ...readdirSync(".").filter((name) => name.endsWith(".md")),
  ...readdirSync("docs", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".md"))
    .map((name) => join("docs", name)),
];
const textOf = (file: string): string => readFileSync(file, "utf8");
const README = textOf("README.md");
const scripts: Readonly<Record<string, string>> = JSON.parse(textOf("package.json")).scripts;

/** The blocks of the README that are JSON, in order. */
const blocks = [...README.matchAll(/```json\n([\s\S]*?)```/g)].map(([, text]) =>
  JSON.parse(text ?? ""),
);

const linksOf = (file: string): readonly string[] => {
  const text = textOf(file);
  const found = [...text.matchAll(/\]\(([^)\s]+)\)/g), ...text.matchAll(/src="([^"]+)"/g)];
  return found.flatMap(([, to]) => (to && !/^(https?:|#)/.test(to) ? [to.replace(/#.*/, "")] : []));
};

describe("the documents", () => {
  test.each(DOCUMENTS)("of %s lead only to files that are there", (file) => {
    const lost = linksOf(file).filter((to) => !existsSync(join(dirname(file), to)));
    expect(lost).toEqual([]);
  });

  test.each(DOCUMENTS)("of %s name only commands that npm can run", (file) => {
    const named = [...textOf(file).matchAll(/`?npm run (?:-s )?([a-z][\w:-]*)/g)];
    const unknown = named.map(([, name]) => name ?? "").filter((name) => !(name in scripts));
    expect(unknown).toEqual([]);
  });
});

describe("the README", () => {
  test("shows a body that is read without a fault or a notice", () => {
    const read = readBody(blocks[0]);
    expect(read).toMatchObject({ body: { id: "ada" }, notices: [] });
  });

  test("shows choices that are read without a fault", () => {
    expect(readChoices(blocks[1])).not.toHaveProperty("faults");
  });

  test("names sizes that there are", () => {
    const named = [...README.matchAll(/\b([WM]\d{2,3}-(?:short|regular|tall))\b/g)];
    expect(named.length).toBeGreaterThan(1);
    for (const [, name] of named) expect(sizeOf(name ?? "")).not.toBeNull();
  });

  test("names every paper", () => {
    for (const paper of PAPER_NAMES) expect(README).toContain(`\`${paper}\``);
  });
});

describe("the developers' guide", () => {
  test("keeps to 150 lines", () => {
    expect(textOf("DEVELOPERS.md").trimEnd().split("\n").length).toBeLessThanOrEqual(150);
  });

  test("names every room of the source", () => {
    const rooms = readdirSync("src", { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    );
    for (const { name } of rooms) expect(textOf("DEVELOPERS.md")).toContain(`| \`${name}\` |`);
  });
});

describe("the decisions", () => {
  const names = readdirSync("docs/decisions").sort();

  test("are numbered without a gap", () => {
    expect(names.map((name) => Number(name.slice(0, 4)))).toEqual(names.map((_, i) => i + 1));
  });

  test.each(names)("say in %s what was decided, and when, on few lines", (name) => {
    const text = textOf(join("docs/decisions", name));
    expect(text).toMatch(/^# \d+\. .+\n\n[A-Z][a-z]+ \d{4}\.\n/);
    expect(text.split("\n").length).toBeLessThan(25);
  });
});

import { describe, expect, test } from "vitest";
import { readBodies } from "../../src/project/bodiesCsv.ts";
import { readClass } from "../../src/project/classFile.ts";
import { readFile } from "../../src/project/projectFile.ts";
import { sentence } from "../../src/project/refusal.ts";
import { readText } from "../../src/project/textFile.ts";
import { NEW_WORK } from "../../src/project/work.ts";
import { writeProject } from "../../src/project/writeProject.ts";
import { inGerman } from "../../src/studio/words/inGerman.ts";

/** Words that stand in English sentences only. Names of keys in files are English in any language. */
const ENGLISH =
  /\b(?:the|is|it|must|be|and|or|of|no|not|has|have|write|with|limits?|take|out|which|but|known|change|there)\b/iu;

/** The text without what was quoted from the file and without its keys. */
const own = (text: string): string =>
  text
    .replaceAll(/"[^"]*"/gu, "")
    .replaceAll(/\b(?:true|false|null)\b/gu, "")
    .replaceAll(/[a-zA-Z]+(?:\.[a-zA-Z]+)+/gu, "");

const tableFault = (text: string): string => {
  const read = readBodies(text, "6b.csv");
  if ("fault" in read) return sentence(read.fault);
  const [first] = read.rows.flatMap((row) => ("refusal" in row ? [row.refusal] : []));
  if (!first) throw new Error(`Nothing is wrong with ${text}`);
  return sentence(first);
};

const HEAD = "id,height,chest,wrist";
const TABLES = [
  "",
  "id\theight\tchest\na\t1600\t900",
  HEAD,
  'id,height,chest\n"a,1600,900',
  "id,height\na,1600",
  "id,height,chets\na,1600,900",
  "id,height,chest,chest\na,1600,900,900",
  `${HEAD}\na,1600`,
  `${HEAD}\na b,1600,900,150`,
  `${HEAD}\n,1600,900,150`,
  `${HEAD}\n..,1600,900,150`,
  `${HEAD}\na,1600,,150`,
  `${HEAD}\na,1600,n/a,150`,
  `${HEAD}\na,1600,900,n/a`,
  `${HEAD}\na,160,90,15`,
  `${HEAD}\na,1600,96,150`,
  `${HEAD}\na,1600,900,15`,
  `${HEAD}\na,1600,900,9`,
  `${HEAD}\na,1600,xx,yy`,
  "id,height,chest,sex\na,1600,900,x",
  "id,height,chest,age\na,1600,900,x",
  "id,height,chest,unit\na,1600,900,ell",
];

describe("a table's fault in German", () => {
  test.each(TABLES)("%j", (text) => {
    const told = inGerman(tableFault(text));
    expect(own(told)).not.toMatch(ENGLISH);
    expect(told).not.toMatch(/\$\d/u);
  });
  test("of two rows with one id", () => {
    const read = readBodies(`${HEAD}\na,1600,900,150\na,1600,900,150`, "6b.csv");
    const [refused] = "rows" in read ? read.rows.slice(1) : [];
    expect(refused && "refusal" in refused && inGerman(sentence(refused.refusal))).toBe(
      'id ist "a", aber so heißt schon Zeile 1; jeder Körper braucht eine eigene. Diesem Körper eine andere id geben.',
    );
  });
  test("of 41 pupils", () => {
    const rows = Array.from({ length: 41 }, (_, i) => `p${i},1600,900,150`);
    const read = readClass([HEAD, ...rows].join("\n"), "6 b.csv");
    expect("fault" in read && inGerman(sentence(read.fault))).toBe(
      "6 b.csv hat 41 Schüler; eine Klasse hat höchstens 40. Die Tabelle in zwei teilen.",
    );
  });
  test.each([
    new Uint8Array([0xff, 0xfe, 65, 0]),
    new Uint8Array([65, 0, 66]),
    new Uint8Array([0xc3, 0x28]),
  ])("of letters that are none", (bytes) => {
    const read = readText(bytes, "6b.csv");
    expect("fault" in read && own(inGerman(sentence(read.fault)))).not.toMatch(ENGLISH);
  });
});

type Json = Readonly<Record<string, unknown>>;
const handbook = (change: Json): string =>
  JSON.stringify({ ...JSON.parse(writeProject(NEW_WORK)), ...change });

const edges = { neckline: "M0 0 C1 1 2 2 3 3" };
const HANDBOOKS: readonly Json[] = [
  { title: 5 },
  { held: -1 },
  { held: 1.5 },
  { useBlock: "yes" },
  { date: "yesterday" },
  { bodies: [] },
  { bodies: [{ id: "a b", name: "", part: "", sex: null, measures: {} }] },
  { bodies: [{ id: "a", name: "", part: "", sex: "x", measures: {} }] },
  { bodies: [{ id: "a", name: "", part: "", sex: null, measures: { chest: 5 } }] },
  { bodies: [1, 2].map(() => ({ id: "a", name: "", part: "", sex: null, measures: {} })) },
  { choices: 5 },
  { choices: { fit: { chestEase: 4000 } } },
  { choices: { cloth: { rib: { stretch: 9 } } } },
  { choices: { alterations: { vInsert: { method: "x" } } } },
  { choices: { alterations: { hem: {} } } },
  { choices: { bands: { cuff: { cutHeight: 30 } }, allowances: { bands: 20 } } },
  { paper: "a9" },
  { paper: "40x40" },
  { paper: "3000x9000" },
  { print: { margins: { top: 99 } } },
  { print: { margins: { left: 30, right: 30 } } },
  { print: { margins: { top: 40, bottom: 40 } } },
  { print: { overlap: 120 } },
  { print: { overlap: 1 } },
  { print: { square: { along: 300 } } },
  { print: { square: { across: 0 } } },
  { print: { join: "x" } },
  { print: { turn: "x" } },
  { print: { only: ["x"] } },
  { print: { placed: [{ piece: "x", x: 0, y: 0, turn: 0 }] } },
  { print: { placed: [{ piece: "cuff", x: 0, y: 99_999, turn: 45 }] } },
  { colour: "red" },
];

describe("a handbook's fault in German", () => {
  test.each(HANDBOOKS)("%j", (change) => {
    const read = readFile("a.json", handbook(change));
    if (!("refusal" in read) || read.refusal.why !== "field") throw new Error("It was taken.");
    const told = inGerman(read.refusal.reason);
    expect(own(told).replace(/bekannt sind .*/u, "")).not.toMatch(ENGLISH);
  });
  test("and of a block", () => {
    const block = {
      format: "ribwright-block",
      version: 1,
      unit: "mm",
      pieces: { front: { edges }, back: { edges }, sleeve: { edges } },
    };
    const read = readFile("b.json", JSON.stringify(block));
    if (!("refusal" in read) || read.refusal.why !== "field") throw new Error("It was taken.");
    expect(own(inGerman(read.refusal.reason))).not.toMatch(ENGLISH);
  });
});

test("what is not known stays as it is", () => {
  expect(inGerman("6b.csv is empty. The moon is new.")).toBe("6b.csv ist leer. The moon is new.");
});

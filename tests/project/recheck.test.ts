import { describe, expect, test } from "vitest";
import { readChoices } from "../../src/project/choicesSchema.ts";
import { isObject } from "../../src/project/faultWords.ts";
import { make } from "../../src/project/make.ts";
import { recheck } from "../../src/project/recheck/recheck.ts";
import { readReport } from "../../src/project/recheck/reportFile.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { reportText } from "../support/reportText.ts";

/** The body of the method's worked example, section 8. */
const BODY = {
  id: "worked",
  measures: {
    chest: 960,
    height: 1660,
    hip: 1010,
    waist: 840,
    neckBase: 372,
    shoulder: 136,
    acrossBack: 375,
    napeToWaist: 424,
    napeToHip: 572,
    scyeDepth: 187,
    upperArm: 305,
    wrist: 155,
    hand: 187,
    head: 561,
    armLength: 553,
    spineToWrist: 760,
  },
};

const textOf = (choices: unknown = {}): string => {
  const read = readChoices(choices);
  if (!("choices" in read)) throw new Error(JSON.stringify(read));
  return reportText(make(BODY, read.choices, null), SHEETS);
};

/** `check` reads nothing of the sheets. */
const SHEETS = bareSheets();

const findings = (text: string) => {
  const json: unknown = JSON.parse(text);
  const read = readReport(json, "report.json");
  if ("fault" in read) throw new Error(read.fault.reason);
  return recheck(read.report).map(({ where, what }) => `${where}: ${what}`);
};

/** The value with what stands at `path` of it replaced; `undefined` takes it out. */
const withAt = (
  value: unknown,
  path: readonly string[],
  change: (old: unknown) => unknown,
): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return change(value);
  if (Array.isArray(value))
    return value.map((one: unknown, place): unknown =>
      String(place) === key ? withAt(one, rest, change) : one,
    );
  if (!isObject(value) || !(key in value)) throw new Error(`there is no ${key} in the report`);
  return { ...value, [key]: withAt(value[key], rest, change) };
};

const SOUND: unknown = JSON.parse(textOf());

/** What is found after one value of a sound report was changed; its path is written with dots. */
const foundAfter = (path: string, change: (old: unknown) => unknown): readonly string[] =>
  findings(JSON.stringify(withAt(SOUND, path.split("."), change)));

const times = (by: number) => (old: unknown) => Number(old) * by;
/** A line whose last point was moved by 2 mm across. */
const bent = (old: unknown) =>
  String(old).replace(/([\d.-]+) ([\d.-]+)$/u, (_, x, y) => `${Number(x) + 2} ${y}`);

describe("a report that was just written", () => {
  const cases: readonly (readonly [what: string, choices: object])[] = [
    ["the defaults", {}],
    ["cloth that shrinks", { cloth: { body: { shrinkLength: 0.05, shrinkWidth: 0.02 } } }],
    ["cloth that is turned", { cloth: { body: { shrinkLength: 0.08, turned: true } } }],
    ["cloth that grows", { cloth: { body: { shrinkLength: -0.05, shrinkWidth: -0.1 } } }],
    ["no alteration at all", { alterations: offAll() }],
    [
      "a lower, wider neckline",
      { alterations: { neckline: { on: true, widen: 30, lowerFront: 40 } } },
    ],
    ["wide allowances", { allowances: { raglan: 30, side: 20, underarm: 0, bands: 12 } }],
    ["no allowances", { allowances: { raglan: 0, side: 0, underarm: 0, bands: 0 } }],
    ["marks set even", { bands: { neckband: { share: "even", ratio: 0.8 } } }],
    ["a V too small for its allowance", smallV()],
    ["a wide V", { alterations: { vInsert: { halfWidth: 60, depth: 120, allowance: 15 } } }],
  ];
  test.each(cases)("with %s holds in every line, seam, notch and band", (_, choices) => {
    expect(findings(textOf(choices))).toEqual([]);
  });

  /** Method, 3.5: the short cut leaves the insert short, and says so. */
  test("of an insert by cut-away names the seam that does not meet", () => {
    const found = findings(textOf({ alterations: { vInsert: { method: "cut-away" } } }));
    expect(found).toEqual([
      "v-left: front.v is 21.633 mm longer than vInsert.left; at most 0.5 mm.",
    ]);
  });
});

/** Held by a rail, and drawn narrower still for cloth that grows across. */
function smallV() {
  const vInsert = { halfWidth: 5, depth: 40, allowance: 15 };
  return { alterations: { vInsert }, cloth: { body: { shrinkWidth: -0.1 } } };
}

function offAll() {
  const off = { on: false };
  return { moveSideSeams: off, raiseHem: off, endSleeve: off, vInsert: off };
}

describe("a report that was changed", () => {
  test("names the edge and the seam of a line that was moved", () => {
    const found = foundAfter("pieces.front.edges.raglan.path", bent).join("\n");
    expect(found).toMatch(/^front\.raglan: Its length is given as .* mm, but measures .* mm\.$/mu);
    expect(found).toMatch(/^front\.side: It begins 2 mm from the end of front\.raglan\.$/mu);
    expect(found).toMatch(/^raglan-front: front\.raglan is .* than sleeve\.raglanFront; at most/mu);
  });

  test("names the edge of the block likewise", () => {
    const found = foundAfter("block.back.edges.raglan.path", bent).join("\n");
    expect(found).toMatch(/^block\.back\.raglan: Its length/mu);
    expect(found).toMatch(/^block\.back\.side: It begins 2 mm/mu);
  });

  const cases: readonly (readonly [path: string, (old: unknown) => unknown, says: RegExp])[] = [
    ["pieces.back.edges.side.length", times(1.001), /^back\.side: Its length is given as/mu],
    [
      "pieces.front.edges.hem.path",
      () => "M0 0 Q1 1 2 2",
      /^front\.hem: Its line cannot be read/mu,
    ],
    [
      "pieces.sleeve.cutLine",
      bent,
      /^sleeve\.cutLine: It is not closed: its ends are 2 mm apart/mu,
    ],
    ["pieces.sleeve.cutLine", () => "", /^sleeve\.cutLine: The line cannot be read/mu],
    ["choices.allowances.side", times(2), /^front\.side: Its allowance is given as 19/mu],
    ["seams.0.lengthA", times(1.01), /^raglan-front: front\.raglan is given as/mu],
    ["seams.0.difference", () => 0.05, /^raglan-front: The difference is given as 0\.05 mm/mu],
    ["seams.2.ease", () => 3, /^side: The ease is given as 3 mm, but measures 0 mm/mu],
    ["seams.1.id", () => "other", /^raglan-back: The report has no such seam/mu],
    ["seams.1.a", () => [["back", "rglan"]], /^raglan-back: The report has no edge back\.rglan/mu],
    ["seams.1.a", () => [["back", "side"]], /^raglan-back: It joins back\.side and/mu],
    ["pieces.front.notches.0.at", times(1.01), /^[\w-]+: .*(misses its partner|Mark|given as)/mu],
    ["pieces.sleeve.notches.0.at", () => 9000, /^sleeve\.\w+: A notch of .* off its end/mu],
    ["pieces.back.notches", () => [], /^raglan-back: back\.raglan has 0 notches, sleeve/mu],
    ["bands.neckband.cutLength", times(1.01), /^neckband: cutLength is given as/mu],
    ["bands.neckband.opening", times(1.01), /^neckband: opening is given as/mu],
    ["bands.neckband.marks.1.at", times(1.1), /^neckband\.top: Mark 2 is given as/mu],
    ["bands.cuff.cutHeight", times(2), /^cuff: cutHeight is given as/mu],
    ["bands.cuff.ratio", times(2), /^cuff: ratio is/mu],
    ["bands.hemBand.finishedLength", times(0.9), /^hemBand: finishedLength is given as/mu],
    ["bands.hemBand.stretchToSew", times(2), /^hemBand: stretchToSew is/mu],
    ["bands.hemBand.quarterMarks.1", times(1.1), /^hemBand\.top: Mark 2 is given as/mu],
  ];
  test.each(cases)("at %s is found out, by name", (path, change, says) => {
    expect(foundAfter(path, change).join("\n")).toMatch(says);
  });
});

describe("a file that is no report", () => {
  test.each<[string, unknown]>([
    ["a block", { format: "ribwright-block", version: 1 }],
    ["a list", []],
    ["a later version", { ...Object(SOUND), version: 2 }],
    ["without pieces", { ...Object(SOUND), pieces: {} }],
    ["with a number for a line", withAt(SOUND, ["pieces", "front", "cutLine"], () => 7)],
  ])("is %s, and is told so in one sentence", (_, json) => {
    const read = readReport(json, "some.json");
    const reason = "fault" in read ? read.fault.reason : "";
    expect(reason).toMatch(
      /^some\.json is not a report that this program wrote: .+ must be .+\.$/u,
    );
  });
});

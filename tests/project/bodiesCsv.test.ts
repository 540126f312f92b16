import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readBodies } from "../../src/project/bodiesCsv.ts";

const read = (text: string) => readBodies(text, "bodies.csv");

/** The rows of a table that can be read. */
const rows = (text: string) => {
  const table = read(text);
  return "rows" in table ? table.rows : [];
};
const bodies = (text: string) => rows(text).flatMap((row) => ("read" in row ? [row.read] : []));
const refusals = (text: string) =>
  rows(text).flatMap((row) => ("refusal" in row ? [row.refusal] : []));
const notices = (text: string) => {
  const table = read(text);
  return "notices" in table ? table.notices : [];
};
/** Why a table cannot be read as a whole. */
const fault = (text: string) => {
  const table = read(text);
  return "fault" in table ? table.fault : null;
};

const SOUND = { id: "a", measures: { chest: 960, height: 1660 } };

describe("a table of bodies", () => {
  test("gives a body for each row, in the order given", () => {
    const text = "id,height,chest,wrist\na,1660,960,\nb,1700,1000,160\n";
    expect(bodies(text)).toEqual([
      SOUND,
      { id: "b", measures: { height: 1700, chest: 1000, wrist: 160 } },
    ]);
  });

  test("may end its lines as any system does, or not end the last", () => {
    for (const end of ["\n", "\r\n", "\r"])
      expect(bodies(["id,height,chest", "a,1660,960", "b,1660,960"].join(end))).toHaveLength(2);
    expect(bodies("id,height,chest\r\na,1660,960\nb,1660,960\r\n")).toHaveLength(2);
  });

  test("may have names with commas, quotation marks and line ends in them (RFC 4180)", () => {
    const [body] = bodies('id,name,height,chest\na,"Ada, ""the\nalto""",1660,960\n');
    expect(body?.name).toBe('Ada, "the alto"');
  });

  test("may have empty lines, which are no rows", () => {
    const text = "\n\nid,height,chest\n\na,1660,960\n , ,\n,,\nb,16,960\n";
    expect(bodies(text)).toEqual([SOUND]);
    expect(refusals(text)[0]).toMatchObject({ row: 2, id: "b", field: "height" });
  });

  test("reads semicolons with decimal commas, and says so", () => {
    const text = "id;height;chest;wrist\na;1660,5;960;155.5\n";
    expect(bodies(text)[0]?.measures).toEqual({ height: 1660.5, chest: 960, wrist: 155.5 });
    expect(notices(text)).toEqual([
      "Cells are parted by semicolons; commas in numbers are read as decimal points.",
    ]);
  });

  test("refuses a decimal comma where commas part the cells", () => {
    expect(refusals('id,height,chest\na,"1660,5",960')[0]?.reason).toContain("not a number");
    expect(refusals("id,height,chest\na,1660,5,960")[0]?.reason).toBe(
      "The row has 4 cells, but there are 3 headings.",
    );
  });

  test("takes centimetres and inches where its unit says so", () => {
    const [cm, inch] = bodies("id,unit,height,chest\na,cm,166,96\nb,in,65,38\n");
    expect(cm?.measures).toEqual({ height: 1660, chest: 960 });
    expect(inch?.measures.height).toBeCloseTo(1651, 9); // 65 × 25.4
    expect(inch?.measures.chest).toBeCloseTo(965.2, 9); // 38 × 25.4
  });

  test("keeps elbow, waistToHip and torsoGirth with the body", () => {
    const [body] = bodies("id,height,chest,elbow,waistToHip,torsoGirth\na,1660,960,270,150,2400");
    expect(body?.measures).toMatchObject({ elbow: 270, waistToHip: 150, torsoGirth: 2400 });
  });

  test("keeps sex and age, and leaves them out where they are empty", () => {
    const [first, second] = bodies("id,sex,age,height,chest\na,female,41,1660,960\nb,,,1660,960");
    expect(first).toMatchObject({ sex: "female", age: 41 });
    expect(Object.keys(second ?? {})).toEqual(["id", "measures"]);
  });
});

describe("a row that is refused", () => {
  const cases: readonly (readonly [what: string, row: string, field: string, says: RegExp])[] = [
    ["no chest", "a,1660,,", "chest", /chest is missing; a draft needs it\. Measure it/u],
    ["no height", "a,,960,", "height", /height is missing/u],
    ["no id", ",1660,960,", "id", /every body needs one/u],
    ["text for a measure", "a,1660,960,thin", "wrist", /"thin", which is not a number/u],
    ["NaN", "a,1660,NaN,", "chest", /which is not a number; 400 to 2000 mm/u],
    ["a number with a unit", "a,1660,96 cm,", "chest", /without a unit/u],
    ["a formula", "a,1660,=900+60,", "chest", /which is not a number/u],
    ["a number without end", "a,1660,1e999,", "chest", /limits are 400 to 2000 mm/u],
    ["zero", "a,1660,0,", "chest", /chest is 0 mm; the limits are 400 to 2000 mm/u],
    ["a negative", "a,1660,960,-155", "wrist", /wrist is -155 mm.*leave it out/u],
    ["one measure in cm", "a,1660,960,15.5", "wrist", /in centimetres\? Then write 155\./u],
    ["centimetres as mm", "a,166,96,15.5", "height", /in centimetres\? Then write cm as the unit/u],
    ["inches as mm", "a,65.5,38,6", "height", /in inches\? Then write in as the unit/u],
    ["an id with blanks", "a b,1660,960,", "id", /letters A to Z, digits/u],
    ["an id of 65 letters", `${"a".repeat(65)},1660,960,`, "id", /1 to 64/u],
    ["an id that leaves the folder", "..,1660,960,", "id", /a name that the program needs/u],
    ["an id that is a file", "summary.csv,1660,960,", "id", /a name that the program needs/u],
    ["an id that is a path", "a/b,1660,960,", "id", /letters A to Z/u],
  ];
  test.each(cases)("for %s says what, limit and cure", (_, row, field, says) => {
    const [refusal, ...others] = refusals(`id,height,chest,wrist\n${row}\nz,1660,960,155\n`);
    expect(others).toEqual([]);
    expect(refusal).toMatchObject({ row: 1, field });
    expect(`${refusal?.reason} ${refusal?.do}`).toMatch(says);
    expect(bodies(`id,height,chest,wrist\n${row}\nz,1660,960,155\n`)).toHaveLength(1);
  });

  test.each([
    ["sex", "F"],
    ["age", "old"],
    ["age", "-1"],
    ["unit", "inch"],
  ])("for a wrong %s tells what may stand there", (heading, value) => {
    const [refusal] = refusals(`id,height,chest,${heading}\na,1660,960,${value}\n`);
    expect(refusal).toMatchObject({ field: heading, value });
    expect(refusal?.reason).toMatch(/may stand there\.$/u);
  });

  test("tells mm that were called cm", () => {
    const [refusal] = refusals("id,unit,height,chest\na,cm,1660,960\n");
    expect(refusal?.reason).toContain("height is 1660 cm; the limits are 80 to 230 cm.");
    expect(refusal?.do).toContain("millimetres");
  });

  test("is one refusal, however much is wrong with it, and names all of it", () => {
    const all = refusals("id,height,chest,wrist,hand\na,x,960,0,y\n");
    expect(all).toHaveLength(1);
    expect(all[0]?.field).toBe("height");
    expect(all[0]?.reason).toContain("At fault too: wrist (0), hand (y).");
  });

  test("has an id that an earlier row has; the earlier one stands", () => {
    const text = "id,height,chest\na,1660,960\nb,1,1\na,1700,1000\nb,1700,1000\n";
    expect(bodies(text)).toEqual([SOUND]);
    expect(refusals(text).map(({ row, field }) => [row, field])).toEqual([
      [2, "height"],
      [3, "id"],
      [4, "id"],
    ]);
    expect(refusals(text)[1]?.reason).toContain("so it is in row 1");
  });

  test("has more or fewer cells than there are headings", () => {
    const text = "id,height,chest\na,1660\nb,1660,960,155\nc,1660,960,,\n";
    expect(refusals(text).map(({ row, field }) => [row, field])).toEqual([
      [1, "row"],
      [2, "row"],
    ]);
    expect(bodies(text).map(({ id }) => id)).toEqual(["c"]); // nothing but empty cells too many
  });
});

describe("a table that is refused as a whole", () => {
  const cases: readonly (readonly [what: string, text: string, says: RegExp])[] = [
    ["is empty", "", /bodies\.csv is empty/u],
    ["is blank", " \n\n", /bodies\.csv is empty/u],
    ["has no rows", "id,height,chest\n", /no body below them/u],
    ["has no id", "name,height,chest\nA,1660,960", /no column id/u],
    ["has no chest", "id,height\na,1660", /no column chest/u],
    ["has tabs", "id\theight\tchest\na\t1660\t960", /parted by tabs/u],
    ["has a column twice", "id,height,chest,chest\na,1660,960,970", /"chest".*stands there twice/u],
    ["has an open quotation mark", 'id,height,chest\na,"1660,960', /quotation mark without its/u],
    ["goes on after one", 'id,height,chest\n"a"b,1660,960', /quotation mark without its/u],
  ];
  test.each(cases)("because it %s", (_, text, says) => {
    const found = fault(text);
    expect(found?.reason).toMatch(says);
    expect(found?.do).toMatch(/\.$/u);
  });
});

describe("an unknown column", () => {
  test("is left alone and named once, with the nearest measure where one is near", () => {
    const text = "id,height,chest,weight,hips,why\na,1660,960,60,1010,x\nb,1660,960,60,1010,x";
    expect(bodies(text)).toHaveLength(2);
    expect(notices(text)).toEqual([
      "Not known and left alone: weight (nearest measure: height), hips (nearest measure: hip), why.",
    ]);
  });

  test("may have no heading at all", () => {
    expect(notices("id,height,chest,\na,1660,960,x")).toEqual([]);
  });
});

/** A cell as RFC 4180 has it, quoted always. */
const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/** What upsets tables, and some letters between. */
const LETTER = fc.constantFrom(..."\",;\n\r\t =+-@'a1é\ufeff\u2028", "🧵");

describe("any name at all", () => {
  const name = fc.string({ unit: LETTER, maxLength: 60 }).filter((text) => text.trim() !== "");
  test("comes back from a table as it was written, but for its white space", () => {
    fc.assert(
      fc.property(
        name,
        fc.constantFrom("\n", "\r\n"),
        fc.constantFrom(",", ";"),
        (text, end, mark) => {
          const lines = [
            ["id", "name", "height", "chest"],
            ["a", text, "1660", "960"],
          ].map((cells) => cells.map(quoted).join(mark));
          expect(bodies(lines.join(end))[0]?.name).toBe(text.replace(/\s+/gu, " ").trim());
        },
      ),
    );
  });

  const measure = fc.integer({ min: 4000, max: 20_000 }).map((tenths) => tenths / 10);
  test("does no harm to the measures beside it, however they are written", () => {
    fc.assert(
      fc.property(name, measure, fc.boolean(), (text, chest, comma) => {
        const written = comma ? String(chest).replace(".", ",") : String(chest);
        const row = [text, "a", written, "1660"].map(quoted).join(comma ? ";" : ",");
        const headings = ["name", "id", "chest", "height"].join(comma ? ";" : ",");
        expect(bodies(`${headings}\n${row}`)[0]?.measures.chest).toBe(chest);
      }),
    );
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Body } from "../../src/drafting/measures.ts";
import { loadOn } from "../../src/guide/tableTest.ts";
import { make } from "../../src/project/make.ts";
import { heldBody, NEW_WORK, withBody } from "../../src/project/work.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import { fieldOf, isField } from "../../src/studio/fields/fields.ts";
import {
  loadFor,
  recoveryRead,
  scrapWidth,
  slackRead,
  stretchRead,
} from "../../src/studio/fields/tableTest.ts";
import { fileName } from "../../src/studio/files/download.ts";
import { linkFor } from "../../src/studio/files/linking.ts";
import { LONGEST_LINK, packed, unpacked } from "../../src/studio/files/packing.ts";
import { printIn } from "../../src/studio/state/print.ts";
import { takeTyped } from "../../src/studio/state/refusing.ts";
import { keptParts, sameValue } from "../../src/studio/state/sameValue.ts";
import { arranged, type Slot } from "../../src/studio/table/arrange.ts";
import { FITTED, zoomed } from "../../src/studio/table/view.ts";

const MM = printIn("mm", "en");
const A_BODY: Body = { id: "ada", measures: { height: 1660, chest: 960 } };

describe("the table test (band mechanics, section 7)", () => {
  test("18 g a mm: 0.34 kg on 19, 0.9 kg on 50", () => {
    expect([loadFor(19), loadFor(50)]).toEqual([340, 900]);
  });
  test("the scrap that is hung is as wide as the printed guide's: half the cut height", () => {
    const { garment } = make(A_BODY, DEFAULT_CHOICES, null);
    const wide = garment.bands.neckband.cutHeight / 2;
    expect(scrapWidth(garment)).toBe(wide);
    expect(Math.abs(loadFor(wide) - loadOn(wide))).toBeLessThan(10);
  });
  test("100 that reads 180 under load stretches by 0.8", () => {
    expect(stretchRead({ loaded: 180, minute: null, hour: null, arc: null })).toBeCloseTo(0.8, 12);
  });
  test("150 that goes back to 102.5 in an hour gives back 0.95", () => {
    const readings = { loaded: null, minute: null, hour: 102.5, arc: null };
    expect(recoveryRead(readings, 150)).toBeCloseTo(0.95, 12);
  });
  test("D = 19, rho = 85.07, A = 125: e = 0.029", () => {
    const readings = { loaded: null, minute: null, hour: null, arc: 125 };
    expect(slackRead(readings, 19, 85.07)).toBeCloseTo(0.029, 3);
  });
});

describe("a link", () => {
  test("unpacks to what was packed", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 400 }), async (text) => {
        expect(await unpacked(await packed(text))).toBe(text);
      }),
      { seed: 5, numRuns: 25, endOnFailure: true },
    );
  });
  test("cut short is refused", async () => {
    const letters = await packed("a work of some length, and more of it, and more of it still");
    await expect(unpacked(letters.slice(0, -9))).rejects.toThrow();
  });
  test("carries one body of a choir, and is short enough for a letter", async () => {
    const link = await linkFor(choirWork(), "https://example.org/r/#old");
    expect(link).toMatch(/^https:\/\/example\.org\/r\/#work=[A-Za-z0-9_-]+$/u);
    expect(link?.length).toBeLessThan(LONGEST_LINK);
    const text = await unpacked(link?.split("#work=")[1] ?? "");
    expect(JSON.parse(text).bodies).toHaveLength(1);
  });
});

describe("a number as typed", () => {
  const work = choirWork();
  test.each([
    ["raiseHem.by", "60", 60],
    ["raiseHem.by", "+3", 53.8],
    ["rib.stretch", "65 %", 0.65],
    ["neckband.ratio", "0.8", 0.8],
    ["measures.waist", "", null],
  ] as const)("%s %j is taken", (field, typed, value) => {
    expect(takeTyped(field, typed, work, MM)).toEqual({
      value: value === null ? null : expect.closeTo(value, 9),
    });
  });
  test.each([
    ["raiseHem.by", "301"],
    ["raiseHem.by", ""],
    ["raiseHem.by", "much"],
    ["rib.recovery", "40"],
    ["cuff.cutHeight", "20"],
    ["measures.chest", "399.9"],
  ] as const)("%s %j is refused", (field, typed) => {
    expect(takeTyped(field, typed, work, MM)).toHaveProperty("refused");
  });
  test("a cuff may not be lower than its own four turnings", () => {
    const wide = fieldOf("allowances.bands").write(work, 12);
    expect(takeTyped("cuff.cutHeight", "47", wide, MM)).toHaveProperty("refused");
    expect(takeTyped("cuff.cutHeight", "48", wide, MM)).toEqual({ value: 48 });
  });
});

describe("every number", () => {
  const ids = [
    "moveSideSeams.by",
    "vInsert.depth",
    "cuff.ease",
    "body.shrinkWidth",
    "measures.hip",
  ];
  test.each(ids)("%s is written where it is read, and nowhere else", (id) => {
    if (!isField(id)) throw new Error(id);
    const { read, write, range } = fieldOf(id);
    const middle = (range.least + range.most) / 2;
    const written = write(NEW_WORK, middle);
    expect(read(written)).toBe(middle);
    expect(write(written, read(NEW_WORK))).toEqual(NEW_WORK);
  });
  test("a measure taken back leaves the body as it was", () => {
    const field = fieldOf("measures.hip");
    const given = field.write(NEW_WORK, 1000);
    expect(heldBody(given).measures).toEqual({ hip: 1000 });
    expect(heldBody(field.write(given, null)).measures).toEqual({});
  });
});

describe("the same value", () => {
  test("is told by what it holds", () => {
    expect(sameValue(DEFAULT_CHOICES, structuredClone(DEFAULT_CHOICES))).toBe(true);
    expect(sameValue({ a: [1, { b: 2 }] }, { a: [1, { b: 3 }] })).toBe(false);
    expect(sameValue([1], [1, 2])).toBe(false);
    expect(sameValue(null, {})).toBe(false);
    expect(sameValue({}, [])).toBe(false);
  });
  test("a sum's last digit is no difference where a hair is allowed, and a tenth is", () => {
    const [was, now] = [{ at: [1, { x: 0.3 }] }, { at: [1, { x: 0.1 + 0.2 }] }];
    expect([sameValue(was, now), sameValue(was, now, 1e-6)]).toEqual([false, true]);
    expect(sameValue(was, { at: [1, { x: 0.4 }] }, 1e-6)).toBe(false);
  });
  test("stays itself in a list", () => {
    const before = [{ a: 1 }, { a: 2 }];
    const after = keptParts(before, [{ a: 1 }, { a: 3 }]);
    expect(after[0]).toBe(before[0]);
    expect(after[1]).toEqual({ a: 3 });
  });
});

describe("the table", () => {
  const slot = (name: Slot["name"], wide: number, tall: number): Slot => ({
    name,
    box: { left: 0, top: 0, right: wide, bottom: tall },
    left: 20,
    least: 0,
    above: 10,
    below: 30,
  });
  test("holds every piece, and no two in one place", () => {
    const rows = [
      [slot("front", 290, 530), slot("back", 290, 540), slot("sleeve", 440, 640)],
      [slot("hemBand", 1023, 165)],
    ];
    const size = { width: 836, height: 748 };
    const { scale, places } = arranged(rows, size, { x: 30, top: 40, bottom: 60 });
    const boxes = rows.flat().map(({ name, box }) => {
      const at = places.get(name) ?? { x: -1, y: -1 };
      return {
        left: at.x,
        right: at.x + box.right * scale,
        top: at.y,
        bottom: at.y + box.bottom * scale,
      };
    });
    for (const [i, a] of boxes.entries()) {
      expect(a.left).toBeGreaterThanOrEqual(0);
      expect(a.right).toBeLessThanOrEqual(size.width);
      expect(a.bottom).toBeLessThanOrEqual(size.height);
      for (const b of boxes.slice(i + 1)) {
        expect(a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top).toBe(
          true,
        );
      }
    }
  });
  test("zooms at the pointer: what is under it stays there", () => {
    const view = zoomed(zoomed(FITTED, 2, 100, 50), 1.7, 300, 200);
    const under = (300 - view.x) / view.zoom;
    const before = zoomed(FITTED, 2, 100, 50);
    expect(under).toBeCloseTo((300 - before.x) / before.zoom, 9);
  });
});

describe("a file's name", () => {
  test.each([
    ["Odile Marrack", "odile-marrack.pdf"],
    ["  Ünïque / Näme!! ", "unique-name.pdf"],
    ["", "ribwright.pdf"],
    ["../../etc", "etc.pdf"],
  ])("%j", (title, name) => expect(fileName(title, ".pdf")).toBe(name));
});

test("a body is replaced where it is held, and nowhere else", () => {
  const work = { ...choirWork(), held: 3 };
  const changed = withBody(work, (body) => ({ ...body, name: "X" }));
  expect(changed.bodies.filter(({ name }) => name === "X")).toHaveLength(1);
  expect(changed.bodies[3]?.name).toBe("X");
});

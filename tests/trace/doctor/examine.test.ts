import { describe, expect, test } from "vitest";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import type { Block } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, mapPath, startOf } from "../../../src/geometry/path.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { examine, preview } from "../../../src/trace/doctor/examine.ts";
import { blockGirths } from "../../../src/trace/doctor/girths.ts";
import type { Finding } from "../../../src/trace/doctor/remedy.ts";
import { startTurned, toLength, withSide } from "../../../src/trace/doctor/reshape.ts";
import { WORKED_EXAMPLE } from "../../drafting/bodies.ts";

const { block: SOUND } = draftRaglanBlock(WORKED_EXAMPLE, DEFAULT_CHOICES.fit);

const longer = (path: Path, level: number, by: number): Path => {
  const made = toLength(path, level, lengthOf(path) + by);
  if (!made) throw new Error("no such length");
  return made;
};

/** A block whose sleeve is 4 mm too long at the front raglan, as a worn paper draft may be. */
const WORN: Block = {
  ...SOUND,
  sleeve: { ...SOUND.sleeve, raglanFront: longer(SOUND.sleeve.raglanFront, 0, 4) },
};

const find = (block: Block, id: string): Finding => {
  const finding = examine(block).find((f) => f.id === id);
  if (!finding) throw new Error(id);
  return finding;
};
const remedy = (finding: Finding, id: string) => {
  const chosen = finding.remedies.find((r) => r.id === id);
  if (!chosen) throw new Error(`${finding.id} has no ${id}`);
  return chosen;
};

describe("the doctor", () => {
  test("finds the drafted block sound, and offers no remedy for what is sound", () => {
    const ill = examine(SOUND).filter((f) => f.verdict !== "sound");
    expect(ill.map(({ id }) => id)).toEqual([]);
    expect(examine(SOUND).flatMap(({ remedies }) => remedies)).toEqual([]);
  });

  test("tells a seam's difference in mm, with both lengths and three remedies", () => {
    const finding = find(WORN, "raglan-front-match");
    expect(finding.value).toBeCloseTo(4, 6);
    expect(finding.verdict).toBe("stop");
    expect(finding.message).toMatch(/The front's raglan is .* and the sleeve's .*, 4\smm apart/);
    expect(finding.remedies.map(({ id }) => id)).toEqual(["leave", "sleeve", "body"]);
  });

  test("leaving it changes nothing", () => {
    expect(remedy(find(WORN, "raglan-front-match"), "leave").apply(WORN)).toBe(WORN);
  });

  test.each(["sleeve", "body"])(
    "correcting the %s makes the seam meet and no other seam part",
    (id) => {
      const { after, worse } = preview(WORN, remedy(find(WORN, "raglan-front-match"), id));
      expect(after.find((f) => f.id === "raglan-front-match")?.value).toBeLessThan(1e-6);
      expect(worse.filter((w) => w.endsWith("-match"))).toEqual([]);
    },
  );

  test("a preview shows how far points would move, and the block given stays as it was", () => {
    const { moves, block } = preview(WORN, remedy(find(WORN, "raglan-front-match"), "sleeve"));
    expect(moves.front).toBe(0);
    expect(moves.sleeve).toBeGreaterThan(2);
    expect(moves.sleeve).toBeLessThan(8);
    expect(lengthOf(WORN.sleeve.raglanFront)).toBeCloseTo(
      lengthOf(SOUND.sleeve.raglanFront) + 4,
      6,
    );
    expect(startOf(block.sleeve.raglanFront)).toEqual(endOf(block.sleeve.neckline));
  });

  test("the back raglan, sides and underarms are mended in the same way", () => {
    const { sleeve, front } = SOUND;
    const ill: Block = {
      ...SOUND,
      front: withSide(front, lengthOf(front.side) + 5),
      sleeve: {
        ...sleeve,
        raglanBack: longer(sleeve.raglanBack, 0, -3),
        underarmFront: longer(sleeve.underarmFront, 0, 6),
      },
    };
    const cured = [
      ["raglan-back-match", "sleeve"],
      ["side-match", "body"],
      ["underarm-match", "sleeve"],
    ] as const;
    const well = cured.reduce((block, [id, how]) => remedy(find(block, id), how).apply(block), ill);
    for (const [id] of cured) expect(find(well, id).value).toBeLessThan(1e-6);
    expect(find(well, "front-hem-square").verdict).toBe("sound");
  });

  test("a neckline that turns over the raglan seam is drawn anew by rule 2.6", () => {
    const ill: Block = {
      ...SOUND,
      sleeve: { ...SOUND.sleeve, neckline: startTurned(SOUND.sleeve.neckline, 0.3) },
    };
    const finding = find(ill, "neckline-turn");
    expect(finding.verdict).toBe("stop");
    expect(find(remedy(finding, "sleeve").apply(ill), "neckline-turn").value).toBeLessThan(1e-6);
  });

  test("a raglan that peaks at the underarm is turned until it runs straight", () => {
    const raglan = startTurned(SOUND.front.raglan, 0);
    const ill: Block = {
      ...SOUND,
      front: {
        ...SOUND.front,
        raglan: mapPath(raglan, (p) => p),
        side: startTurned(SOUND.front.side, 0.2),
      },
    };
    const finding = find(ill, "underarm-turn-body");
    expect(finding.value).toBeGreaterThan(10);
    expect(find(remedy(finding, "body").apply(ill), "underarm-turn-body").value).toBeLessThan(1e-6);
  });

  test("a hem that is not square to the fold is squared there", () => {
    const hem = mapPath(SOUND.back.hem, ({ x, y }) => ({ x, y: y + 0.1 * x }));
    const ill: Block = { ...SOUND, back: { ...SOUND.back, hem } };
    const finding = find(ill, "back-hem-square");
    expect(finding.value).toBeCloseTo((Math.atan(0.1) * 180) / Math.PI, 6);
    expect(find(remedy(finding, "body").apply(ill), "back-hem-square").value).toBeLessThan(1e-6);
  });

  test("a sleeve that hangs askew is turned, and no length changes", () => {
    const [c, s] = [Math.cos(0.05), Math.sin(0.05)];
    const of = (path: Path): Path =>
      mapPath(path, ({ x, y }) => ({ x: c * x - s * y + 20, y: s * x + c * y }));
    const { neckline, raglanFront, underarmFront, wrist, underarmBack, raglanBack } = SOUND.sleeve;
    const askew: Block = {
      ...SOUND,
      sleeve: {
        neckline: of(neckline),
        raglanFront: of(raglanFront),
        underarmFront: of(underarmFront),
        wrist: of(wrist),
        underarmBack: of(underarmBack),
        raglanBack: of(raglanBack),
      },
    };
    const level = remedy(find(askew, "sleeve-level"), "sleeve").apply(askew);
    const well = remedy(find(level, "sleeve-middle"), "sleeve").apply(level);
    expect(find(well, "sleeve-level").value).toBeLessThan(1e-9);
    expect(startOf(well.sleeve.underarmFront).x).toBeCloseTo(startOf(underarmFront).x, 9);
    expect(lengthOf(well.sleeve.raglanBack)).toBeCloseTo(lengthOf(raglanBack), 9);
  });

  test("front and back taken for each other are noticed by the raglans", () => {
    const swapped: Block = { ...SOUND, front: SOUND.back, back: SOUND.front };
    expect(find(swapped, "raglan-balance").verdict).not.toBe("sound");
  });
});

describe("a block's girths", () => {
  test("are those of its pieces all the way round: a quarter of the chest is 275 in the worked case", () => {
    const girths = blockGirths(SOUND, WORKED_EXAMPLE);
    const chest = girths.find(({ id }) => id === "chest");
    expect(chest?.girth).toBeCloseTo(1100, 9);
    expect(chest?.ease).toBeCloseTo(140, 9);
    expect(chest?.message).toMatch(/measures 1100\smm, 140\smm more than the chest of 960\smm/);
    expect(girths.map(({ verdict }) => verdict)).toEqual([
      "sound",
      "sound",
      "sound",
      "sound",
      "sound",
    ]);
  });

  test("stand alone where no body is known", () => {
    for (const { body, verdict } of blockGirths(SOUND, null))
      expect([body, verdict]).toEqual([null, null]);
  });
});

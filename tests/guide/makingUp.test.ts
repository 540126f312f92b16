import { describe, expect, test } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { boundsOf } from "../../src/geometry/outline.ts";
import { neckbandMarks } from "../../src/guide/bandMarks.ts";
import { makingUp } from "../../src/guide/makingUp.ts";
import { shortOfTip, snipLength } from "../../src/guide/pictures/vInsert.ts";
import { edgeOf, pieceOf } from "../../src/guide/shapes.ts";
import type { StepId } from "../../src/guide/step.ts";
import { tell, voiceOf } from "../../src/guide/words/tell.ts";
import type { GuideKey } from "../../src/guide/words/told.ts";
import { CUT_AWAY, choicesWith, garmentOf, SHRINKING, WITHOUT_V } from "../support/garments.ts";

const english = voiceOf("en");
const stepsOf = (garment: Garment): readonly StepId[] => makingUp(garment).map(({ id }) => id);

const keysOf = (garment: Garment): readonly GuideKey[] =>
  makingUp(garment).flatMap(({ sentences }) => sentences.map(({ key }) => key));

/** The number in a slot of the one sentence of this kind. */
const slotOf = (garment: Garment, key: GuideKey, slot: string, step?: StepId): number => {
  const found = makingUp(garment)
    .filter(({ id }) => step === undefined || id === step)
    .flatMap(({ sentences }) => sentences)
    .find((sentence) => sentence.key === key);
  const value = found?.slots[slot];
  return value && "value" in value ? value.value : Number.NaN;
};

describe("the order of work", () => {
  test("is V, raglan front and back, underarm and side in one, neckband, cuffs, hem band, press", () => {
    expect(stepsOf(garmentOf())).toEqual([
      "prepare",
      "stay-v",
      "v-insert",
      "raglan-front",
      "raglan-back",
      "underarm-and-side",
      "neckband",
      "cuffs",
      "hem-band",
      "press",
    ]);
  });

  test("has no step of a V where there is none, and no word of one", () => {
    const garment = garmentOf(WITHOUT_V);
    expect(stepsOf(garment)).not.toContain("stay-v");
    expect(stepsOf(garment)).not.toContain("v-insert");
    expect(keysOf(garment)).not.toContain("prepare.turningV");
    const drawn = makingUp(garment).flatMap(({ pictures }) => pictures);
    const pieces = drawn.flatMap(({ strokes }) => strokes.map(({ origin }) => origin?.piece));
    expect(pieces).not.toContain("vInsert");
  });
});

describe("the V's numbers", () => {
  test("are those of the method's worked example", () => {
    const garment = garmentOf();
    expect(slotOf(garment, "v.sew", "length")).toBeCloseTo(60.6464, 3);
  });

  test("say how far the sewn point lies inside the insert's cut tip: allowance over the sine of half the angle", () => {
    // Trade facts, O05: a mitred corner runs out by the allowance over the sine of half the angle;
    // the method's worked example has β = 24.183°.
    const expected = 6.35 / Math.sin((24.183 * Math.PI) / 180);
    expect(shortOfTip(garmentOf())).toBeCloseTo(expected, 2);
    expect(slotOf(garmentOf(), "v.stop", "short")).toBeCloseTo(expected, 2);
  });

  test("snip to 1 mm before the stitches, from the corner of the cut edge", () => {
    const expected = 6.35 / Math.sin((24.183 * Math.PI) / 180) - 1;
    expect(snipLength(garmentOf())).toBeCloseTo(expected, 2);
  });

  test("tell of a cut-away V by how much its insert is short: 21.633 a side in the worked example", () => {
    const garment = garmentOf(CUT_AWAY);
    expect(keysOf(garment)).not.toContain("v.sew");
    expect(slotOf(garment, "v.stretched", "by")).toBeCloseTo(21.633, 2);
    expect(slotOf(garment, "v.stretched", "opening")).toBeCloseTo(82.279, 2);
  });

  test("have nothing to snip without an allowance", () => {
    const vInsert = { ...DEFAULT_CHOICES.alterations.vInsert, allowance: 0 };
    const keys = keysOf(garmentOf({ alterations: { vInsert } }));
    expect(keys).toContain("stay.noSnip");
    expect(keys).not.toContain("stay.snip");
  });
});

describe("marks of the neckband", () => {
  // Method, section 8: the worked example.
  const { rows } = neckbandMarks(garmentOf());

  test("stand on the band where the method has them", () => {
    const worked = [0, 69.1003, 93.8641, 114.7721, 190.6008, 266.4294, 287.3374, 312.1012];
    rows.forEach(({ onBand }, i) => {
      expect(onBand).toBeCloseTo(worked[i] ?? Number.NaN, 3);
    });
  });

  test("stand on the opening where the method has them", () => {
    const worked = [0, 80.907, 121.9806, 147.867, 243.9611];
    worked.forEach((way, i) => {
      expect(rows[i]?.onOpening).toBeCloseTo(way, 3);
    });
  });

  test("stretch the band from mark to mark so that all gaps add up to band and opening", () => {
    const add = (of: (row: (typeof rows)[number]) => number) =>
      rows.reduce((sum, row) => sum + of(row), 0);
    expect(add(({ band }) => band)).toBeCloseTo(381.2016, 3);
    expect(add(({ opening }) => opening)).toBeCloseTo(487.9222, 3);
    for (const { band, opening, stretch } of rows) {
      expect(band * (1 + stretch)).toBeCloseTo(opening, 9);
    }
  });

  test("are no further apart with an even share than the opening's are, all stretched alike", () => {
    const bands = {
      neckband: { ...DEFAULT_CHOICES.bands.neckband, share: "even" as const },
    };
    const even = neckbandMarks(garmentOf({ bands })).rows;
    for (const { stretch } of even) expect(stretch).toBeCloseTo(0.28, 3);
    expect(keysOf(garmentOf({ bands }))).not.toContain("neckband.unequal");
  });

  test("say where half way lies: 41.0736 from the sleeve's back corner", () => {
    expect(slotOf(garmentOf(), "neckband.halfWaySleeve", "from")).toBeCloseTo(41.0736, 3);
  });
});

describe("cloth that shrinks", () => {
  const garment = garmentOf(SHRINKING);

  test("is told not to be washed first", () => {
    expect(keysOf(garment)).toContain("prepare.grown");
    expect(keysOf(garment)).not.toContain("prepare.washed");
  });

  test("has openings as cut and as worn", () => {
    const cut = slotOf(garment, "band.wash", "cut", "hem-band");
    const finished = slotOf(garment, "band.wash", "finished", "hem-band");
    expect(finished).toBeCloseTo(garment.bands.hemBand.opening, 9);
    expect(cut).toBeCloseTo(finished / (1 - 0.02), 6);
  });

  test("eases the longer edge of a raglan in, by the report's ease", () => {
    const ease = garment.seams.find(({ id }) => id === "raglan-front")?.ease ?? Number.NaN;
    expect(Math.abs(ease)).toBeGreaterThan(0.1);
    expect(slotOf(garment, "seam.ease", "ease", "raglan-front")).toBeCloseTo(Math.abs(ease), 9);
  });
});

describe("a band", () => {
  test("as long as its opening is sewn on flat, a longer one is eased in", () => {
    const hemBand = (ease: number) => ({
      bands: { hemBand: { ...DEFAULT_CHOICES.bands.hemBand, ease } },
    });
    const keys = (ease: number) =>
      makingUp(garmentOf(hemBand(ease)))
        .find(({ id }) => id === "hem-band")
        ?.sentences.map(({ key }) => key) ?? [];
    const { opening } = garmentOf().bands.hemBand;
    expect(keys(opening - 1010)).toContain("band.flat");
    expect(keys(opening - 1010 + 5)).toContain("band.ease");
    expect(keys(0)).toContain("band.stretch");
    expect(keys(0)).toContain("hemBand.hangs");
    expect(keys(-60)).toContain("hemBand.holds");
  });
});

describe("cautions", () => {
  const cautions = (isChild: boolean) =>
    makingUp(garmentOf(), { isChild }).flatMap(({ cautions: all }) => all.map(({ key }) => key));

  test("stand at the step where they bite", () => {
    const at = new Map(
      makingUp(garmentOf()).map(({ id, cautions: all }) => [id, all.map(({ key }) => key)]),
    );
    expect(at.get("prepare")).toContain("caution.cutter");
    expect(at.get("press")).toContain("caution.iron");
    for (const id of ["v-insert", "raglan-front", "neckband", "hem-band"] as const) {
      expect(at.get(id)).toContain("caution.pins");
    }
  });

  test("forbid cords on a child's garment", () => {
    expect(cautions(true)).toContain("caution.cord");
    expect(cautions(false)).not.toContain("caution.cord");
  });
});

describe("turnings", () => {
  test("that differ between underarm and side are both told", () => {
    const keys = keysOf(garmentOf({ allowances: { side: 12 } }));
    expect(keys).toContain("side.turnings");
  });

  test("of the V are those that it had room for", () => {
    const vInsert = { ...DEFAULT_CHOICES.alterations.vInsert, halfWidth: 8, allowance: 15 };
    const garment = garmentOf({ alterations: { vInsert } });
    expect(slotOf(garment, "v.lay", "allowance")).toBeLessThan(15);
  });
});

test("no picture needs a side seam that was moved, a raised hem or a shortened sleeve", () => {
  const off = choicesWith({}).alterations;
  const garment = garmentOf({
    alterations: {
      moveSideSeams: { ...off.moveSideSeams, on: false },
      raiseHem: { ...off.raiseHem, on: false },
      endSleeve: { ...off.endSleeve, on: false },
    },
  });
  expect(makingUp(garment).flatMap(({ pictures }) => pictures).length).toBeGreaterThan(8);
  const side = edgeOf(pieceOf(garment, "front"), "side");
  expect(slotOf(garment, "side.sew", "side")).toBeCloseTo(side.length, 9);
  expect(boundsOf(side.path).bottom).toBeGreaterThan(500);
});

test("every sentence is whole: no slot is left unfilled, in either language", () => {
  for (const voice of [english, voiceOf("de")]) {
    for (const changes of [{}, WITHOUT_V, CUT_AWAY, SHRINKING]) {
      for (const step of makingUp(garmentOf(changes), { isChild: true })) {
        const all = [step.title, ...step.sentences, ...step.cautions];
        const told = [...all, ...step.stitches.map((stitch) => stitch.told)];
        for (const sentence of told) expect(tell(voice, sentence)).not.toMatch(/[{}]|NaN/u);
      }
    }
  }
});

import { describe, expect, test } from "vitest";
import type { Block } from "../../src/drafting/piece.ts";
import { radians } from "../../src/geometry/units.ts";
import { aPath } from "../support/curves.ts";
import { near } from "../support/expectations.ts";
import { steepBlock } from "../support/ownBlocks.ts";
import { DRAFTED, garmentOf, idsIn } from "../support/workedGarment.ts";
import { expectCheck } from "./expectCheck.ts";

describe("the check that the neckline runs on over the raglan seams", () => {
  const cure = "Redraw the sleeve's neck edge, or turn on the neckline alteration, which does it.";
  const turnedBy = (front: number, back: number) => {
    const garment = garmentOf();
    const ring = { ...garment.ring, overFront: radians(front), overBack: radians(back) };
    return { ...garment, ring };
  };

  test("is sound where it runs straight on, and off it by up to 5°", () => {
    const says = ["0° off straight", "the limit is 5°."];
    expectCheck(garmentOf(), "neckline-turn", { verdict: "sound", says, cure });
    expectCheck(turnedBy(5, -4), "neckline-turn", { verdict: "sound", says: ["5° off"], cure });
  });

  test("attends to 10° by the larger of front and back, whichever way it turns", () => {
    const { value } = expectCheck(turnedBy(2, -7.3), "neckline-turn", {
      verdict: "attend",
      says: ["7.3° off straight"],
      cure,
    });
    near(value, 7.3, 1e-9);
  });

  test("stops beyond, as on a block whose sleeve was cut straight at the neck", () => {
    expectCheck(turnedBy(10.1, 0), "neckline-turn", { verdict: "stop", says: ["10.1°"], cure });
    const sleeve = { ...DRAFTED.sleeve, neckline: aPath("M-19.1231 -251.9087 L43.4615 -246.2109") };
    const straight = garmentOf({}, { block: { ...DRAFTED, sleeve } });
    expectCheck(straight, "neckline-turn", { verdict: "stop", says: ["the limit is 5°"], cure });
  });

  test("is cured by the neckline alteration, as it says", () => {
    const sleeve = { ...DRAFTED.sleeve, neckline: aPath("M-19.1231 -251.9087 L43.4615 -246.2109") };
    const opened = garmentOf({ neckline: { on: true } }, { block: { ...DRAFTED, sleeve } });
    expectCheck(opened, "neckline-turn", { verdict: "sound", says: ["0° off straight"], cure });
  });
});

describe("the check that the raglan runs on over side and underarm", () => {
  const cure = "Move the side seams by less, or keep the shaped side seams.";

  // Method 8: 3.4479° on the sleeve, and 0.529° on the body.
  test("is sound on the worked example, 3.4479°", () => {
    const { value } = expectCheck(garmentOf(), "underarm-turn", {
      verdict: "sound",
      says: ["3.4° off straight", "the limit is 5°."],
      cure,
    });
    near(value, 3.4479, 1e-4);
  });

  test("attends where sides that leaned out are made vertical: a hip of 1400", () => {
    const garment = garmentOf({}, { measures: { hip: 1400 } });
    const { value } = expectCheck(garment, "underarm-turn", {
      verdict: "attend",
      says: ["9.7° off straight"],
      cure,
    });
    // The lean is held to 0.085, on both halves.
    near(value, (2 * Math.atan(0.085) * 180) / Math.PI, 1e-6);
  });

  test("is sound again where the shaped sides are kept", () => {
    const kept = garmentOf({ moveSideSeams: { on: false } }, { measures: { hip: 1400 } });
    expectCheck(kept, "underarm-turn", { verdict: "sound", says: ["0° off straight"], cure });
  });

  test("stops where raglans that end 9° below level meet vertical sides", () => {
    const garment = garmentOf({}, { block: steepBlock({ front: 9, back: 9 }) });
    const { value } = expectCheck(garment, "underarm-turn", {
      verdict: "stop",
      says: ["18° off straight"],
      cure,
    });
    near(value, 18, 1e-9);
  });
});

describe("the check that the hem runs on over the side seams", () => {
  const cure = "Draw the hem square to the side seam.";
  /** Both hems fall from the side to the fold by so much. */
  const falling = (by: number): Block => {
    const hem = aPath(`M273.5 572 L0 ${572 + by}`);
    return { ...DRAFTED, front: { ...DRAFTED.front, hem }, back: { ...DRAFTED.back, hem } };
  };
  const keeping = { moveSideSeams: { on: false }, raiseHem: { on: false } } as const;
  const degreesOf = (by: number): number => (2 * Math.atan(by / 273.5) * 180) / Math.PI;

  test("is sound on the draft", () => {
    expectCheck(garmentOf(), "hem-turn", {
      verdict: "sound",
      says: ["0° off straight", "the limit is 5°."],
      cure,
    });
  });

  test("attends where both hems fall by 18 over their width", () => {
    const garment = garmentOf(keeping, { block: falling(18) });
    const { value } = expectCheck(garment, "hem-turn", { verdict: "attend", says: ["7.5°"], cure });
    near(value, degreesOf(18), 1e-9);
  });

  test("stops where both fall by 30", () => {
    const garment = garmentOf(keeping, { block: falling(30) });
    expectCheck(garment, "hem-turn", { verdict: "stop", says: ["12.5°"], cure });
  });

  test("is sound where the one falls by what the other rises", () => {
    const fall = falling(18);
    const rise = { ...fall, back: { ...fall.back, hem: aPath("M273.5 572 L0 554") } };
    expectCheck(garmentOf(keeping, { block: rise }), "hem-turn", {
      verdict: "sound",
      says: ["0° off straight"],
      cure,
    });
  });
});

describe("the check of the wrist over the underarm seam", () => {
  const cure = "Make the wrist wider, or the sleeve narrower.";

  test("is sound on the worked example, 30.866°", () => {
    const { value, limit } = expectCheck(garmentOf(), "wrist-turn", {
      verdict: "sound",
      says: ["30.9° off straight", "the limit is 40°."],
      cure,
    });
    near(value, 30.866, 1e-3);
    expect(limit).toBe(40);
  });

  test("attends on a sleeve that is short for its width, and stops on one shorter still", () => {
    expectCheck(garmentOf({}, { measures: { armLength: 450 } }), "wrist-turn", {
      verdict: "attend",
      says: ["the limit is 40°."],
      cure,
    });
    expectCheck(garmentOf({}, { measures: { armLength: 330 } }), "wrist-turn", {
      verdict: "stop",
      says: ["64.4° off straight"],
      cure,
    });
  });
});

describe("the check of how steeply the raglans end", () => {
  const cure = "Draw the block's raglan with a flatter end, or keep the shaped side seams.";
  const ending = (front: number, back: number) =>
    garmentOf({}, { block: steepBlock({ front, back }) });

  test("is sound on the worked example and up to 30°", () => {
    const says = ["0.3° off level", "the limit is 30°."];
    expectCheck(garmentOf(), "side-seam-move", { verdict: "sound", says, cure });
    expectCheck(ending(30, 4), "side-seam-move", { verdict: "sound", says: ["30° off"], cure });
  });

  test("attends to 60° by the steeper of the two, up or down", () => {
    const check = expectCheck(ending(12, -44), "side-seam-move", {
      verdict: "attend",
      says: ["44° off level"],
      cure,
    });
    near(check.value, 44, 1e-9);
  });

  test("stops beyond", () => {
    expectCheck(ending(61, 0), "side-seam-move", { verdict: "stop", says: ["61° off"], cure });
  });

  test("is not there where the sides were kept", () => {
    expect(idsIn(garmentOf({ moveSideSeams: { on: false } }))).not.toContain("side-seam-move");
  });
});

import { describe, expect, test } from "vitest";
import { lengthOf } from "../../../src/geometry/length.ts";
import { pathOf } from "../../../src/geometry/path.ts";
import { solveLinear } from "../../../src/trace/algebra/linear.ts";
import { fitHomography, seen } from "../../../src/trace/photo/homography.ts";
import { joinPictures } from "../../../src/trace/photo/joinPictures.ts";
import { MARKER } from "../../../src/trace/photo/markerDesign.ts";
import { markerSheet } from "../../../src/trace/photo/markerSheet.ts";
import { reduced, soundSize, writeGrey } from "../../../src/trace/photo/picture.ts";
import { rectified, rectify, windowRound } from "../../../src/trace/photo/rectify.ts";
import { scaleOnly } from "../../../src/trace/photo/scaleOnly.ts";
import { PLANE } from "./planes.ts";

describe("a homography", () => {
  test("is found again from four pairs, to the last digits", () => {
    const truth = { a: 1.2, b: 0.1, c: 30, d: -0.2, e: 0.9, f: 12, g: 0.0004, h: -0.0002, i: 1 };
    const corners = [
      { x: 0, y: 0 },
      { x: 700, y: 0 },
      { x: 700, y: 900 },
      { x: 0, y: 900 },
    ];
    const fit = fitHomography(corners.map((from) => ({ from, to: seen(truth, from) })));
    for (const [key, value] of Object.entries(truth))
      expect(fit).toHaveProperty(key, expect.closeTo(value, 7));
  });

  test("is not fixed by four places of which three lie on one line", () => {
    const line = [0, 1, 2].map((i) => ({ from: { x: i, y: 0 }, to: { x: i, y: 0 } }));
    expect(fitHomography([...line, { from: { x: 0, y: 1 }, to: { x: 0, y: 1 } }])).toBeNull();
  });
});

test("a system with two equal rows has no answer", () => {
  expect(
    solveLinear(
      [
        [1, 2],
        [1, 2],
      ],
      [3, 4],
    ),
  ).toBeNull();
});

describe("a picture's size", () => {
  test.each([
    [4000, 3000],
    [8000, 6000],
  ])("of %i by %i is taken", (width, height) => {
    expect(soundSize(width, height)).toEqual({ found: true });
  });

  test("of 200 megapixels is refused with what to do", () => {
    const told = soundSize(16_000, 12_500);
    expect("fault" in told && told.fault.reason).toBe(
      "The picture has 200 megapixels; the limit is 120.",
    );
  });

  test("of a preview is refused", () => {
    expect(soundSize(160, 120)).toHaveProperty("fault");
  });

  test("is halved by means of four pixels", () => {
    const half = reduced({ grey: Uint8Array.from([0, 100, 100, 200]), width: 2, height: 2 }, 2);
    expect(half).toEqual({ grey: Uint8Array.from([100]), width: 1, height: 1 });
  });

  test("white, black and pure green are grey by the eye's weights", () => {
    const grey = new Uint8Array(3);
    writeGrey(Uint8ClampedArray.from([255, 255, 255, 255, 0, 0, 0, 255, 0, 255, 0, 255]), grey, 0);
    expect([...grey]).toEqual([255, 0, 149]);
  });
});

describe("a rectified picture", () => {
  const picture = { grey: new Uint8Array(3000 * 4000).fill(200), width: 3000, height: 4000 };
  const round = [
    { x: 1000, y: 1000 },
    { x: 2000, y: 1000 },
    { x: 1500, y: 2000 },
  ];
  const window = { ...windowRound(PLANE, round), step: 2, width: 200, height: 160 };

  test("is the same done at once and band by band, and tells how far it is", () => {
    const steps = rectified(picture, PLANE, window);
    const shares: number[] = [];
    let step = steps.next();
    while (!step.done) {
      shares.push(step.value);
      step = steps.next();
    }
    expect(shares).toEqual([64 / 160, 128 / 160, 1]);
    expect(step.value.grey).toEqual(rectify(picture, PLANE, window).grey);
    expect(step.value.grey.every((grey) => grey === 200)).toBe(true);
  });
});

describe("scale alone", () => {
  const card = (slant: number) => [
    { from: { x: 100, y: 100 }, to: { x: 956, y: 100 }, length: 85.6 },
    { from: { x: 100, y: 100 }, to: { x: 100, y: 100 + 539.8 * slant }, length: 53.98 },
  ];

  test("is taken from a card in a square picture, with the warning that a slant stays", () => {
    const told = scaleOnly({ width: 4000, height: 3000, lengths: card(1) });
    expect("found" in told && told.found.warning).toMatch(/A slant stays in it/);
    expect("found" in told && told.found.plane.toPicture.a).toBeCloseTo(10, 6);
  });

  test("is refused where the card itself shows a slant", () => {
    const told = scaleOnly({ width: 4000, height: 3000, lengths: card(0.98) });
    expect("fault" in told && told.fault.reason).toMatch(/scales 2.0 % apart/);
  });

  test("needs a known length", () => {
    expect(scaleOnly({ width: 4000, height: 3000, lengths: [] })).toHaveProperty("fault");
  });
});

describe("two pictures of one piece", () => {
  const first = [
    { name: "A", place: { x: 0, y: 0 } },
    { name: "B", place: { x: 600, y: 0 } },
  ];

  test("are joined by two marks that both show", () => {
    const second = [
      { name: "A", place: { x: 10, y: 10 } },
      { name: "B", place: { x: 10, y: 610 } },
    ];
    const told = joinPictures(first, second);
    if ("fault" in told) throw new Error(told.fault.reason);
    const { x, y } = told.found.moved({ x: 10, y: 310 });
    expect([x, y]).toEqual([expect.closeTo(300, 9), expect.closeTo(0, 9)]);
  });

  test("are refused where a mark was moved between them", () => {
    const second = [
      { name: "A", place: { x: 0, y: 0 } },
      { name: "B", place: { x: 612, y: 0 } },
    ];
    const told = joinPictures(first, second);
    expect("fault" in told && told.fault.reason).toMatch(/lie 6\smm apart when/u);
  });

  test("are refused where they share one mark", () => {
    expect(joinPictures(first, first.slice(1))).toHaveProperty("fault");
  });
});

test("a marker sheet's ring is 48 mm across, drawn within a thousandth of a millimetre", () => {
  const [ring] = markerSheet("A").fills;
  if (!ring) throw new Error("no ring");
  expect(lengthOf(pathOf(ring.path))).toBeCloseTo(2 * Math.PI * MARKER.ringOuter, 2);
  for (const { start } of ring.path) expect(Math.hypot(start.x, start.y)).toBeCloseTo(24, 9);
});

import { describe, test } from "vitest";
import { drawNecklines } from "../../src/drafting/block/neckline.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { EdgeName, Piece } from "../../src/drafting/piece.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { degrees } from "../../src/geometry/units.ts";
import { make } from "../../src/project/make.ts";
import { exampleBody } from "../drafting/bodies.ts";
import { near, nearPoint } from "../support/expectations.ts";
import {
  distanceTo,
  lengthOfData,
  polylineOf,
  samplesOf,
  stretchesOf,
} from "../support/independent/lines.ts";

/** Section 8 of the method, its first table: the block. The second stands in workedExample.test.ts. */
const LENGTH = 0.05;
const ANGLE = 0.05;

const { block } = make(exampleBody(), DEFAULT_CHOICES, null).garment;

const edgeOf = ({ edges }: Piece, wanted: EdgeName): Piece["edges"][number] => {
  const found = edges.find(({ name }) => name === wanted);
  if (!found) throw new Error(`There is no edge ${wanted}.`);
  return found;
};

/** A drawn edge follows a printed one within a tenth of a millimetre, both ways. */
const expectDrawn = (piece: Piece, name: EdgeName, printed: string): void => {
  const drawn = stretchesOf(toPathData(edgeOf(piece, name).path));
  const wanted = stretchesOf(printed);
  const [one, other] = [polylineOf(drawn, 0.5), polylineOf(wanted, 0.5)];
  for (const { spot } of samplesOf(drawn, 3)) near(distanceTo(other, spot), 0, 0.1);
  for (const { spot } of samplesOf(wanted, 3)) near(distanceTo(one, spot), 0, 0.1);
};

describe("the block", () => {
  const necklines = drawNecklines(372, (960 + 140) / 4);

  test("1–4: the neck point, and the depths at the fold", () => {
    // a0 = 62 and a = 92, so the neckline stands 30 outside the neck base.
    near(necklines.widened, 30, LENGTH);
    expectDrawn(block.back, "neckline", BACK_NECKLINE);
    expectDrawn(block.front, "neckline", FRONT_NECKLINE);
    nearPoint(startOf(edgeOf(block.back, "neckline").path), [0, 16]);
    nearPoint(startOf(edgeOf(block.front, "neckline").path), [0, 84.75]);
  });

  test("6: the raglan corners, 20.46 and 46.5 before the neck point", () => {
    nearPoint(necklines.backCorner, [79.1167, 3.6692]);
    nearPoint(necklines.frontCorner, [73.2743, 30.7953]);
    near(lengthOfData(WHOLE_BACK) - edgeOf(block.back, "neckline").length, 20.46, LENGTH);
    near(lengthOfData(WHOLE_FRONT) - edgeOf(block.front, "neckline").length, 46.5, LENGTH);
  });

  test("7–11: underarm, hem and side", () => {
    for (const half of [block.front, block.back]) {
      nearPoint(startOf(edgeOf(half, "side").path), [275, 247]);
      nearPoint(endOf(edgeOf(half, "side").path), [273.5, 572]);
      expectDrawn(half, "side", "M275 247 C274.5 355.3333 273.5 463.6667 273.5 572");
    }
  });

  test("12–13: the raglans, 302.3914 and 320.6045", () => {
    expectDrawn(block.front, "raglan", "M73.274 30.795 C151.148 103.374 204.033 246.672 275 247");
    expectDrawn(block.back, "raglan", "M79.117 3.669 C155.574 86.136 200.031 246.654 275 247");
    near(edgeOf(block.front, "raglan").length, 302.3914, LENGTH);
    near(edgeOf(block.back, "raglan").length, 320.6045, LENGTH);
  });

  test("14–20: the sleeve", () => {
    const { sleeve } = block;
    nearPoint(startOf(edgeOf(sleeve, "underarmFront").path), [207.5, 0]);
    nearPoint(endOf(edgeOf(sleeve, "underarmFront").path), [107.5, 409.9402]);
    nearPoint(startOf(edgeOf(sleeve, "raglanFront").path), [43.4615, -246.2109]);
    nearPoint(endOf(edgeOf(sleeve, "raglanBack").path), [-19.1231, -251.9087]);
    const { x, y } = endOf(edgeOf(sleeve, "underarmFront").path);
    near(degrees(Math.atan2(207.5 - x, y)), 13.7089, ANGLE);
    expectDrawn(
      sleeve,
      "neckline",
      "M-19.123 -251.909 C-4.476 -234.667 22.318 -238.159 43.461 -246.211",
    );
    expectDrawn(
      sleeve,
      "raglanFront",
      "M43.461 -246.211 C105.573 -159.690 132.769 -18.230 207.5 0",
    );
    near(edgeOf(sleeve, "neckline").length, 66.96, LENGTH);
    near(edgeOf(sleeve, "raglanFront").length, 302.3914, LENGTH);
    near(edgeOf(sleeve, "raglanBack").length, 320.6045, LENGTH);
    near(edgeOf(sleeve, "underarmFront").length, 421.961, LENGTH);
    near(edgeOf(sleeve, "underarmBack").length, 421.961, LENGTH);
  });
});

/** As step 5 prints the whole curves, up to the neck point. */
const WHOLE_BACK = "M0 16 C64.4 16 85.0428 6.3903 92 -11.7341";
const WHOLE_FRONT = "M0 84.75 C51.52 84.75 74.7116 33.3037 92 -11.7341";

/** Their first parts, cut at the raglan corners by de Casteljau's steps (method 1.3). */
const firstPart = (data: string, end: readonly [number, number]): string => {
  const [curve] = stretchesOf(data);
  if (curve?.length !== 4) throw new Error("A neckline is a curve.");
  const [p, q, r, e] = curve;
  const mix = (a: readonly [number, number], b: readonly [number, number], t: number) =>
    [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t] as const;
  // Where the curve is as far out as the corner.
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const t = (low + high) / 2;
    const at = mix(mix(mix(p, q, t), mix(q, r, t), t), mix(mix(q, r, t), mix(r, e, t), t), t);
    if (at[0] < end[0]) low = t;
    else high = t;
  }
  const [a, b] = [mix(p, q, low), mix(q, r, low)];
  const handles = [a, mix(a, b, low), end].map(([x, y]) => `${x} ${y}`).join(" ");
  return `M${p[0]} ${p[1]} C${handles}`;
};
const BACK_NECKLINE = firstPart(WHOLE_BACK, [79.1167, 3.6692]);
const FRONT_NECKLINE = firstPart(WHOLE_FRONT, [73.2743, 30.7953]);

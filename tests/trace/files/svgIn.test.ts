import { describe, expect, test } from "vitest";
import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, startOf } from "../../../src/geometry/path.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { readSvg } from "../../../src/trace/files/svgIn.ts";

const MM = `width="400mm" height="300mm" viewBox="0 0 400 300"`;
const svg = (inner: string, root = MM): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${root}>${inner}</svg>`;

const lines = (text: string) => {
  const told = readSvg(text);
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found.lines;
};
const only = (text: string): Path => {
  const [first, ...rest] = lines(text);
  if (!first || rest.length > 0) throw new Error(`${rest.length + 1} lines`);
  return first.path;
};
const length = (inner: string, root?: string): number => lengthOf(only(svg(inner, root)));
const reason = (text: string): string => {
  const told = readSvg(text);
  return "fault" in told ? told.fault.reason : "It was taken.";
};

describe("units and view boxes", () => {
  const LINE = `<path d="M0 0H100"/>`;
  test.each([
    ["mm, one to one", `width="400mm" height="300mm" viewBox="0 0 400 300"`, 100],
    ["cm", `width="40cm" height="30cm" viewBox="0 0 400 300"`, 100],
    ["inches, user units of a tenth", `width="10in" height="10in" viewBox="0 0 100 100"`, 254],
    ["pixels at 96 an inch, no view box", `width="400" height="300"`, (100 * 25.4) / 96],
    ["pixels named so", `width="400px" height="300px"`, (100 * 25.4) / 96],
    ["points", `width="400pt" height="300pt" viewBox="0 0 400 300"`, (100 * 25.4) / 72],
    ["a view box and no size", `viewBox="0 0 400 300"`, (100 * 25.4) / 96],
    [
      "a percentage for a size",
      `width="100%" height="100%" viewBox="0 0 400 300"`,
      (100 * 25.4) / 96,
    ],
    [
      "a frame too wide: the smaller scale counts",
      `width="800mm" height="300mm" viewBox="0 0 400 300"`,
      100,
    ],
    [
      "a frame too wide, stretched",
      `width="800mm" height="300mm" viewBox="0 0 400 300" preserveAspectRatio="none"`,
      200,
    ],
  ])("in %s", (_, root, wanted) => {
    expect(length(LINE, root)).toBeCloseTo(wanted, 9);
  });

  test("move the drawing as the view box says", () => {
    const path = only(svg(LINE, `width="100mm" height="100mm" viewBox="-10 -20 100 100"`));
    expect(startOf(path)).toEqual({ x: 10, y: 20 });
  });
});

describe("transforms", () => {
  test.each([
    ["translate(10,20)", 10, 20],
    ["translate(10) translate(0 20)", 10, 20],
    ["rotate(90)", 0, 0],
    ["rotate(90 50 0)", 50, -50],
    ["scale(2) translate(5 6)", 10, 12],
    ["matrix(1 0 0 1 7 8)", 7, 8],
    ["matrix(0 1 -1 0 7 8), translate(1 0)", 7, 9],
    ["skewX(45) translate(0 10)", 10, 10],
    ["skewY(45) translate(10 0)", 10, 10],
  ])("%s moves (0, 0) to (%d, %d)", (transform, x, y) => {
    const start = startOf(only(svg(`<path transform="${transform}" d="M0 0L100 0"/>`)));
    expect(start.x).toBeCloseTo(x, 9);
    expect(start.y).toBeCloseTo(y, 9);
  });

  test("of nested groups are taken in from the outside", () => {
    const inner = `<g transform="translate(100 0)"><g transform="scale(2)"><path transform="rotate(90)" d="M0 0h10"/></g></g>`;
    const path = only(svg(inner));
    expect(startOf(path).x).toBeCloseTo(100, 9);
    expect(endOf(path).y).toBeCloseTo(20, 9);
    expect(lengthOf(path)).toBeCloseTo(20, 9);
  });

  test("that cannot be read are told, not guessed", () => {
    expect(reason(svg(`<path id="p" transform="spin(9)" d="M0 0h9"/>`))).toMatch(
      /transform of the <path> “p” cannot be read/,
    );
  });

  test("of a nested svg and of a use are taken in", () => {
    expect(
      length(
        `<svg x="5" y="5" width="100" height="100" viewBox="0 0 50 50"><path d="M0 0h10"/></svg>`,
      ),
    ).toBeCloseTo(20, 9);
    const used = only(
      svg(
        `<defs><path id="p" d="M0 0h10"/></defs><use xlink:href="#p" x="30" transform="scale(2)"/>`,
      ),
    );
    expect(startOf(used).x).toBeCloseTo(60, 9);
    expect(lengthOf(used)).toBeCloseTo(20, 9);
  });
});

describe("path data", () => {
  test.each([
    ["relative marks", "m10 10 l30 0 0 40", 70],
    [
      "repeated marks and signs that run together",
      "M0 0L3-4 3,4.5.5-4",
      5 + 8.5 + Math.hypot(2.5, 8.5),
    ],
    ["h and v", "M0 0h30v40H0V0", 140],
    ["a closed run", "M0 0L30 0 30 40Z", 120],
    ["a second run after z from where the first began", "M5 5l30 0 0 40z", 120],
    ["exponents", "M0 0L1e2 0", 100],
  ])("with %s", (_, d, wanted) => {
    expect(length(`<path d="${d}"/>`)).toBeCloseTo(wanted, 9);
  });

  test("of a quadratic curve is a parabola: √5/2 + asinh(2)/4 for y = x²", () => {
    expect(length(`<path transform="scale(100)" d="M0 0Q.5 0 1 1"/>`)).toBeCloseTo(
      100 * (Math.sqrt(5) / 2 + Math.asinh(2) / 4),
      6,
    );
  });

  test("of smooth marks takes the mirrored handle", () => {
    const smooth = only(svg(`<path d="M0 0c0 10 10 10 10 0s10 -10 10 0q5 10 10 0t10 0"/>`));
    const whole = only(
      svg(`<path d="M0 0C0 10 10 10 10 0C10 -10 20 -10 20 0Q25 10 30 0Q35 -10 40 0"/>`),
    );
    expect(lengthOf(smooth)).toBeCloseTo(lengthOf(whole), 12);
  });

  test.each([
    ["a half circle", "M0 0A50 50 0 0 1 100 0", 50 * Math.PI],
    ["flags that run together", "M0 0a50 50 0 01100 0", 50 * Math.PI],
    ["a quarter", "M50 0A50 50 0 0 1 100 50", 25 * Math.PI],
    ["three quarters", "M50 0A50 50 0 1 0 100 50", 75 * Math.PI],
    ["radii too small, made larger", "M0 0A1 1 0 0 0 100 0", 50 * Math.PI],
    ["a radius of nought: straight", "M0 0A0 9 0 0 0 100 0", 100],
  ])("of %s has its length within 0.01 mm", (_, d, wanted) => {
    expect(Math.abs(length(`<path d="${d}"/>`) - wanted)).toBeLessThan(0.01);
  });

  test("of an arc lies within 0.001 mm of its circle, however it is scaled", () => {
    const path = only(svg(`<path transform="scale(40)" d="M0 0A5 5 0 0 1 10 0"/>`));
    for (const s of path) {
      for (let i = 0; i <= 32; i++) {
        const { x, y } = pointAt(s, i / 32);
        expect(Math.abs(Math.hypot(x - 200, y) - 200)).toBeLessThan(0.001);
      }
    }
  });

  test("of an ellipse turned by 30 degrees goes through its ends", () => {
    const path = only(svg(`<path d="M10 20A60 30 30 1 1 80 50"/>`));
    expect([startOf(path), endOf(path)]).toEqual([
      { x: 10, y: 20 },
      { x: 80, y: 50 },
    ]);
  });

  test.each([
    ["M0 0L", "cannot be read at"],
    ["M0 0X9 9", "cannot be read at “X”"],
    ["L0 0 9 9", "cannot be read at “L”"],
    ["M0 0L9 9 8", "cannot be read at"],
  ])("that is broken (%s) is told", (d, words) => {
    expect(reason(svg(`<path d="${d}"/>`))).toContain(words);
  });
});

describe("shapes", () => {
  test.each([
    [`<rect x="5" y="5" width="30" height="40"/>`, 140],
    [`<rect width="100" height="60" rx="10"/>`, 2 * 80 + 2 * 40 + 20 * Math.PI],
    [`<circle cx="9" cy="9" r="50"/>`, 100 * Math.PI],
    [`<line x1="0" y1="0" x2="30" y2="40"/>`, 50],
    [`<polyline points="0,0 30,0 30,40"/>`, 70],
    [`<polygon points="0 0 30 0 30 40"/>`, 120],
    [`<ellipse rx="50" ry="50"/>`, 100 * Math.PI],
  ])("%s has its length within 0.01 mm", (shape, wanted) => {
    expect(Math.abs(length(shape) - wanted)).toBeLessThan(0.01);
  });
});

describe("what is called what", () => {
  test("an id, a label, classes and the groups round it, inmost first", () => {
    const [line] = lines(
      svg(
        `<g id="front" xmlns:inkscape="i" inkscape:label="Front piece"><path id="p1" inkscape:label="raglan" class="sew own" d="M0 0h9"/></g>`,
      ),
    );
    expect(line?.names).toEqual(["p1", "raglan", "sew", "own", "front", "Front piece"]);
  });
});

describe("what is hidden is left out", () => {
  test.each([
    `<path display="none" d="M0 0h5"/>`,
    `<path style="fill:none;display: none" d="M0 0h5"/>`,
    `<g display="none"><path d="M0 0h5"/></g>`,
    `<g visibility="hidden"><path d="M0 0h5"/></g>`,
    `<style>.ghost { display:none }</style><path class="ghost" d="M0 0h5"/>`,
    `<defs><path d="M0 0h5"/></defs>`,
    `<clipPath><path d="M0 0h5"/></clipPath>`,
  ])("%s", (hidden) => {
    expect(length(`${hidden}<path d="M0 0h9"/>`)).toBe(9);
  });

  test("and a file that shows nothing is told", () => {
    expect(reason(svg(`<g display="none"><path d="M0 0h5"/></g>`))).toBe(
      "The file draws no line that is shown.",
    );
  });
});

describe("what is refused, each with one sentence", () => {
  test.each([
    ["a script", svg(`<script>alert(1)</script><path d="M0 0h9"/>`), /holds a <script>/],
    ["HTML inside", svg(`<foreignObject/><path d="M0 0h9"/>`), /holds a <foreignObject>/],
    ["an event handler", svg(`<path onclick="x()" d="M0 0h9"/>`), /event handler \(onclick\)/],
    [
      "a picture from elsewhere",
      svg(`<image href="https://example.org/a.png"/>`),
      /refers to something outside it \(href/,
    ],
    [
      "a use from elsewhere",
      svg(`<use xlink:href="other.svg#p"/>`),
      /refers to something outside it/,
    ],
    [
      "a fill from elsewhere",
      svg(`<path style="fill:url(http://x.example/p)" d="M0 0h9"/>`),
      /refers to something outside it \(in style\)/,
    ],
    [
      "a style sheet from elsewhere",
      svg(`<style>@import "a.css";</style><path d="M0 0h9"/>`),
      /style sheet refers/,
    ],
    [
      "a style sheet by instruction",
      `<?xml-stylesheet href="a.css"?>${svg(`<path d="M0 0h9"/>`)}`,
      /style sheet from elsewhere/,
    ],
    [
      "entities",
      `<!DOCTYPE svg [<!ENTITY a "b">]>${svg(`<path d="M0 0h9"/>`)}`,
      /declares entities/,
    ],
    ["an unknown entity", svg(`<path id="&lol;" d="M0 0h9"/>`), /no sound XML/],
    ["a tag not closed", `<svg><path d="M0 0h9">`, /no sound XML/],
    ["tags closed crosswise", `<svg><g><a></g></a></svg>`, /no sound XML/],
    ["another kind of file", `<html></html>`, /begins with <html>/],
    ["no file at all", "hello", /no sound XML/],
  ])("%s", (_, text, words) => {
    expect(reason(text)).toMatch(words);
  });

  test("a plain DOCTYPE of an old drawing program is no harm", () => {
    const doctype = `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">`;
    expect(
      lines(`<?xml version="1.0"?>${doctype}<!-- made -->${svg(`<path d="M0 0h9"/>`)}`),
    ).toHaveLength(1);
  });

  test("a million elements, in well under two seconds", () => {
    const began = performance.now();
    expect(reason(svg("<g/>".repeat(1_000_000)))).toMatch(/more than 100000 elements/);
    expect(performance.now() - began).toBeLessThan(2000);
  });

  test("a million parts in one path", () => {
    expect(reason(svg(`<path d="M0 0${"h1".repeat(300_000)}"/>`))).toMatch(
      /more than 200000 parts/,
    );
  });

  test("uses of uses that would draw without end", () => {
    const doubled = Array.from(
      { length: 30 },
      (_, i) => `<g id="g${i + 1}"><use href="#g${i}"/><use href="#g${i}"/></g>`,
    );
    const text = svg(`<g id="g0"><path d="M0 0h1"/></g>${doubled.join("")}<use href="#g30"/>`);
    const began = performance.now();
    expect(reason(text)).toMatch(/parts: it is no pattern/);
    expect(performance.now() - began).toBeLessThan(2000);
  });
});

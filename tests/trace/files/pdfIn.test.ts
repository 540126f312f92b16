import { jsPDF, type jsPDFOptions } from "jspdf";
import { describe, expect, test } from "vitest";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, startOf } from "../../../src/geometry/path.ts";
import { chainLines, layPages } from "../../../src/trace/files/joinPages.ts";
import { readPdf } from "../../../src/trace/files/pdfIn.ts";

type Drawing = (doc: jsPDF) => void;

type Lock = NonNullable<jsPDFOptions["encryption"]>;

const pdf = (draw: Drawing, encryption?: Lock): Uint8Array => {
  const doc = new jsPDF({
    unit: "mm",
    format: [297, 210],
    orientation: "portrait",
    ...(encryption ? { encryption } : {}),
  });
  draw(doc);
  return new Uint8Array(doc.output("arraybuffer"));
};

const pages = async (bytes: Uint8Array) => {
  const told = await readPdf(bytes);
  if ("fault" in told) throw new Error(told.fault.reason);
  return told.found;
};
const reason = async (bytes: Uint8Array): Promise<string> => {
  const told = await readPdf(bytes);
  return "fault" in told ? told.fault.reason : "It was taken.";
};

describe("the lines of a PDF", () => {
  test("are in mm from the upper left corner, y down, at true scale", async () => {
    const [page] = await pages(pdf((doc) => doc.line(20, 30, 120, 30)));
    expect(page?.width).toBeCloseTo(210, 3);
    expect(page?.height).toBeCloseTo(297, 3);
    const [line] = page?.lines ?? [];
    if (!line) throw new Error("no line");
    expect(startOf(line.path).x).toBeCloseTo(20, 3);
    expect(startOf(line.path).y).toBeCloseTo(30, 3);
    expect(lengthOf(line.path)).toBeCloseTo(100, 3);
  });

  test("keep their curves: a parabola has the length that calculus gives, within 0.05 mm", async () => {
    const bytes = pdf((doc) =>
      doc.lines([[100 / 3, 0, 200 / 3, 100 / 3, 100, 100]], 20, 20, [1, 1], "S"),
    );
    const [page] = await pages(bytes);
    const [line] = page?.lines ?? [];
    const truth = 100 * (Math.sqrt(5) / 2 + Math.asinh(2) / 4);
    expect(Math.abs((line ? lengthOf(line.path) : 0) - truth)).toBeLessThan(0.05);
  });

  test("know a closed run, and leave out what only cuts others off", async () => {
    const bytes = pdf((doc) => {
      doc.rect(10, 10, 60, 40);
      doc.rect(0, 0, 200, 200, null);
      doc.clip();
      doc.discardPath();
      doc.line(0, 100, 50, 100);
    });
    const [page] = await pages(bytes);
    expect(page?.lines.map(({ isClosed }) => isClosed)).toEqual([true, false]);
    expect(page?.lines.map(({ path }) => Math.round(lengthOf(path)))).toEqual([200, 50]);
  });

  test("on several pages are told apart", async () => {
    const found = await pages(
      pdf((doc) => {
        doc.line(0, 0, 10, 0);
        doc.addPage();
        doc.line(0, 0, 20, 0);
      }),
    );
    expect(found.map(({ page, lines }) => [page, lines.length])).toEqual([
      [1, 1],
      [2, 1],
    ]);
  });
});

describe("a PDF that cannot be used is told in one sentence", () => {
  test("with a password", async () => {
    const locked = pdf((doc) => doc.line(0, 0, 9, 9), {
      userPassword: "rib",
      ownerPassword: "wright",
      userPermissions: [],
    });
    expect(await reason(locked)).toMatch(/locked with a password/);
  });

  test("that is none", async () => {
    expect(await reason(new TextEncoder().encode("hello, this is no such file"))).toMatch(
      /no PDF that can be read/,
    );
  });

  test("cut off in its middle", async () => {
    const whole = pdf((doc) => doc.line(0, 0, 9, 9));
    expect(await reason(whole.slice(0, 300))).toMatch(/no PDF that can be read|draws no lines/);
  });

  test("with words alone, as a scan has", async () => {
    expect(await reason(pdf((doc) => doc.text("front", 20, 20)))).toMatch(/draws no lines/);
  });
});

describe("pages laid together", () => {
  test("give one drawing: what two pages draw is kept once, what they cut is put end to end", async () => {
    const found = await pages(
      pdf((doc) => {
        doc.line(100, 50, 200, 50);
        doc.line(150, 20, 150, 60);
        doc.addPage();
        doc.line(10, 50, 80, 50);
        doc.line(-40, 20, -40, 60);
      }),
    );
    const lines = layPages(found, [
      { page: 1, x: 0, y: 0 },
      { page: 2, x: 190, y: 0 },
    ]);
    expect(lines).toHaveLength(3);
    const chains = chainLines(lines.map(({ path }) => path));
    const [long] = chains;
    expect(chains).toHaveLength(2);
    expect(long && Math.abs(endOf(long).x - startOf(long).x)).toBeCloseTo(170, 2);
  });

  test("turn a line round where it runs the other way", () => {
    const [chain] = chainLines([
      [{ kind: "line", start: { x: 0, y: 0 }, end: { x: 5, y: 0 } }],
      [{ kind: "line", start: { x: 9, y: 0 }, end: { x: 5, y: 0.1 } }],
      [{ kind: "line", start: { x: -4, y: 0 }, end: { x: 0, y: 0 } }],
    ]);
    expect(chain && [startOf(chain).x, endOf(chain).x].sort((a, b) => a - b)).toEqual([-4, 9]);
  });
});

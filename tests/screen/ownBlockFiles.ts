import { jsPDF } from "jspdf";
import { joined, mapPath } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { drafted, halfRing, sleeveRing } from "../trace/edges/shapes.ts";

/** A file as a maker would choose it. */
export type Given = { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };

const svgFile = (name: string, inner: string, head = ""): Given => ({
  name,
  mimeType: "image/svg+xml",
  buffer: Buffer.from(
    `${head}<svg xmlns="http://www.w3.org/2000/svg" width="1700mm" height="1000mm" viewBox="-300 -100 1700 1000">${inner}</svg>`,
  ),
});

const moved = (ring: readonly Path[], by: number, taller: number): readonly Path[] =>
  ring.map((run) => mapPath(run, ({ x, y }) => ({ x: x + by, y: y * taller })));

const closed = (ring: readonly Path[]): string => {
  const [first, ...more] = ring;
  return first ? `${toPathData(joined(first, ...more))}Z` : "";
};

const outline = (ring: readonly Path[], by: number, taller = 1): string =>
  `<path d="${closed(moved(ring, by, taller))}"/>`;

const block = drafted();
const FRONT = halfRing(block.front);
const BACK = halfRing(block.back);
const SLEEVE = sleeveRing(block);

/** Three closed, unnamed outlines. */
export const PLAIN = svgFile(
  "plain.svg",
  outline(FRONT, 0) + outline(BACK, 350) + outline(SLEEVE, 950),
);

/** The same with a front that is 1.5 % too tall: its seams do not meet. */
export const UNEVEN = svgFile(
  "uneven.svg",
  outline(FRONT, 0, 1.015) + outline(BACK, 350) + outline(SLEEVE, 950),
);

/** Edge by edge, as open lines named by their ids; `swap` gives two of the front each other's name. */
export const namedEdges = (swap: readonly [string, string] | null = null): Given => {
  const named = (edge: string): string =>
    swap && edge === swap[0] ? swap[1] : swap && edge === swap[1] ? swap[0] : edge;
  const edges = (piece: string, list: Readonly<Record<string, Path>>, by: number): string =>
    Object.entries(list)
      .map(([edge, path]) => {
        const [run] = moved([path], by, 1);
        const id = piece === "front" ? named(edge) : edge;
        return run ? `<path id="${piece}.${id}" d="${toPathData(run)}"/>` : "";
      })
      .join("");
  return svgFile(
    "named.svg",
    edges("front", { ...block.front }, 0) +
      edges("back", { ...block.back }, 350) +
      edges("sleeve", { ...block.sleeve }, 950),
  );
};

/** A front whose outline is open by a hand's breadth and has no layer that names it. */
export const OPEN = svgFile(
  "open.svg",
  `<path d="${toPathData(joined(block.front.raglan, block.front.side))}"/>${outline(BACK, 350)}`,
);

/** Groups that name front and back the wrong way round. */
export const SWAPPED = svgFile(
  "swapped.svg",
  `<g id="back">${outline(FRONT, 0)}</g><g id="front">${outline(BACK, 350)}</g><g id="sleeve">${outline(SLEEVE, 950)}</g>`,
);

/** A front that crosses itself like a bow tie. */
export const CROSSING = svgFile(
  "crossing.svg",
  '<g id="front"><path d="M0 0L300 500H0L300 0Z"/></g>',
);

export const SCRIPT = svgFile("script.svg", `<script>alert(1)</script>${outline(FRONT, 0)}`);

export const BOMB = svgFile(
  "bomb.svg",
  "<text>&lol3;</text>",
  '<!DOCTYPE svg [<!ENTITY lol "lol"><!ENTITY lol2 "&lol;&lol;"><!ENTITY lol3 "&lol2;&lol2;">]>',
);

export const millionNodes = (): Given => svgFile("million.svg", "<g/>".repeat(1_000_000));

const pdf = (name: string, doc: jsPDF): Given => ({
  name,
  mimeType: "application/pdf",
  buffer: Buffer.from(doc.output("arraybuffer")),
});

export const lockedPdf = (): Given => {
  const doc = new jsPDF({
    unit: "mm",
    encryption: { userPassword: "rib", ownerPassword: "wright", userPermissions: [] },
  });
  doc.line(10, 10, 100, 100);
  return pdf("locked.pdf", doc);
};

export const NO_PDF: Given = {
  name: "broken.pdf",
  mimeType: "application/pdf",
  buffer: Buffer.from("this is no such file"),
};

/** Two pages that carry no marks: a line cut at their seam, 170 mm in all. */
export const twoPages = (): Given => {
  const doc = new jsPDF({ unit: "mm", format: "a4" });
  doc.line(100, 50, 200, 50);
  doc.line(150, 20, 200, 90);
  doc.addPage();
  doc.line(10, 50, 80, 50);
  doc.line(10, 90, 60, 120);
  return pdf("pages.pdf", doc);
};

/** A stitch by its number in ISO 4915, and where what is said of it comes from. */
type Stitch = { readonly type: number; readonly source: string };

/** Numbers follow ISO 4915:1991, with which ASTM D6193 agrees (titles seen). */
export const STITCHES = {
  lockstitch: {
    type: 301,
    source:
      "Indian Agricultural Statistics Research Institute, Stitch classes; Choudhary, abstract",
  },
  zigzag: { type: 304, source: "ISO 4915, from memory" },
  overedge: {
    type: 514,
    source: "Indian Agricultural Statistics Research Institute, Stitch classes",
  },
  covering: { type: 602, source: "ISO 4915, from memory" },
} as const satisfies Record<string, Stitch>;

/** Settings to begin with. Common practice, no source; the maker's test on a scrap goes before them. */
export const SETTINGS = {
  /** Zigzag for a seam in knits. mm. */
  zigzagWidth: 0.5,
  zigzagLength: 2.5,
  /** Small stitches: 14 to 16 to the inch, for a test seam on double cloth (Petersen 1965). mm. */
  stayLength: 1.7,
  /** Overedge stitch, from stitch to stitch. mm. */
  overedgeLength: 2.5,
  /** Topstitching beside a band's seam, on the body side. mm. */
  topstitch: 3,
  /** How far from the V's point its stay stitches reach, to each side. mm. */
  stayed: 25,
  /** The snip at the V ends this far from the stitches (method 3.5). mm. */
  snipShort: 1,
  /** Needles for fleece and rib, NM: hundredths of a millimetre. */
  needle: 90,
  needleLeast: 80,
  /** Stitches straight across the V's point. */
  across: 2,
} as const;

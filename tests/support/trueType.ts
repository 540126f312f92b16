/**
 * Advance widths read from a TrueType file by its own tables (head, hhea, hmtx and a cmap of format
 * 4, as in the OpenType specification; from memory), in thousandths of the letter size. 0: no glyph.
 */
export const trueTypeWidths = (font: Uint8Array): ((letter: string) => number) => {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const table = (tag: string): number => {
    for (let i = 0; i < view.getUint16(4); i++) {
      const entry = 12 + 16 * i;
      const name = String.fromCharCode(...font.subarray(entry, entry + 4));
      if (name === tag) return view.getUint32(entry + 8);
    }
    throw new Error(`The font has no table ${tag}.`);
  };
  const unitsPerEm = view.getUint16(table("head") + 18);
  const metrics = view.getUint16(table("hhea") + 34);
  const hmtx = table("hmtx");
  const glyphOf = glyphFinder(view, table("cmap"));
  return (letter) => {
    const glyph = glyphOf(letter.charCodeAt(0));
    if (glyph === 0) return 0;
    return (view.getUint16(hmtx + 4 * Math.min(glyph, metrics - 1)) * 1000) / unitsPerEm;
  };
};

/** The glyph of a character by a cmap of format 4: runs of characters, each with its shift. */
const glyphFinder = (view: DataView, cmap: number): ((code: number) => number) => {
  const offsets = Array.from({ length: view.getUint16(cmap + 2) }, (_, i) =>
    view.getUint32(cmap + 4 + 8 * i + 4),
  );
  const sub = offsets.map((at) => cmap + at).find((at) => view.getUint16(at) === 4);
  if (sub === undefined) throw new Error("The font has no character map of format 4.");
  const size = view.getUint16(sub + 6);
  const [ends, starts] = [sub + 14, sub + 16 + size];
  return (code) => {
    for (let i = 0; i < size; i += 2) {
      if (code > view.getUint16(ends + i)) continue;
      if (code < view.getUint16(starts + i)) return 0;
      const shift = view.getUint16(starts + size + i);
      const range = starts + 2 * size + i;
      const offset = view.getUint16(range);
      if (offset === 0) return (code + shift) & 0xffff;
      return view.getUint16(range + offset + 2 * (code - view.getUint16(starts + i)));
    }
    return 0;
  };
};

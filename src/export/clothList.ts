import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { type ClothNeeded, clothNeeded, type Needed } from "../lay/clothNeeded.ts";
import type { Sewn } from "../lay/cutList.ts";
import { GAP } from "../lay/data/clothWidths.ts";
import { heading, hung, type Part, paragraph, space, stacked } from "./stack.ts";

const HEAD: Mm = 3.8;
const SIZE: Mm = 2.9;
const SMALL: Mm = 2.5;

const lengthAt = (needed: Needed): string => {
  const wide = asMm(needed.width);
  return needed.kind === "fits" ? `${asMm(needed.buy)} of ${wide}` : `none of ${wide}, too narrow`;
};

type Cloth = ClothNeeded["body"];

/** "Rib: 320 mm of 700 mm, 210 mm of 1000 mm"; nothing where the cloth cannot be laid so. */
const line = (name: string, cloth: Cloth): readonly string[] =>
  cloth.length === 0 ? [] : [`${name}: ${cloth.map(lengthAt).join("; ")}.`];

/** Cloth that the pieces are enlarged for would shrink twice over if it were washed first. */
const rowsWords = (isEnlarged: boolean): string => {
  const rows = `Pieces lie in plain rows, ${GAP}\u00a0mm apart, grain along the cloth, bands across the rib; for one garment`;
  const own = "Lay your own pieces out before you cut.";
  return isEnlarged
    ? `${rows}. The pieces are enlarged for what the cloth shrinks: do not wash the body cloth before it is cut. Wash the rib. ${own}`
    : `${rows}, cloth and rib washed first. ${own}`;
};

/** How much body cloth and rib to buy at common widths, and on what that rests. */
export const clothList = (garment: Sewn, width: Mm): Part => {
  const { body, rib, assumed } = clothNeeded(garment);
  const laid = (way: "opened" | "folded"): Cloth => body.filter((one) => one.laid === way);
  const lines = [
    ...line("Body cloth, opened out", laid("opened")),
    ...line("Body cloth, folded along its length", laid("folded")),
    ...line("Rib, opened out", rib),
  ];
  const isEnlarged = assumed.some(({ id }) => id === "enlarged");
  return stacked(
    heading("Cloth to buy: length of each width", HEAD),
    ...lines.map((text) => hung("–", text, SIZE, width)),
    space(0.6),
    paragraph(rowsWords(isEnlarged), SMALL, width),
    space(3),
  );
};

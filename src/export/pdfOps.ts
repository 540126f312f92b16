import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_KINDS, LINE_STYLES } from "./data/lineStyles.ts";
import type { PageArt, Run, Shape } from "./pageArt.ts";
import type { Stroke } from "./pieceLines.ts";
import { cosSin } from "./placing.ts";
import { type Word, widthOf } from "./word.ts";

/** The language of PDF page contents (ISO 32000-1, 8 and 9; from memory), in mm with y down. */

/** Text as the codes of the print font. */
export type Encode = (text: string) => string;

/** What stands behind the whole number for every thousandth, end noughts left out. */
const THOUSANDTHS: readonly string[] = Array.from({ length: 1000 }, (_, i) =>
  i === 0 ? "" : `.${String(i).padStart(3, "0").replace(/0+$/, "")}`,
);

/** A thousandth of a millimetre: finer than any printer, short to write; some thousands a file. */
export const num = (value: number): string => {
  const units = Math.round(value * 1000);
  const size = Math.abs(units);
  const whole = Math.floor(size / 1000);
  return `${units < 0 ? "-" : ""}${whole}${THOUSANDTHS[size - whole * 1000] ?? ""}`;
};

const at = ({ x, y }: Point): string => `${num(x)} ${num(y)}`;

const pathOps = (path: Path, closed: boolean): string => {
  const steps = path.map((s) =>
    s.kind === "line" ? `${at(s.end)} l` : `${at(s.startHandle)} ${at(s.endHandle)} ${at(s.end)} c`,
  );
  return [`${at(path[0].start)} m`, ...steps, ...(closed ? ["h"] : [])].join("\n");
};

const pen = (width: Mm, dash: readonly Mm[]): string =>
  `${num(width)} w [${dash.map(num).join(" ")}] 0 d`;

/** Lines all drawn alike, whatever their kinds. */
export const alikeOps = (
  strokes: readonly Stroke[],
  { width, dash }: { readonly width: Mm; readonly dash: readonly Mm[] },
): string =>
  [pen(width, dash), ...strokes.map(({ path, closed }) => pathOps(path, closed)), "S"].join("\n");

/** The lines of a piece, kind by kind, each with its width and dash. */
export const strokeOps = (strokes: readonly Stroke[]): string =>
  LINE_KINDS.flatMap((kind) => {
    const same = strokes.filter((stroke) => stroke.kind === kind);
    if (same.length === 0) return [];
    const { width, dash } = LINE_STYLES[kind];
    return [alikeOps(same, { width, dash })];
  }).join("\n");

const runOps = ({ points, closed }: Run): string => {
  const steps = points.map((point, i) => `${at(point)} ${i === 0 ? "m" : "l"}`);
  return [...steps, ...(closed ? ["h"] : [])].join("\n");
};

const shapeOps = ({ runs, width, dash, fill }: Shape): string => {
  if (runs.length === 0) return "";
  const drawn = runs.map(runOps).join("\n");
  const line = width > 0 ? `${pen(width, dash)}\n` : "";
  if (fill === null) return `${line}${drawn}\nS`;
  return `${num(fill)} g\n${line}${drawn}\n${width > 0 ? "B" : "f"}\n0 g`;
};

/** How much a strong letter is fattened, as a share of its size: the outline is drawn as well. */
const STRONG = 0.034;

/** Letters stand upright in a frame whose y points down, so their own frame is turned over. */
export const wordOps = (word: Word, encode: Encode): string => {
  const { text, x, y, size, turn, from, strong } = word;
  const [cos, sin] = cosSin(turn);
  const back = from === "middle" ? widthOf(text, size) / 2 : 0;
  const [left, foot] = [x - back * cos, y - back * sin];
  const frame = `${num(cos)} ${num(sin)} ${num(sin)} ${num(-cos)} ${num(left)} ${num(foot)} Tm`;
  const shown = `/F ${num(size)} Tf ${frame} <${encode(text)}> Tj`;
  return strong ? `BT 2 Tr ${num(STRONG * size)} w [] 0 d ${shown} 0 Tr ET` : `BT ${shown} ET`;
};

export const artOps = ({ shapes, words }: PageArt, encode: Encode): string =>
  [...shapes.map(shapeOps), ...words.map((word) => wordOps(word, encode))].join("\n");

/** `ops` drawn with their origin moved. */
export const movedOps = (ops: string, { x, y }: Point): string =>
  `q 1 0 0 1 ${num(x)} ${num(y)} cm\n${ops}\nQ`;

/** `ops` drawn so much larger, along and down. The whole fineness of the figures is needed here. */
export const scaledOps = (ops: string, x: number, y: number): string =>
  `q ${x.toFixed(8)} 0 0 ${y.toFixed(8)} 0 0 cm\n${ops}\nQ`;

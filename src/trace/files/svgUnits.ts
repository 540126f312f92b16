import { MM_PER_CM, MM_PER_INCH, type Mm } from "../../geometry/units.ts";
import { type Affine, UNMOVED } from "./affine.ts";
import type { Element } from "./xml.ts";

/** Millimetres a unit; a pixel is a 96th of an inch (CSS Values 3, 5.2; SVG 1.1 leaves it open). */
const MM_PER: Readonly<Record<string, Mm>> = {
  "": MM_PER_INCH / 96,
  px: MM_PER_INCH / 96,
  pt: MM_PER_INCH / 72,
  pc: MM_PER_INCH / 6,
  in: MM_PER_INCH,
  cm: MM_PER_CM,
  mm: 1,
  q: 0.25,
};

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/iu;

/** A length with its unit in mm; null where it is a percentage or cannot be read. */
const lengthInMm = (text: string | undefined): Mm | null => {
  const match = LENGTH.exec(text ?? "");
  const per = MM_PER[(match?.[2] ?? "%").toLowerCase()];
  return match && per !== undefined ? Number(match[1]) * per : null;
};

/** A number of user units, as shapes have it: a bare number or one with a unit; 0 where none. */
export const userLength = (text: string | undefined): number =>
  (lengthInMm(text) ?? 0) / (MM_PER[""] ?? 1);

const numbersIn = (text: string | undefined): readonly number[] =>
  (text ?? "")
    .split(/[\s,]+/u)
    .filter((word) => word !== "")
    .map(Number);

type Size = { readonly width: Mm; readonly height: Mm };

/** How a view box is fitted into its frame: by preserveAspectRatio, in the middle by default. */
const fitted = (box: readonly number[], size: Size, ratio: string): Affine => {
  const [x = 0, y = 0, w = 1, h = 1] = box;
  const [sx, sy] = [size.width / w, size.height / h];
  if (/\bnone\b/u.test(ratio)) return { a: sx, b: 0, c: 0, d: sy, e: -x * sx, f: -y * sy };
  const by = /\bslice\b/u.test(ratio) ? Math.max(sx, sy) : Math.min(sx, sy);
  const share = (axis: string): number => {
    if (new RegExp(`${axis}Min`, "u").test(ratio)) return 0;
    return new RegExp(`${axis}Max`, "u").test(ratio) ? 1 : 0.5;
  };
  return {
    a: by,
    b: 0,
    c: 0,
    d: by,
    e: (size.width - w * by) * share("x") - x * by,
    f: (size.height - h * by) * share("Y") - y * by,
  };
};

/** A view box of four numbers, the last two above nought; null where there is none. */
const boxOf = (element: Element): readonly number[] | null => {
  const box = numbersIn(element.attributes.get("viewBox"));
  const sound =
    box.length === 4 && box.every(Number.isFinite) && (box[2] ?? 0) > 0 && (box[3] ?? 0) > 0;
  return sound ? box : null;
};

/** From the user units inside the outermost svg to mm. */
export const rootTransform = (root: Element): Affine => {
  const px = MM_PER[""] ?? 1;
  const box = boxOf(root);
  const width = lengthInMm(root.attributes.get("width"));
  const height = lengthInMm(root.attributes.get("height"));
  const scaled: Affine = { ...UNMOVED, a: px, d: px };
  if (!box) return scaled;
  const [, , w = 1, h = 1] = box;
  if (width === null && height === null) return fitted(box, { width: w * px, height: h * px }, "");
  const size = {
    width: width ?? ((height ?? 1) * w) / h,
    height: height ?? ((width ?? 1) * h) / w,
  };
  return fitted(box, size, root.attributes.get("preserveAspectRatio") ?? "");
};

/** From the user units inside a nested svg to those round it. */
export const nestedTransform = (element: Element): Affine => {
  const of = (name: string): number => userLength(element.attributes.get(name));
  const box = boxOf(element);
  const [width, height] = [of("width"), of("height")];
  const inside =
    box && width > 0 && height > 0
      ? fitted(box, { width, height }, element.attributes.get("preserveAspectRatio") ?? "")
      : UNMOVED;
  return { ...inside, e: inside.e + of("x"), f: inside.f + of("y") };
};

import { mapSegment } from "../../geometry/curve.ts";
import { pathOf } from "../../geometry/path.ts";
import { faulty, found, type Told } from "../told.ts";
import { type Affine, mostGrowth, movedBy, readTransform, UNMOVED, within } from "./affine.ts";
import { MOST_SEGMENTS, type ReadDrawing, type ReadLine } from "./drawing.ts";
import { linesOfShape } from "./svgShapes.ts";
import { nestedTransform, rootTransform, userLength } from "./svgUnits.ts";
import { type Element, MOST_NODES, readXml } from "./xml.ts";

/** Curves that must be drawn anew as cubics stray by no more than this, mm. */
const DRAWN_WITHIN = 0.0005;

const NEVER_READ = "Save it as plain SVG: paths only, nothing that runs or is fetched.";

const refused = (field: string, value: string, reason: string): Told<never> =>
  faulty(field, value.slice(0, 40), reason, NEVER_READ);

/** An attribute that would run or fetch something, as a fault. */
const unsafeAttribute = (element: Element, name: string, value: string): Told<never> | null => {
  if (/^on/iu.test(name)) {
    return refused(
      name,
      value,
      `The file has an event handler (${name}), which could run a program; it is not opened.`,
    );
  }
  const isReference = /(?:^|:)(?:href|src)$/u.test(name);
  const isPicture = element.name === "image" && /^data:image\/(?:png|jpeg);/u.test(value);
  if (isReference && !/^\s*#/u.test(value) && !isPicture && element.name !== "a") {
    return refused(
      name,
      value,
      `The file refers to something outside it (${name} of a <${element.name}>); nothing outside is read.`,
    );
  }
  return reachesOut(value) && name !== ""
    ? refused(
        name,
        value,
        `The file refers to something outside it (in ${name}); nothing outside is read.`,
      )
    : null;
};

/** Something that would run or be fetched, as a fault. */
const unsafe = (element: Element): Told<never> | null => {
  const { name, text } = element;
  if (name === "script" || name === "foreignObject") {
    return refused(
      name,
      `<${name}>`,
      `The file holds a <${name}>; a drawing needs none, and it is not opened.`,
    );
  }
  for (const [attribute, value] of element.attributes) {
    const fault = unsafeAttribute(element, attribute, value);
    if (fault) return fault;
  }
  const isSound = name !== "style" || !(reachesOut(text) || /@import/iu.test(text));
  return isSound
    ? null
    : refused(
        "style",
        text,
        "The file's style sheet refers to something outside it; nothing outside is read.",
      );
};

/** A url( that does not begin with #, or a script in a reference. */
const reachesOut = (text: string): boolean =>
  /url\(\s*["']?\s*(?!#)[^)\s"']/iu.test(text) || /^\s*javascript:/iu.test(text);

const allSafe = (element: Element): Told<never> | null => {
  const waiting = [element];
  for (;;) {
    const next = waiting.pop();
    if (!next) return null;
    const fault = unsafe(next);
    if (fault) return fault;
    for (const child of next.children) waiting.push(child);
  }
};

/** Classes that a style sheet of the file hides. */
const hiddenClasses = (element: Element): ReadonlySet<string> => {
  const hidden = new Set<string>();
  const walk = (at: Element): void => {
    if (at.name === "style") {
      for (const [, name, body] of at.text.matchAll(/\.([\w-]+)\s*\{([^}]*)\}/gu)) {
        if (name !== undefined && /display\s*:\s*none|visibility\s*:\s*hidden/u.test(body ?? ""))
          hidden.add(name);
      }
    }
    for (const child of at.children) walk(child);
  };
  walk(element);
  return hidden;
};

/** Drawn nowhere by themselves. */
const NOT_DRAWN = new Set([
  "defs",
  "symbol",
  "clipPath",
  "mask",
  "marker",
  "pattern",
  "metadata",
  "title",
  "desc",
  "text",
  "image",
  "style",
]);
const GROUPS = new Set(["svg", "g", "a", "switch"]);

type Walk = {
  readonly byId: ReadonlyMap<string, Element>;
  readonly hidden: ReadonlySet<string>;
  readonly lines: ReadLine[];
  visited: number;
  segments: number;
  fault: Told<never> | null;
};

const classesOf = (element: Element): readonly string[] =>
  (element.attributes.get("class") ?? "").split(/\s+/u).filter((word) => word !== "");

const isHidden = (element: Element, { hidden }: Walk): boolean => {
  const style = element.attributes.get("style") ?? "";
  return (
    element.attributes.get("display") === "none" ||
    element.attributes.get("visibility") === "hidden" ||
    /display\s*:\s*none|visibility\s*:\s*hidden/u.test(style) ||
    classesOf(element).some((name) => hidden.has(name))
  );
};

const namesOf = (element: Element): readonly string[] => {
  const of = (name: string): readonly string[] => {
    const value = element.attributes.get(name);
    return value === undefined || value === "" ? [] : [value];
  };
  return [
    ...of("id"),
    ...of("inkscape:label"),
    ...of("data-name"),
    ...of("data-edge"),
    ...classesOf(element),
  ];
};

const unreadable = (element: Element, what: string, text: string): Told<never> => {
  const name = element.attributes.get("id");
  return faulty(
    name ?? element.name,
    text,
    `The ${what} of the <${element.name}>${name === undefined ? "" : ` “${name}”`} cannot be read at “${text}”.`,
    "Save it again from your drawing program as plain SVG.",
  );
};

const tooMuch = (walk: Walk): Told<never> =>
  faulty(
    "drawing",
    `${walk.segments} parts`,
    `The drawing has more than ${MOST_SEGMENTS} parts: it is no pattern.`,
    "Save only the pieces of the block; a picture turned into lines is read as a photo instead.",
  );

const takeShape = (element: Element, to: Affine, names: readonly string[], walk: Walk): void => {
  const read = linesOfShape(element, DRAWN_WITHIN / Math.max(1e-9, mostGrowth(to)));
  if (!read) return;
  if ("unread" in read) {
    walk.fault = unreadable(element, "line", read.unread);
    return;
  }
  for (const { segments, isClosed } of read.runs) {
    walk.segments += segments.length;
    const path = pathOf(segments.map((s) => mapSegment(s, (p) => movedBy(to, p))));
    const [first, last] = [segments[0], segments[segments.length - 1]];
    const meets = first && last && first.start.x === last.end.x && first.start.y === last.end.y;
    walk.lines.push({ names, path, isClosed: isClosed || Boolean(meets) });
  }
  if (walk.segments > MOST_SEGMENTS) walk.fault = tooMuch(walk);
};

/** How deep uses may refer to uses. */
const DEEPEST_USE = 16;

type Here = { readonly to: Affine; readonly names: readonly string[]; readonly uses: number };

const takeUse = (element: Element, here: Here, walk: Walk): void => {
  const href = element.attributes.get("href") ?? element.attributes.get("xlink:href") ?? "";
  const target = walk.byId.get(href.trim().slice(1));
  if (!target || here.uses >= DEEPEST_USE) return;
  const of = (name: string): number => userLength(element.attributes.get(name));
  const to = within(here.to, { ...UNMOVED, e: of("x"), f: of("y") });
  const next = { to, names: here.names, uses: here.uses + 1 };
  if (target.name === "symbol") takeChildren(target, next, walk);
  else take(target, next, walk);
};

const takeChildren = (element: Element, here: Here, walk: Walk): void => {
  for (const child of element.children) if (!walk.fault) take(child, here, walk);
};

/** An element and all in it drawn, where it is shown. */
const take = (element: Element, here: Here, walk: Walk): void => {
  walk.visited++;
  if (walk.visited > MOST_NODES) walk.fault = tooMuch(walk);
  if (walk.fault || NOT_DRAWN.has(element.name) || isHidden(element, walk)) return;
  const own = readTransform(element.attributes.get("transform") ?? "");
  if (!own) {
    walk.fault = unreadable(
      element,
      "transform",
      (element.attributes.get("transform") ?? "").slice(0, 40),
    );
    return;
  }
  const names = [...namesOf(element), ...here.names];
  const to = within(here.to, own);
  if (element.name === "use") takeUse(element, { ...here, to, names }, walk);
  else if (GROUPS.has(element.name)) {
    const inside = element.name === "svg" ? within(to, nestedTransform(element)) : to;
    takeChildren(element, { ...here, to: inside, names }, walk);
  } else takeShape(element, to, names, walk);
};

const idsOf = (root: Element): ReadonlyMap<string, Element> => {
  const ids = new Map<string, Element>();
  const walk = (at: Element): void => {
    const id = at.attributes.get("id");
    if (id !== undefined && !ids.has(id)) ids.set(id, at);
    for (const child of at.children) walk(child);
  };
  walk(root);
  return ids;
};

const noLines: Told<never> = faulty(
  "drawing",
  "no lines",
  "The file draws no line that is shown.",
  "Show the layers with the block's pieces, and save them as paths.",
);

/**
 * The lines of an SVG file in mm, with what each is called. Units, view box, nested groups and all
 * transforms are taken in; arcs and quadratic curves become cubics within 0.0005 mm; what is hidden
 * is left out. Refused with one sentence: scripts, event handlers, anything outside the file,
 * entities, more than 100,000 elements or 200,000 parts.
 */
export const readSvg = (text: string): Told<ReadDrawing> => {
  const xml = readXml(text);
  if ("fault" in xml) return xml;
  const root = xml.found;
  if (root.name !== "svg") {
    return faulty(
      "file",
      `<${root.name}>`,
      `The file begins with <${root.name}>, not with <svg>.`,
      "Choose an SVG file.",
    );
  }
  const fault = allSafe(root);
  if (fault) return fault;
  const walk: Walk = {
    byId: idsOf(root),
    hidden: hiddenClasses(root),
    lines: [],
    visited: 0,
    segments: 0,
    fault: null,
  };
  takeChildren(root, { to: rootTransform(root), names: [], uses: 0 }, walk);
  if (walk.fault) return walk.fault;
  return walk.lines.length > 0 ? found({ lines: walk.lines }) : noLines;
};

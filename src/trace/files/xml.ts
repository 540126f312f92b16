import { faulty, found, type Told } from "../told.ts";

/** An element of an XML file; text is kept only where it may matter (styles). */
export type Element = {
  /** Without its prefix. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly Element[];
  readonly text: string;
};

/** More elements than this are no pattern. Ours: a whole garment has some hundred. */
export const MOST_NODES = 100_000;
const DEEPEST = 256;
/** Larger files are not read, in characters. */
const LONGEST = 30_000_000;

type Open = {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: Element[];
  text: string;
};

const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
};

const refused = (what: string, why: string, cure: string) => faulty("file", what, why, cure);

const broken = (why: string, at: number) =>
  refused(
    `at character ${at}`,
    `The file is no sound XML: ${why} at character ${at}.`,
    "Save it again from your drawing program as plain SVG.",
  );

/** Text with its character references put in; null where one is not of XML's own five. */
const decoded = (text: string): string | null => {
  if (!text.includes("&")) return text;
  let sound = true;
  const result = text.replace(/&([^;&\s]{0,12});?/gu, (whole, name: string) => {
    const code = /^#(?:x([0-9a-f]+)|(\d+))$/iu.exec(name);
    const number = code ? Number.parseInt(code[1] ?? code[2] ?? "", code[1] ? 16 : 10) : Number.NaN;
    if (number > 0 && number <= 0x10ffff) return String.fromCodePoint(number);
    const known = NAMED[name];
    if (known === undefined || !whole.endsWith(";")) sound = false;
    return known ?? "";
  });
  return sound ? result : null;
};

const local = (name: string): string => name.slice(name.indexOf(":") + 1);

const TAG = /^([A-Za-z_][\w.:-]*)/u;
const ATTRIBUTE = /\s+([A-Za-z_][\w.:-]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/gy;

/** The attributes in a tag's text after its name; null where they are not sound. */
const attributesOf = (text: string, from: number): ReadonlyMap<string, string> | null => {
  const attributes = new Map<string, string>();
  ATTRIBUTE.lastIndex = from;
  let end = from;
  for (;;) {
    const match = ATTRIBUTE.exec(text);
    if (!match) break;
    end = ATTRIBUTE.lastIndex;
    const value = decoded(match[2] ?? match[3] ?? "");
    const name = match[1] ?? "";
    if (value === null || attributes.has(name)) return null;
    attributes.set(name, value);
  }
  return text.slice(end).trim() === "" ? attributes : null;
};

/** The end of a tag that starts at `from`: the next > outside quotation marks; -1 where none. */
const tagEnd = (text: string, from: number): number => {
  let quote = 0;
  for (let i = from; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (quote !== 0) {
      if (c === quote) quote = 0;
    } else if (c === 34 || c === 39) quote = c;
    else if (c === 62) return i;
  }
  return -1;
};

/** What stands at a `<` that opens no element: where it ends, or why it is refused. */
const aside = (
  text: string,
  at: number,
): Told<{ readonly end: number; readonly text: string }> | null => {
  const until = (
    mark: string,
    skip: number,
  ): Told<{ readonly end: number; readonly text: string }> => {
    const end = text.indexOf(mark, at + skip);
    if (end < 0) return broken(`what begins with ${text.slice(at, at + skip)} has no end`, at);
    return found({ end: end + mark.length, text: text.slice(at + skip, end) });
  };
  if (text.startsWith("<!--", at)) {
    const comment = until("-->", 4);
    return "found" in comment ? found({ ...comment.found, text: "" }) : comment;
  }
  if (text.startsWith("<![CDATA[", at)) return until("]]>", 9);
  if (text.startsWith("<?", at)) {
    if (text.startsWith("<?xml-stylesheet", at)) {
      return refused(
        "xml-stylesheet",
        "The file asks for a style sheet from elsewhere; nothing outside the file is read.",
        "Save it as plain SVG, with its styles inside.",
      );
    }
    const instruction = until("?>", 2);
    return "found" in instruction ? found({ ...instruction.found, text: "" }) : instruction;
  }
  if (text.startsWith("<!", at)) return declared(text, at);
  return null;
};

/** A plain DOCTYPE, as old drawing programs write it, is passed over; one with entities never. */
const declared = (
  text: string,
  at: number,
): Told<{ readonly end: number; readonly text: string }> => {
  const end = tagEnd(text, at);
  const inner = text.slice(at, end < 0 ? at + 2000 : end);
  if (end >= 0 && !inner.includes("[") && /^<!DOCTYPE\s+svg\b/iu.test(inner)) {
    return found({ end: end + 1, text: "" });
  }
  return refused(
    "entities",
    "The file declares entities of its own; they are never read, since they can blow up a file without end.",
    "Save it as plain SVG.",
  );
};

type Reading = { readonly stack: Open[]; root: Element | null; count: number };

const closed = (open: Open): Element => ({
  name: open.name,
  attributes: open.attributes,
  children: open.children,
  text: open.text,
});

/** One tag taken in; what is wrong with it, or null. */
const takeTag = (inner: string, reading: Reading, at: number): Told<never> | null => {
  const { stack } = reading;
  if (inner.startsWith("/")) {
    const open = stack.pop();
    const name = inner.slice(1).trim();
    if (!open || open.attributes.get("") !== name)
      return broken(`</${name.slice(0, 30)}> closes nothing`, at);
    const parent = stack[stack.length - 1];
    if (parent) parent.children.push(closed(open));
    else reading.root = closed(open);
    return null;
  }
  const isWhole = inner.endsWith("/");
  const body = isWhole ? inner.slice(0, -1) : inner;
  const name = TAG.exec(body)?.[1];
  const attributes = name === undefined ? null : attributesOf(body, name.length);
  if (name === undefined || !attributes) return broken(`a tag cannot be read`, at);
  reading.count++;
  if (reading.count > MOST_NODES || stack.length >= DEEPEST) return tooMany(reading.count);
  if (reading.root) return broken("a second root stands", at);
  // The full name is kept with the attributes under no name, to be met by the closing tag.
  const open: Open = {
    name: local(name),
    attributes: new Map([...attributes, ["", name]]),
    children: [],
    text: "",
  };
  if (!isWhole) stack.push(open);
  else {
    const parent = stack[stack.length - 1];
    if (parent) parent.children.push(closed(open));
    else reading.root = closed(open);
  }
  return null;
};

const tooMany = (count: number): Told<never> =>
  refused(
    `${count} elements`,
    `The file has more than ${MOST_NODES} elements, or they stand more than ${DEEPEST} deep: it is no pattern.`,
    "Save only the pieces of the block.",
  );

/**
 * An XML file's elements. Strict: no entities of its own, no style sheet from elsewhere, one root,
 * every tag closed, at most 100,000 elements. Nothing outside the text is ever read.
 */
export const readXml = (text: string): Told<Element> => {
  if (text.length > LONGEST) return tooMany(MOST_NODES + 1);
  const reading: Reading = { stack: [], root: null, count: 0 };
  let at = 0;
  for (;;) {
    const next = text.indexOf("<", at);
    const open = reading.stack[reading.stack.length - 1];
    if (open?.name === "style") open.text += text.slice(at, next < 0 ? text.length : next);
    if (next < 0) break;
    const skipped = aside(text, next);
    if (skipped) {
      if ("fault" in skipped) return skipped;
      if (open?.name === "style") open.text += skipped.found.text;
      at = skipped.found.end;
      continue;
    }
    const end = tagEnd(text, next);
    if (end < 0) return broken("a tag has no end", next);
    const fault = takeTag(text.slice(next + 1, end), reading, next);
    if (fault) return fault;
    at = end + 1;
  }
  if (!reading.root || reading.stack.length > 0)
    return broken("an element is not closed", text.length);
  return found(reading.root);
};

import type { Choices } from "../drafting/choices.ts";
import { DEFAULT_CHOICES } from "../drafting/data/defaults.ts";
import type { Fault } from "../drafting/fault.ts";
import type { Body } from "../drafting/measures.ts";
import { readOwnBlock } from "../drafting/ownBlock.ts";
import type { Block } from "../drafting/piece.ts";
import { sizeNames, sizeOf } from "../drafting/sizes.ts";
import { readBlockFile } from "../project/blockSchema.ts";
import { type BodiesRead, readBodies } from "../project/bodiesCsv.ts";
import { readBody } from "../project/bodySchema.ts";
import { readChoices } from "../project/choicesSchema.ts";
import { nearest } from "../project/nearest.ts";
import { readJson, readText } from "../project/textFile.ts";
import { LARGEST, readInput } from "./readInput.ts";

/** An input that a maker named, read; or everything that is wrong with it. */
export type Input<Thing> =
  | { readonly is: Thing; readonly notices: readonly string[] }
  | { readonly faults: readonly Fault[]; readonly notices: readonly string[] };

const good = <Thing>(is: Thing, notices: readonly string[] = []): Input<Thing> => ({ is, notices });
const bad = (...faults: readonly Fault[]): Input<never> => ({ faults, notices: [] });

const jsonOf = (file: string, most: number) => {
  const read = readInput(file, most);
  return "fault" in read ? read : readJson(read.bytes, file);
};

export const choicesFrom = (file: string | null): Input<Choices> => {
  if (file === null) return good(DEFAULT_CHOICES);
  const read = jsonOf(file, LARGEST.choices);
  if ("fault" in read) return bad(read.fault);
  const choices = readChoices(read.json);
  return "faults" in choices ? bad(...choices.faults) : good(choices.choices);
};

export const blockFrom = (file: string | null): Input<Block | null> => {
  if (file === null) return good(null);
  const read = jsonOf(file, LARGEST.block);
  if ("fault" in read) return bad(read.fault);
  const shape = readBlockFile(read.json);
  if ("faults" in shape) return bad(...shape.faults);
  const block = readOwnBlock(shape.file);
  return "fault" in block ? bad(block.fault) : good(block.block);
};

export const bodyFrom = (file: string): Input<Body> => {
  const read = jsonOf(file, LARGEST.body);
  if ("fault" in read) return bad(read.fault);
  const { notices, ...body } = readBody(read.json);
  return "fault" in body ? { faults: [body.fault], notices } : good(body.body, notices);
};

const fewSoLarge = (name: string): string =>
  `${name}: few bodies of the survey are so large, so this size is drawn out from smaller ones. Try it on a toile first.`;

export const bodyOfSizeNamed = (name: string): Input<Body> => {
  const size = sizeOf(name);
  if (size) return good(size.body, size.extrapolated ? [fewSoLarge(size.body.id)] : []);
  const names = sizeNames();
  const meant = nearest(name, names, name.length);
  return bad({
    field: "size",
    value: name,
    reason: `${name} is not a standard size; there are ${names.length}, from ${names[0]} to ${names.at(-1)}.`,
    do: meant === null ? "Take one of them." : `Did you mean ${meant}?`,
  });
};

/** A table of bodies. Refused rows are part of what was read. */
export const bodiesFrom = (file: string): BodiesRead => {
  const read = readInput(file, LARGEST.bodies);
  if ("fault" in read) return read;
  const text = readText(read.bytes, file);
  return "fault" in text ? text : readBodies(text.text, file);
};

import * as z from "zod/mini";
import { MEASURE_RANGES, type Range } from "../drafting/data/ranges.ts";
import { KEPT_IDS, MEASURE_IDS } from "../drafting/measures.ts";
import { readOwnBlock } from "../drafting/ownBlock.ts";
import { readBlockFile } from "./blockSchema.ts";
import { ranged, readChoices } from "./choicesSchema.ts";
import { faultsOf, isObject } from "./faultWords.ts";
import { isLater, migrated } from "./migrations.ts";
import { readPrint } from "./printSchema.ts";
import { type BroughtBlock, NEW_WORK, type Work, type WorkBody } from "./work.ts";
import { PROJECT_FORMAT, PROJECT_VERSION } from "./writeProject.ts";

/** Why a file was not opened, as data; the words stand in the studio's catalogue. */
export type FileRefusal =
  | { readonly why: "foreign" | "broken" | "tooLarge" }
  | { readonly why: "later"; readonly found: number; readonly known: number }
  | { readonly why: "field"; readonly field: string; readonly reason: string };

export type FileRead =
  | { readonly work: Work }
  | { readonly block: BroughtBlock }
  | { readonly refusal: FileRefusal };

/** Ten thousand bodies and more fit in it; nothing that is larger is a handbook. */
const MOST_LETTERS = 8_000_000;
const MOST_BODIES = 10_000;

const textTo = (most: number, error: string) =>
  z.string({ error }).check(z.maxLength(most, { error }));

const rangeOf = (id: string): Range => {
  if (id === "height" || id === "chest" || id === "torsoGirth") return MEASURE_RANGES[id];
  const along = /^(shoulder|acrossBack|nape|scye|arm|spine|waistToHip)/u.test(id);
  return along ? MEASURE_RANGES.length : MEASURE_RANGES.girth;
};

const measuresSchema = z.strictObject(
  Object.fromEntries(
    [...MEASURE_IDS, ...KEPT_IDS].map((id) => [id, z.optional(ranged(rangeOf(id)))]),
  ),
  { error: "a group of measures in braces" },
);

const bodySchema = z.strictObject(
  {
    id: z
      .string({ error: "1 to 64 letters, digits, dots, hyphens" })
      .check(
        z.regex(/^[A-Za-z0-9._-]{1,64}$/u, { error: "1 to 64 letters, digits, dots, hyphens" }),
      ),
    name: textTo(200, "a text of 200 letters at most"),
    part: textTo(200, "a text of 200 letters at most"),
    sex: z.nullable(z.enum(["female", "male"], { error: '"female", "male" or null' })),
    measures: measuresSchema,
  },
  { error: "a body in braces" },
);

const BODIES = { error: "a list of 1 to 10000 bodies" };

const projectSchema = z.strictObject({
  format: z.literal(PROJECT_FORMAT),
  version: z.literal(PROJECT_VERSION),
  unit: z.literal("mm", { error: '"mm"' }),
  title: textTo(200, "a text of 200 letters at most"),
  bodies: z
    .array(bodySchema, BODIES)
    .check(z.minLength(1, BODIES), z.maxLength(MOST_BODIES, BODIES)),
  held: z.int({ error: "a whole number" }).check(z.gte(0, { error: "0 or more" })),
  choices: z.unknown(),
  block: z.nullable(
    z.strictObject({
      name: textTo(200, "a text of 200 letters at most"),
      file: z.unknown(),
      body: z.nullish(textTo(64, "a text of 64 letters at most")),
    }),
  ),
  useBlock: z.boolean({ error: "true or false" }),
  paper: z.unknown(),
  print: z.unknown(),
  date: z.nullable(
    z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/u, { error: "a date such as 2026-03-04" })),
  ),
  signed: z.record(z.string(), textTo(2000, "a text of 2000 letters at most")),
  sewn: z.record(z.string(), z.array(z.string())),
});

const refuse = (field: string, reason: string): FileRead => ({
  refusal: { why: "field", field, reason },
});

/** A block from parsed JSON: its shape, then its lines. */
const readBrought = (name: string, json: unknown): FileRead => {
  const shape = readBlockFile(json);
  if ("faults" in shape) {
    const [fault] = shape.faults;
    return refuse(fault?.field ?? "block", fault ? `${fault.reason} ${fault.do}` : "");
  }
  const own = readOwnBlock(shape.file);
  if ("fault" in own) {
    return refuse(own.fault.field, `${own.fault.reason} ${own.fault.do}`);
  }
  return { block: { name, file: shape.file, block: own.block, body: null } };
};

const readWork = (json: unknown): FileRead => {
  const shape = projectSchema.safeParse(json, { reportInput: true });
  if (!shape.success) {
    const [fault] = faultsOf(shape.error.issues, {});
    return refuse(fault?.field ?? "file", fault ? `${fault.reason} ${fault.do}` : "");
  }
  const {
    format: _,
    version: __,
    unit: ___,
    choices,
    block,
    bodies,
    paper,
    print,
    ...rest
  } = shape.data;
  const chosen = readChoices(choices);
  if ("faults" in chosen) {
    const [fault] = chosen.faults;
    return refuse(`choices.${fault?.field ?? ""}`, fault ? `${fault.reason} ${fault.do}` : "");
  }
  const printed = readPrint(paper, print);
  if ("faults" in printed) {
    const [fault] = printed.faults;
    return refuse(
      fault?.field === "paper" ? "paper" : `print.${fault?.field ?? ""}`,
      fault ? `${fault.reason} ${fault.do}` : "",
    );
  }
  const brought = block ? readBrought(block.name, block.file) : null;
  if (brought && !("block" in brought)) return brought;
  const [first, ...others] = bodies;
  if (!first) return refuse("bodies", "There is none.");
  const ids = new Set(bodies.map(({ id }) => id));
  if (ids.size < bodies.length) return refuse("bodies", "Two of them have the same id.");
  const all: readonly [WorkBody, ...WorkBody[]] = [first, ...others];
  return {
    work: {
      ...NEW_WORK,
      ...rest,
      bodies: all,
      held: Math.min(rest.held, bodies.length - 1),
      choices: chosen.choices,
      ...printed,
      block: brought ? { ...brought.block, body: block?.body ?? null } : null,
    },
  };
};

const parsed = (text: string): { readonly json: unknown } | null => {
  try {
    return { json: JSON.parse(text) };
  } catch {
    return null;
  }
};

/** Reads what a maker opens: a handbook of this or an older version, or a block. */
export const readFile = (name: string, text: string): FileRead => {
  if (text.length > MOST_LETTERS) return { refusal: { why: "tooLarge" } };
  const found = parsed(text.replace(/^\uFEFF/u, ""));
  if (!found) {
    // A handbook that was cut short still begins like one.
    return { refusal: { why: /^\s*\{\s*"/u.test(text) ? "broken" : "foreign" } };
  }
  const { json } = found;
  if (!isObject(json)) return { refusal: { why: "foreign" } };
  if (json["format"] === "ribwright-block") return readBrought(name, json);
  if (json["format"] !== PROJECT_FORMAT) return { refusal: { why: "foreign" } };
  const version = json["version"];
  if (isLater(version)) {
    return { refusal: { why: "later", found: version, known: PROJECT_VERSION } };
  }
  return readWork(migrated(json));
};

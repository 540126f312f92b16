import { PROJECT_VERSION } from "./writeProject.ts";

type Json = Readonly<Record<string, unknown>>;

/**
 * One step from each version to the next. A step renames and fills in; whether the values are
 * good is the schema's to say.
 */
const STEPS: Readonly<Record<number, (file: Json) => Json>> = {
  // 1 held one body, and knew neither dates, signed stops nor steps of making up.
  1: ({ body, ...file }) => ({
    useBlock: true,
    paper: "a4",
    date: null,
    signed: {},
    sewn: {},
    block: null,
    title: "",
    ...file,
    version: 2,
    held: 0,
    bodies: [withPart(body)],
  }),
  // 2 knew the paper alone, not how it is printed; every choice has a default.
  2: (file) => ({ ...file, version: 3, print: {} }),
};

const isJson = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const withPart = (body: unknown): unknown =>
  isJson(body) ? { name: "", part: "", sex: null, ...body } : body;

export const isLater = (version: unknown): version is number =>
  typeof version === "number" && version > PROJECT_VERSION;

/** The file as the version of today would have written it. */
export const migrated = (file: Json): Json => {
  const version = file["version"];
  const step = typeof version === "number" ? STEPS[version] : undefined;
  return step ? migrated(step(file)) : file;
};

import { SIZE_COLUMNS, SIZE_HEIGHTS, SIZE_TABLES, type SizeTable } from "./data/sizes.ts";
import type { Body, GivenMeasures } from "./measures.ts";

/** A standard size as a body of its own. */
export type Size = {
  readonly body: Body;
  /** Few people of the survey are so large: the line is fitted mostly on smaller bodies. */
  readonly extrapolated: boolean;
};

/** Unit: mm. A row without its height or chest is a fault of the table, and throws. */
const measuresOf = (row: readonly number[]): GivenMeasures => {
  const given: { -readonly [K in keyof GivenMeasures]?: GivenMeasures[K] } = {};
  SIZE_COLUMNS.forEach((id, column) => {
    const value = row[column];
    if (value !== undefined) given[id] = value;
  });
  const { height, chest } = given;
  if (height === undefined || chest === undefined) throw new Error("A size lacks height or chest.");
  return { ...given, height, chest };
};

const sizesOf = ({ sex, extrapolated, sizes }: SizeTable): readonly Size[] =>
  Object.entries(sizes).flatMap(([chestName, rows]) =>
    rows.map((row, place) => ({
      body: { id: `${chestName}-${SIZE_HEIGHTS[place]}`, sex, measures: measuresOf(row) },
      extrapolated,
    })),
  );

const SIZES: readonly Size[] = SIZE_TABLES.flatMap(sizesOf);

/** `W80-short`, `W80-regular`, … `M134-tall`: women's sizes first, each by rising chest. */
export const sizeNames = (): readonly string[] => SIZES.map(({ body }) => body.id);

/** Capitals do not matter, and a chest alone (`W90`) means its regular height. Null: no such size. */
export const sizeOf = (name: string): Size | null => {
  const wanted = name.trim().toLowerCase();
  const fits = ({ body }: Size): boolean => {
    const id = body.id.toLowerCase();
    return id === wanted || id === `${wanted}-regular`;
  };
  return SIZES.find(fits) ?? null;
};

/** The body of a standard size, all its measures given; null where there is no such size. */
export const bodyOfSize = (name: string): Body | null => sizeOf(name)?.body ?? null;

import { asMm } from "../../drafting/words.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { faulty, found, type Told } from "../told.ts";
import { type Rigid, rigidFrom } from "./rigid.ts";

/** A mark's name and its place in one picture's frame, in mm. */
export type NamedPlace = { readonly name: string; readonly place: Point };

/** Shared marks that lie further apart than this were moved between the pictures. Ours. */
const MOVED: Mm = 2;

/**
 * The turn and shift that bring a second picture's frame onto the first's by the marks that both
 * show (two at least). Told where a mark was moved between the two.
 */
export const joinPictures = (
  first: readonly NamedPlace[],
  second: readonly NamedPlace[],
): Told<Rigid> => {
  const shared = second.flatMap(({ name, place }) => {
    const other = first.find((mark) => mark.name === name);
    return other ? [{ name, from: place, to: other.place }] : [];
  });
  if (shared.length < 2) {
    return faulty(
      "pictures",
      String(shared.length),
      `The two pictures share ${shared.length} ${shared.length === 1 ? "mark" : "marks"}; two or more are needed to join them.`,
      "Take a picture that shows two marks of the first, left where they lay.",
    );
  }
  const rigid = rigidFrom(
    shared.map(({ from }) => from),
    shared.map(({ to }) => to),
  );
  if (rigid.worst <= MOVED) return found(rigid);
  return faulty(
    "pictures",
    asMm(rigid.worst),
    `The shared marks ${shared.map(({ name }) => name).join(", ")} lie ${asMm(rigid.worst)} apart when the pictures are joined; the limit is ${asMm(MOVED)}.`,
    "Leave the shared marks where they lie between the pictures, or measure their distances again.",
  );
};

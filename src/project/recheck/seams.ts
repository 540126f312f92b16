import { SEAM_MEETS } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import { type Finding, SAME_LENGTH, unlike, words } from "./finding.ts";
import { edgeNamed, type MeasuredEdge, type MeasuredReport } from "./measured.ts";
import type { ReportSeam } from "./reportFile.ts";

/** The insert is set in by hand and may differ by this much (method, section 6). */
const V_MEETS: Mm = 0.5;

/** Seams that every garment has, and what is sewn to what in them (contract, "Seams"). */
const SIDES: Readonly<Record<string, readonly [a: string, b: string]>> = {
  "raglan-front": ["front.raglan", "sleeve.raglanFront"],
  "raglan-back": ["back.raglan", "sleeve.raglanBack"],
  side: ["front.side", "back.side"],
  underarm: ["sleeve.underarmFront", "sleeve.underarmBack"],
};
const V_SIDES = ["front.v", "vInsert.left"] as const;

const total = (edges: readonly MeasuredEdge[], of: "drawn" | "finished"): Mm =>
  edges.reduce((sum, edge) => sum + edge[of], 0);

const namesOf = (side: ReportSeam["a"]): readonly string[] =>
  side.map(([piece, edge]) => `${piece}.${edge}`);

const seamHolds = (seam: ReportSeam, measured: MeasuredReport): readonly Finding[] => {
  const { id, lengthA, lengthB, difference, ease } = seam;
  const [namesA, namesB] = [namesOf(seam.a), namesOf(seam.b)];
  const lost = [...namesA, ...namesB].filter((name) => edgeNamed(measured, name) === null);
  if (lost.length > 0)
    return [{ where: id, what: `The report has no edge ${lost.join(" and no edge ")}.` }];
  const edges = (names: readonly string[]) =>
    names.flatMap((name) => edgeNamed(measured, name) ?? []);
  const [a, b] = [edges(namesA), edges(namesB)];
  const [drawnA, drawnB] = [total(a, "drawn"), total(b, "drawn")];
  const apart = total(a, "finished") - total(b, "finished");
  const most = id === "v-left" ? V_MEETS : SEAM_MEETS;
  const [one, other] = [namesA.join(" + "), namesB.join(" + ")];
  return [
    ...unlike(id, one, [lengthA, drawnA], SAME_LENGTH),
    ...unlike(id, other, [lengthB, drawnB], SAME_LENGTH),
    ...unlike(id, "The difference", [difference, apart], SAME_LENGTH),
    ...unlike(id, "The ease", [ease, drawnA - drawnB - apart], SAME_LENGTH),
    ...(Math.abs(apart) <= most
      ? []
      : [{ where: id, what: `${one} is ${longer(apart)} than ${other}; at most ${most} mm.` }]),
  ];
};

const longer = (by: Mm): string => `${words(Math.abs(by))} ${by > 0 ? "longer" : "shorter"}`;

/** A seam that must be there is there, and joins what it must. */
const isThere = (
  id: string,
  [a, b]: readonly [string, string],
  seams: readonly ReportSeam[],
): readonly Finding[] => {
  const seam = seams.find((one) => one.id === id);
  if (!seam) return [{ where: id, what: "The report has no such seam." }];
  const joins = [...namesOf(seam.a), ...namesOf(seam.b)];
  return joins.includes(a) && joins.includes(b)
    ? []
    : [{ where: id, what: `It joins ${joins.join(" and ")}; it must join ${a} and ${b}.` }];
};

/** What does not hold of the seams: each is measured on both sides from its drawn lines. */
export const seamFindings = (measured: MeasuredReport): readonly Finding[] => {
  const { seams, pieces } = measured.report;
  const wanted = Object.entries(SIDES);
  return [
    ...wanted.flatMap(([id, sides]) => isThere(id, sides, seams)),
    ...(pieces.vInsert ? isThere("v-left", V_SIDES, seams) : []),
    ...seams.flatMap((seam) => seamHolds(seam, measured)),
  ];
};

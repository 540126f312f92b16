import type { Sex } from "../../drafting/measures.ts";
import type { Work, WorkBody } from "../../project/work.ts";
import { NEW_WORK } from "../../project/work.ts";

type Singer = readonly [
  name: string,
  part: string,
  sex: Sex,
  height: number,
  chest: number,
  hip: number,
  upperArm: number,
  wrist: number,
  neckBase: number,
];

/**
 * Twelve invented singers of an invented choir; nobody was measured. Three are teens (their age
 * stands in their part), and the survey behind the estimates has adults only. Lengths in mm.
 */
const SINGERS: readonly Singer[] = [
  ["Wrenna Tolkeith", "soprano", "female", 1610, 860, 940, 285, 152, 345],
  ["Odile Marrack", "soprano", "female", 1680, 960, 1010, 310, 160, 360],
  ["Pia Hesterwick", "soprano, 14", "female", 1550, 790, 850, 248, 146, 325],
  ["Juno Casterby", "alto", "female", 1720, 1080, 1140, 352, 170, 380],
  ["Bettany Rookmoor", "alto", "female", 1640, 1220, 1320, 402, 178, 400],
  ["Marit Ollensby", "alto", "female", 1750, 920, 980, 292, 160, 355],
  ["Corin Applewhit", "tenor", "male", 1780, 1000, 990, 322, 172, 385],
  ["Tobin Faircrake", "tenor, 15", "male", 1690, 840, 860, 268, 158, 350],
  ["Dessa Quillhampton", "tenor", "female", 1660, 1040, 1120, 340, 166, 372],
  ["Hob Lanterdale", "bass", "male", 1860, 1160, 1120, 376, 186, 422],
  ["Anselm Greyfold", "bass", "male", 1740, 1310, 1260, 398, 188, 412],
  ["Ivo Stackpenny", "bass, 16", "male", 1800, 900, 900, 290, 168, 368],
];

const bodyOfSinger = ([
  name,
  part,
  sex,
  height,
  chest,
  hip,
  upperArm,
  wrist,
  neckBase,
]: Singer): WorkBody => ({
  id: name.split(" ")[0]?.toLowerCase() ?? name,
  name,
  part,
  sex,
  measures: { height, chest, hip, upperArm, wrist, neckBase },
});

/** The demonstration: a choir with a sweatshirt for each, the second singer on the table. */
export const choirWork = (): Work => {
  const [first, ...rest] = SINGERS.map(bodyOfSinger);
  return first
    ? { ...NEW_WORK, title: "Pennyfarrow Choir", bodies: [first, ...rest], held: 1 }
    : NEW_WORK;
};

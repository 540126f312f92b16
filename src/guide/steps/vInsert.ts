import type { Garment } from "../../bands/garment.ts";
import { SEAM_MEETS } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import { SETTINGS } from "../data/stitches.ts";
import {
  sewVPicture,
  shortOfTip,
  snipLength,
  stayPicture,
  vInPlacePicture,
} from "../pictures/vInsert.ts";
import { edgeOf, hasPiece, pieceOf } from "../shapes.ts";
import type { GuideStep } from "../step.ts";
import { STAY_STITCHES, V_STITCHES } from "../stitches.ts";
import { count, given, mm, said, share, type Told, told } from "../words/told.ts";

/** The turning along the V: what was asked for, or what it had room for. */
export const vAllowance = ({ rails, choices }: Garment): Mm =>
  rails.find(({ id }) => id === "rail-v-allowance")?.used ?? choices.alterations.vInsert.allowance;

const staySentence = (garment: Garment): Told => {
  const snip = snipLength(garment);
  return snip > 0
    ? told("stay.snip", { snip: mm(snip), short: given(SETTINGS.snipShort) })
    : said("stay.noSnip");
};

const stay = (garment: Garment): GuideStep => ({
  id: "stay-v",
  title: said("stay.title"),
  sentences: [told("stay.sew", { stayed: given(SETTINGS.stayed) }), staySentence(garment)],
  marks: null,
  stitches: STAY_STITCHES,
  cautions: [said("caution.needle"), said("caution.shears")],
  pictures: [stayPicture(garment)],
});

/** The seam from top to point: of one length, or the insert stretched where it was cut away. */
const seamSentence = (garment: Garment): Told => {
  const opening = edgeOf(pieceOf(garment, "front"), "v").length;
  const insert = edgeOf(pieceOf(garment, "vInsert"), "left").length;
  const by = opening - insert;
  return Math.abs(by) <= SEAM_MEETS
    ? told("v.sew", { length: mm(opening) })
    : told("v.stretched", {
        insert: mm(insert),
        opening: mm(opening),
        by: mm(by),
        stretch: share(by / insert),
      });
};

const sewIn = (garment: Garment): GuideStep => ({
  id: "v-insert",
  title: said("v.title"),
  sentences: [
    told("v.lay", { allowance: given(vAllowance(garment)) }),
    seamSentence(garment),
    told("v.stop", { short: mm(shortOfTip(garment)) }),
    said("v.other"),
    told("v.across", { across: count(SETTINGS.across) }),
  ],
  marks: null,
  stitches: V_STITCHES,
  cautions: [said("caution.pins"), said("caution.needle")],
  pictures: [sewVPicture(garment), vInPlacePicture(garment)],
});

/** The V's two steps; none where the front has no V. */
export const vInsertSteps = (garment: Garment): readonly GuideStep[] =>
  hasPiece(garment, "vInsert") ? [stay(garment), sewIn(garment)] : [];

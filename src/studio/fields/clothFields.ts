import type { Choices } from "../../drafting/choices.ts";
import { CHOICE_RANGES } from "../../drafting/data/ranges.ts";
import { PIECE_NAMES, type PieceName } from "../../drafting/piece.ts";
import { ofChoices } from "./numberField.ts";

type Cloth = Choices["cloth"];
const CUT: readonly PieceName[] = ["front", "back", "sleeve", "vInsert"];
const BANDS: readonly PieceName[] = ["neckband", "cuff", "hemBand"];
const { fit, allowance } = CHOICE_RANGES;

export const withBodyCloth = (c: Choices, change: Partial<Cloth["body"]>): Choices => ({
  ...c,
  cloth: { ...c.cloth, body: { ...c.cloth.body, ...change } },
});

export const withRib = (c: Choices, change: Partial<Cloth["rib"]>): Choices => ({
  ...c,
  cloth: { ...c.cloth, rib: { ...c.cloth.rib, ...change } },
});

const ofFit = (
  key: keyof Choices["fit"],
  range: (typeof fit)[typeof key],
  pieces: readonly PieceName[],
) =>
  ofChoices({
    kind: "length",
    range,
    get: (c) => c.fit[key],
    set: (c, value) => ({ ...c, fit: { ...c.fit, [key]: value } }),
    pieces,
  });

const ofTurning = (key: keyof Choices["allowances"], pieces: readonly PieceName[]) =>
  ofChoices({
    kind: "length",
    range: allowance,
    get: (c) => c.allowances[key],
    set: (c, value) => ({ ...c, allowances: { ...c.allowances, [key]: value } }),
    pieces,
  });

const ofBodyCloth = (key: "stretch" | "shrinkLength" | "shrinkWidth") =>
  ofChoices({
    kind: "percent",
    range: key === "stretch" ? CHOICE_RANGES.stretch : CHOICE_RANGES.shrinkage,
    get: (c) => c.cloth.body[key],
    set: (c, value) => withBodyCloth(c, { [key]: value }),
    pieces: CUT,
  });

const ofRib = (key: keyof Cloth["rib"]) =>
  ofChoices({
    kind: "percent",
    range: key === "stretch" ? CHOICE_RANGES.stretch : CHOICE_RANGES.recovery,
    get: (c) => c.cloth.rib[key],
    set: (c, value) => withRib(c, { [key]: value }),
    pieces: BANDS,
  });

export const CLOTH_FIELDS = {
  "fit.chestEase": ofFit("chestEase", fit.chestEase, CUT),
  "fit.upperArmEase": ofFit("upperArmEase", fit.upperArmEase, ["sleeve"]),
  "fit.lengthBelowHip": ofFit("lengthBelowHip", fit.lengthBelowHip, ["front", "back"]),
  "body.stretch": ofBodyCloth("stretch"),
  "body.shrinkLength": ofBodyCloth("shrinkLength"),
  "body.shrinkWidth": ofBodyCloth("shrinkWidth"),
  "rib.stretch": ofRib("stretch"),
  "rib.recovery": ofRib("recovery"),
  "allowances.raglan": ofTurning("raglan", CUT),
  "allowances.side": ofTurning("side", ["front", "back"]),
  "allowances.underarm": ofTurning("underarm", ["sleeve"]),
  "allowances.bands": ofTurning("bands", PIECE_NAMES),
} as const;

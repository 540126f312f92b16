import type { Choices } from "../../drafting/choices.ts";
import { CHOICE_RANGES } from "../../drafting/data/ranges.ts";
import { type NumberField, ofChoices } from "./numberField.ts";

type BandChoices = Choices["bands"];

export const withBand = <K extends keyof BandChoices>(
  choices: Choices,
  name: K,
  change: Partial<BandChoices[K]>,
): Choices => ({
  ...choices,
  bands: { ...choices.bands, [name]: { ...choices.bands[name], ...change } },
});

const ofBand = (name: "cuff" | "hemBand", key: "cutHeight" | "ease") =>
  ofChoices({
    kind: "length",
    range: key === "ease" ? CHOICE_RANGES.bandEase : CHOICE_RANGES.cutHeight,
    get: (c) => c.bands[name][key],
    set: (c, value) => withBand(c, name, { [key]: value }),
    pieces: [name],
  });

/** The maker's own ratio; null lets it be found from the rib. */
const ratio: NumberField = {
  kind: "ratio",
  range: CHOICE_RANGES.neckband.ratio,
  mayBeEmpty: false,
  pieces: ["neckband"],
  read: (work) => work.choices.bands.neckband.ratio,
  write: (work, value) => ({
    ...work,
    choices: withBand(work.choices, "neckband", { ratio: value }),
  }),
};

export const BAND_FIELDS = {
  "neckband.finishedDepth": ofChoices({
    kind: "length",
    range: CHOICE_RANGES.neckband.finishedDepth,
    get: (c) => c.bands.neckband.finishedDepth,
    set: (c, finishedDepth) => withBand(c, "neckband", { finishedDepth }),
    pieces: ["neckband"],
  }),
  "neckband.ratio": ratio,
  "cuff.cutHeight": ofBand("cuff", "cutHeight"),
  "cuff.ease": ofBand("cuff", "ease"),
  "hemBand.cutHeight": ofBand("hemBand", "cutHeight"),
  "hemBand.ease": ofBand("hemBand", "ease"),
} as const;

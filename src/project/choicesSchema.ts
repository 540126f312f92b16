import * as z from "zod/mini";
import type { Choices } from "../drafting/choices.ts";
import { DEFAULT_CHOICES } from "../drafting/data/defaults.ts";
import { CHOICE_RANGES, CUT_HEIGHT_ALLOWANCES, type Range } from "../drafting/data/ranges.ts";
import type { Fault } from "../drafting/fault.ts";
import { faultsOf, rangeWords } from "./faultWords.ts";

const { fit, alterations, cloth, bands, allowances } = DEFAULT_CHOICES;

/** A number of this range, both ends included. */
export const ranged = (range: Range) => {
  const error = `a number from ${rangeWords(range)}`;
  return z.number({ error }).check(z.gte(range.least, { error }), z.lte(range.most, { error }));
};
const numberOr = (otherwise: number, range: Range) => z._default(ranged(range), otherwise);
const yesOr = (otherwise: boolean) => z._default(z.boolean({ error: "true or false" }), otherwise);
const wordOr = <const Words extends readonly [string, ...string[]]>(
  otherwise: Words[number],
  words: Words,
) => z._default(z.enum(words, { error: words.map((w) => `"${w}"`).join(" or ") }), otherwise);

/** What a group of choices may be. Unknown keys in it are refused; it may be left out as a whole. */
const GROUP = { error: "a group of choices in braces" };

const alterationsSchema = z.prefault(
  z.strictObject(
    {
      moveSideSeams: z.prefault(
        z.strictObject(
          {
            on: yesOr(alterations.moveSideSeams.on),
            by: numberOr(alterations.moveSideSeams.by, CHOICE_RANGES.moveSideSeams.by),
          },
          GROUP,
        ),
        {},
      ),
      raiseHem: z.prefault(
        z.strictObject(
          {
            on: yesOr(alterations.raiseHem.on),
            by: numberOr(alterations.raiseHem.by, CHOICE_RANGES.raiseHem.by),
          },
          GROUP,
        ),
        {},
      ),
      endSleeve: z.prefault(
        z.strictObject(
          {
            on: yesOr(alterations.endSleeve.on),
            aboveWrist: numberOr(
              alterations.endSleeve.aboveWrist,
              CHOICE_RANGES.endSleeve.aboveWrist,
            ),
          },
          GROUP,
        ),
        {},
      ),
      neckline: z.prefault(
        z.strictObject(
          {
            on: yesOr(alterations.neckline.on),
            lowerFront: numberOr(
              alterations.neckline.lowerFront,
              CHOICE_RANGES.neckline.lowerFront,
            ),
            lowerBack: numberOr(alterations.neckline.lowerBack, CHOICE_RANGES.neckline.lowerBack),
            widen: numberOr(alterations.neckline.widen, CHOICE_RANGES.neckline.widen),
          },
          GROUP,
        ),
        {},
      ),
      vInsert: z.prefault(
        z.strictObject(
          {
            on: yesOr(alterations.vInsert.on),
            halfWidth: numberOr(alterations.vInsert.halfWidth, CHOICE_RANGES.vInsert.halfWidth),
            depth: numberOr(alterations.vInsert.depth, CHOICE_RANGES.vInsert.depth),
            allowance: numberOr(alterations.vInsert.allowance, CHOICE_RANGES.vInsert.allowance),
            method: wordOr(alterations.vInsert.method, ["true", "cut-away"]),
          },
          GROUP,
        ),
        {},
      ),
    },
    GROUP,
  ),
  {},
);

const clothSchema = z.prefault(
  z.strictObject(
    {
      body: z.prefault(
        z.strictObject(
          {
            stretch: numberOr(cloth.body.stretch, CHOICE_RANGES.stretch),
            shrinkLength: numberOr(cloth.body.shrinkLength, CHOICE_RANGES.shrinkage),
            shrinkWidth: numberOr(cloth.body.shrinkWidth, CHOICE_RANGES.shrinkage),
            turned: yesOr(cloth.body.turned),
          },
          GROUP,
        ),
        {},
      ),
      rib: z.prefault(
        z.strictObject(
          {
            stretch: numberOr(cloth.rib.stretch, CHOICE_RANGES.stretch),
            recovery: numberOr(cloth.rib.recovery, CHOICE_RANGES.recovery),
          },
          GROUP,
        ),
        {},
      ),
    },
    GROUP,
  ),
  {},
);

const bandsSchema = z.prefault(
  z.strictObject(
    {
      neckband: z.prefault(
        z.strictObject(
          {
            finishedDepth: numberOr(
              bands.neckband.finishedDepth,
              CHOICE_RANGES.neckband.finishedDepth,
            ),
            ratio: z._default(
              z.nullable(ranged(CHOICE_RANGES.neckband.ratio)),
              bands.neckband.ratio,
            ),
            share: wordOr(bands.neckband.share, ["ring", "even"]),
          },
          GROUP,
        ),
        {},
      ),
      cuff: z.prefault(
        z.strictObject(
          {
            cutHeight: numberOr(bands.cuff.cutHeight, CHOICE_RANGES.cutHeight),
            ease: numberOr(bands.cuff.ease, CHOICE_RANGES.bandEase),
          },
          GROUP,
        ),
        {},
      ),
      hemBand: z.prefault(
        z.strictObject(
          {
            cutHeight: numberOr(bands.hemBand.cutHeight, CHOICE_RANGES.cutHeight),
            ease: numberOr(bands.hemBand.ease, CHOICE_RANGES.bandEase),
          },
          GROUP,
        ),
        {},
      ),
    },
    GROUP,
  ),
  {},
);

const choicesSchema = z.strictObject(
  {
    fit: z.prefault(
      z.strictObject(
        {
          chestEase: numberOr(fit.chestEase, CHOICE_RANGES.fit.chestEase),
          upperArmEase: numberOr(fit.upperArmEase, CHOICE_RANGES.fit.upperArmEase),
          lengthBelowHip: numberOr(fit.lengthBelowHip, CHOICE_RANGES.fit.lengthBelowHip),
        },
        GROUP,
      ),
      {},
    ),
    alterations: alterationsSchema,
    cloth: clothSchema,
    bands: bandsSchema,
    allowances: z.prefault(
      z.strictObject(
        {
          raglan: numberOr(allowances.raglan, CHOICE_RANGES.allowance),
          side: numberOr(allowances.side, CHOICE_RANGES.allowance),
          underarm: numberOr(allowances.underarm, CHOICE_RANGES.allowance),
          bands: numberOr(allowances.bands, CHOICE_RANGES.allowance),
        },
        GROUP,
      ),
      {},
    ),
  },
  GROUP,
);

/** A band must be high enough to fold over its own two allowances. */
const lowBands = ({ bands, allowances }: Choices): readonly Fault[] => {
  const least = CUT_HEIGHT_ALLOWANCES * allowances.bands;
  return (["cuff", "hemBand"] as const)
    .filter((band) => bands[band].cutHeight < least)
    .map((band) => ({
      field: `bands.${band}.cutHeight`,
      value: String(bands[band].cutHeight),
      reason: `bands.${band}.cutHeight is ${bands[band].cutHeight} mm; with allowances.bands ${allowances.bands} mm it must be at least ${least} mm, ${CUT_HEIGHT_ALLOWANCES} of them.`,
      do: "Cut the band higher, or make allowances.bands smaller.",
    }));
};

export type ChoicesRead = { readonly choices: Choices } | { readonly faults: readonly Fault[] };

/** The choices in a parsed file, every default filled in. Unknown keys and values are refused. */
export const readChoices = (file: unknown): ChoicesRead => {
  const { data, error } = choicesSchema.safeParse(file, { reportInput: true });
  if (error) return { faults: faultsOf(error.issues, DEFAULT_CHOICES) };
  const faults = lowBands(data);
  return faults.length > 0 ? { faults } : { choices: data };
};

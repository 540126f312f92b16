import type { Choices } from "../../src/drafting/choices.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";

type Alterations = Choices["alterations"];

/** What a test changes of the default choices, by the group it stands in. */
export type Changes = {
  readonly fit?: Partial<Choices["fit"]>;
  readonly moveSideSeams?: Partial<Alterations["moveSideSeams"]>;
  readonly raiseHem?: Partial<Alterations["raiseHem"]>;
  readonly endSleeve?: Partial<Alterations["endSleeve"]>;
  readonly neckline?: Partial<Alterations["neckline"]>;
  readonly vInsert?: Partial<Alterations["vInsert"]>;
  readonly body?: Partial<Choices["cloth"]["body"]>;
  readonly rib?: Partial<Choices["cloth"]["rib"]>;
  readonly neckband?: Partial<Choices["bands"]["neckband"]>;
  readonly cuff?: Partial<Choices["bands"]["cuff"]>;
  readonly hemBand?: Partial<Choices["bands"]["hemBand"]>;
  readonly allowances?: Partial<Choices["allowances"]>;
};

const changed = (base: Choices, changes: Changes): Choices => {
  const { alterations: a, cloth, bands } = base;
  return {
    fit: { ...base.fit, ...changes.fit },
    alterations: {
      moveSideSeams: { ...a.moveSideSeams, ...changes.moveSideSeams },
      raiseHem: { ...a.raiseHem, ...changes.raiseHem },
      endSleeve: { ...a.endSleeve, ...changes.endSleeve },
      neckline: { ...a.neckline, ...changes.neckline },
      vInsert: { ...a.vInsert, ...changes.vInsert },
    },
    cloth: { body: { ...cloth.body, ...changes.body }, rib: { ...cloth.rib, ...changes.rib } },
    bands: {
      neckband: { ...bands.neckband, ...changes.neckband },
      cuff: { ...bands.cuff, ...changes.cuff },
      hemBand: { ...bands.hemBand, ...changes.hemBand },
    },
    allowances: { ...base.allowances, ...changes.allowances },
  };
};

/** The default choices with some changed. */
export const choicesOf = (changes: Changes = {}): Choices => changed(DEFAULT_CHOICES, changes);

const OFF = { on: false } as const;

/** Nothing altered but what is turned on here. */
export const onlyChoices = (changes: Changes = {}): Choices =>
  changed(
    changed(DEFAULT_CHOICES, {
      moveSideSeams: OFF,
      raiseHem: OFF,
      endSleeve: OFF,
      neckline: OFF,
      vInsert: OFF,
    }),
    changes,
  );

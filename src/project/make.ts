import type { Garment } from "../bands/garment.ts";
import { makeGarment } from "../bands/makeGarment.ts";
import type { Check } from "../checks/check.ts";
import { checkGarment } from "../checks/checkGarment.ts";
import { type Drafted, draftRaglanBlock } from "../drafting/block/raglanBlock.ts";
import type { Choices } from "../drafting/choices.ts";
import { doubtfulMeasures } from "../drafting/doubts.ts";
import { completeMeasures, type Estimate } from "../drafting/estimate.ts";
import type { Body, Measures } from "../drafting/measures.ts";
import type { Block } from "../drafting/piece.ts";

/** What was made for one body. */
export type Made = {
  readonly body: {
    readonly id: string;
    readonly name?: string;
    /** Every measure used, given and estimated. */
    readonly measures: Measures;
    readonly estimated: readonly Estimate[];
  };
  readonly garment: Garment;
  readonly checks: readonly Check[];
};

/**
 * The whole flow for one body: missing measures estimated, the block drafted (or the maker's own
 * taken), altered, banded and checked. Pure; never fails on input that was read at the edge.
 */
export const make = (body: Body, choices: Choices, ownBlock: Block | null): Made => {
  const { measures, estimated } = completeMeasures(body);
  const drafted: Drafted = ownBlock
    ? { block: ownBlock, rails: [] }
    : draftRaglanBlock(measures, choices.fit);
  const garment = makeGarment(drafted, measures, choices);
  return {
    body: {
      id: body.id,
      ...(body.name === undefined ? {} : { name: body.name }),
      measures,
      estimated,
    },
    garment,
    checks: checkGarment(garment, doubtfulMeasures(body)),
  };
};

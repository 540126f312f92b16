import type { Garment } from "../bands/garment.ts";
import { type Saying, sayingOf } from "./lesson/alterations.ts";
import { bandsStep, blockStep, turningsStep } from "./lesson/ends.ts";
import { changedPieces, newNumbers, piecesOfState } from "./lesson/lines.ts";
import { type AlterationName, alterationsOn, type State, stateAfter } from "./lesson/state.ts";
import type { LessonStep } from "./lesson/step.ts";

const alterationStep = (saying: Saying, before: State, after: State): LessonStep => {
  const changed = changedPieces(piecesOfState(before), piecesOfState(after));
  // An alteration by nothing changes no piece; the class is shown what it could change.
  const shown = changed.after.length > 0 ? changed : { before: [], after: piecesOfState(after) };
  return { ...saying, ...shown, numbers: newNumbers(shown.before, shown.after) };
};

/** Every alteration that is on, each from the result of the one before. */
const alterationSteps = (garment: Garment, first: State): readonly LessonStep[] => {
  let before = first;
  const done: AlterationName[] = [];
  return alterationsOn(garment).map((name) => {
    done.push(name);
    const after = stateAfter(garment, done);
    const saying = sayingOf(name, { garment, before, after });
    const step = alterationStep(saying, before, after);
    before = after;
    return step;
  });
};

/**
 * From block to sweatshirt for a class: block, neckline, side seams, hem, sleeve end, V, bands,
 * turnings; only the alterations that are on. Lines as worn, lengths in mm. Pure data.
 */
export const lesson = (garment: Garment): readonly LessonStep[] => {
  const block = stateAfter(garment, []);
  return [
    blockStep(garment, block, piecesOfState(block)),
    ...alterationSteps(garment, block),
    bandsStep(garment),
    turningsStep(garment),
  ];
};

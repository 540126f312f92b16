/** How far a class has come, and what it sees. */
export type ClassState = {
  readonly at: number;
  /** False: what the draft found is left blank, for the class to work out. */
  readonly numbers: boolean;
  readonly answers: boolean;
  readonly black: boolean;
  readonly blank: boolean;
  /** How often this step's drawing was moved again. */
  readonly plays: number;
};

export const CLASS_START: ClassState = {
  at: 0,
  numbers: true,
  answers: false,
  black: false,
  blank: false,
  plays: 0,
};

type Change = (state: ClassState, last: number) => ClassState;

/** To a step within the lesson; its answers are not shown yet. */
const toStep =
  (where: (at: number, last: number) => number): Change =>
  (state, last) => {
    const at = Math.max(0, Math.min(last, where(state.at, last)));
    return at === state.at ? state : { ...state, at, answers: false, blank: false, plays: 0 };
  };

export const goOn: Change = toStep((at) => at + 1);
export const goBack: Change = toStep((at) => at - 1);
export const goToStep = (to: number): Change => toStep(() => to);
export const turnNumbers: Change = (state) => ({ ...state, numbers: !state.numbers });
export const turnAnswers: Change = (state) => ({ ...state, answers: !state.answers });
export const turnGround: Change = (state) => ({ ...state, black: !state.black });
export const playAgain: Change = (state) => ({ ...state, plays: state.plays + 1 });
const turnBlank: Change = (state) => ({ ...state, blank: !state.blank });

/** Presenter remotes send PageDown and PageUp, and B for a blank screen. */
const KEYS: Readonly<Record<string, Change>> = {
  arrowright: goOn,
  arrowdown: goOn,
  pagedown: goOn,
  " ": goOn,
  arrowleft: goBack,
  arrowup: goBack,
  pageup: goBack,
  home: goToStep(0),
  end: toStep((_, last) => last),
  n: turnNumbers,
  a: turnAnswers,
  l: turnGround,
  r: playAgain,
  b: turnBlank,
};

/** What a key does; undefined: it is none of the teacher's. */
export const changeOfKey = (key: string): Change | undefined => {
  const name = key.toLowerCase();
  return Object.hasOwn(KEYS, name) ? KEYS[name] : undefined;
};

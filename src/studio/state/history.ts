/**
 * Undo and redo over one value. A step keeps the value before and after it; the values are
 * immutable and share their parts, so a thousand steps weigh little.
 */
type Step<V, N> = {
  readonly name: N;
  readonly before: V;
  readonly after: V;
  /** Changes with the same gesture are one step: a drag, a run of arrow keys. */
  readonly gesture: string | null;
};

export type History<V, N> = {
  readonly present: V;
  readonly past: readonly Step<V, N>[];
  /** The next to be done again is the last. */
  readonly future: readonly Step<V, N>[];
};

/** More would only be kept, never walked back to by hand. */
export const MOST_STEPS = 1000;

export const begun = <V, N>(present: V): History<V, N> => ({ present, past: [], future: [] });

type Change<V, N> = { readonly to: V; readonly name: (before: V) => N; readonly gesture?: string };

/** The history with one more step, or with the last step grown where the gesture goes on. */
export const changed = <V, N>(history: History<V, N>, change: Change<V, N>): History<V, N> => {
  const { present, past } = history;
  if (change.to === present) return history;
  const last = past.at(-1);
  const gesture = change.gesture ?? null;
  const goesOn = gesture !== null && last?.gesture === gesture;
  const before = goesOn && last ? last.before : present;
  const step = { name: change.name(before), before, after: change.to, gesture };
  const kept = goesOn ? past.slice(0, -1) : past.slice(-MOST_STEPS + 1);
  return { present: change.to, past: [...kept, step], future: [] };
};

export const undone = <V, N>(history: History<V, N>): History<V, N> => {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    present: last.before,
    past: history.past.slice(0, -1),
    future: [...history.future, last],
  };
};

/** A step done again is closed: a new gesture of the same name does not grow it. */
export const redone = <V, N>(history: History<V, N>): History<V, N> => {
  const next = history.future.at(-1);
  if (!next) return history;
  return {
    present: next.after,
    past: [...history.past, { ...next, gesture: null }],
    future: history.future.slice(0, -1),
  };
};

/** Takes the gesture in hand back, as if it had never begun: Escape while dragging. */
export const letGo = <V, N>(history: History<V, N>, gesture: string): History<V, N> => {
  const last = history.past.at(-1);
  if (last?.gesture !== gesture) return history;
  return { ...history, present: last.before, past: history.past.slice(0, -1) };
};

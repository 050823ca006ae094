/**
 * What can be taken back. One gesture, be it a drag of a hundred moves or a few clicks of a knob, is one entry.
 * Plain immutable data.
 */

export interface History<T> {
  /** Oldest first. */
  readonly past: readonly T[];
  readonly present: T;
  /** Nearest first. */
  readonly future: readonly T[];
  /** The gesture that made the present; null when the next change must stand alone. */
  readonly gesture: string | null;
}

/** Enough for a lesson; older ones are forgotten first. */
export const LONGEST_PAST = 300;

export const beginHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], gesture: null });

/**
 * The history after a change. A change by the gesture that made the present replaces it; any other is a new entry. A change that
 * changes nothing leaves the history as it was. What had been taken back is forgotten.
 */
export function record<T>(history: History<T>, next: T, gesture: string | null): History<T> {
  if (next === history.present) return history;
  if (gesture !== null && gesture === history.gesture) return { ...history, present: next, future: [] };
  return {
    past: [...history.past, history.present].slice(-LONGEST_PAST),
    present: next,
    future: [],
    gesture,
  };
}

/**
 * The history with its present carried on by itself, as a flight carries the scene on: no entry of its own, and whatever gesture is going
 * on goes on.
 */
export const carryOn = <T>(history: History<T>, next: T): History<T> =>
  next === history.present ? history : { ...history, present: next, future: [] };

/** One entry back; the same history when there is none. */
export function undo<T>(history: History<T>): History<T> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present,
    future: [history.present, ...history.future],
    gesture: null,
  };
}

/** One entry forward again; the same history when there is none. */
export function redo<T>(history: History<T>): History<T> {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { past: [...history.past, history.present], present, future, gesture: null };
}

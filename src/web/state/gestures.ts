/** Names for gestures, so that history takes back a whole drag or a whole run of clicks at once. */

/** Clicks, wheel notches and key presses on one control belong together while they follow one another this closely, ms. */
const RUN_WITHIN_MS = 900;

let count = 0;
let run = { control: "", gesture: "", lastMs: Number.NEGATIVE_INFINITY };

/** A name for a gesture that begins now, such as a drag. */
export function newGesture(): string {
  count += 1;
  return `gesture ${count}`;
}

/** The name for one small step on a control: that of the running run, or a new one. */
export function stepGesture(control: string): string {
  const nowMs = performance.now();
  const goesOn = run.control === control && nowMs - run.lastMs < RUN_WITHIN_MS;
  run = { control, gesture: goesOn ? run.gesture : newGesture(), lastMs: nowMs };
  return run.gesture;
}

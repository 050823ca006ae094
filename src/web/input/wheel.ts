/** Turns a mouse wheel or a trackpad into whole steps. Away from the hand is up, and up is positive. */

/** A notch of a mouse wheel reports at least this much, px. */
const NOTCH_FROM_PX = 50;
/** A trackpad reports small amounts; so much of them makes one step, px. */
const TRACKPAD_STEP_PX = 32;

/** A counter for one control: each call takes the wheel's report and gives the steps it makes, often 0. */
export function wheelSteps(): (event: WheelEvent) => number {
  let gathered = 0;
  return (event) => {
    // Some systems turn a wheel with Shift held into a sideways one.
    const along = event.deltaY === 0 ? event.deltaX : event.deltaY;
    if (event.deltaMode !== WheelEvent.DOM_DELTA_PIXEL || Math.abs(along) >= NOTCH_FROM_PX) {
      gathered = 0;
      return -Math.sign(along);
    }
    gathered -= along;
    const steps = Math.trunc(gathered / TRACKPAD_STEP_PX);
    gathered -= steps * TRACKPAD_STEP_PX;
    return steps + 0;
  };
}

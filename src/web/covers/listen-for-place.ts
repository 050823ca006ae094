/** Hears a press on the chart's ground that stays where it is: a place pointed at. A drag moves the paper, as ever. */

import type { ScreenPoint } from "../input/turn.ts";

/** A hand trembles: a press that moved no further than this is none of the paper's, px. */
const STILL_WITHIN_PX = 6;

/** Calls with the place on the paper, px from its top left corner, until the given clean-up is called. */
export function listenForPlace(ground: HTMLElement, point: (at: ScreenPoint) => void): () => void {
  let press: { readonly id: number; readonly x: number; readonly y: number } | null = null;
  let fingers = 0;
  const onDown = (event: PointerEvent) => {
    fingers += 1;
    const still = event.target === ground && event.button === 0 && fingers === 1;
    press = still ? { id: event.pointerId, x: event.clientX, y: event.clientY } : null;
  };
  const onMove = (event: PointerEvent) => {
    if (
      press?.id === event.pointerId &&
      Math.hypot(event.clientX - press.x, event.clientY - press.y) > STILL_WITHIN_PX
    )
      press = null;
  };
  const onUp = (event: PointerEvent) => {
    fingers = Math.max(0, fingers - 1);
    if (press?.id !== event.pointerId) return;
    press = null;
    const box = ground.getBoundingClientRect();
    point({
      x: event.clientX - box.left - ground.clientLeft,
      y: event.clientY - box.top - ground.clientTop,
    });
  };
  const onCancel = () => {
    fingers = 0;
    press = null;
  };
  ground.addEventListener("pointerdown", onDown);
  ground.addEventListener("pointermove", onMove);
  ground.addEventListener("pointerup", onUp);
  ground.addEventListener("pointercancel", onCancel);
  return () => {
    ground.removeEventListener("pointerdown", onDown);
    ground.removeEventListener("pointermove", onMove);
    ground.removeEventListener("pointerup", onUp);
    ground.removeEventListener("pointercancel", onCancel);
  };
}

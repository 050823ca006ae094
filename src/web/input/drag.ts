/** Follows one pointer from press to release, at most one call a frame, however fast the pointer reports. */

import { type ReadonlySignal, signal } from "@preact/signals";
import type { ScreenPoint } from "./turn.ts";

const handsDown = signal(0);
/** How many hands hold something at the moment: while it is not 0, what is drawn around the moving thing keeps its place. */
export const handsOnBench: ReadonlySignal<number> = handsDown;

/** Runs a job with the newest value once a frame. `flush` runs what is waiting at once. */
export function onceAFrame<T>(job: (newest: T) => void): { offer: (value: T) => void; flush: () => void } {
  let waiting: { readonly value: T } | null = null;
  let frame = 0;
  const run = () => {
    cancelAnimationFrame(frame);
    frame = 0;
    const due = waiting;
    waiting = null;
    if (due !== null) job(due.value);
  };
  return {
    offer: (value) => {
      waiting = { value };
      if (frame === 0) frame = requestAnimationFrame(run);
    },
    flush: run,
  };
}

/**
 * Call it from `pointerdown`: the element keeps the pointer until it is released, or taken away together with the element. A second
 * finger is not followed.
 */
export function followPointer(press: PointerEvent, move: (at: ScreenPoint) => void): void {
  const element = press.currentTarget;
  if (!(element instanceof Element)) return;
  element.setPointerCapture(press.pointerId);
  handsDown.value += 1;
  const moves = onceAFrame(move);
  const listening = new AbortController();
  const onMove = (event: Event) => {
    if (event instanceof PointerEvent && event.pointerId === press.pointerId)
      moves.offer({ x: event.clientX, y: event.clientY });
  };
  const onEnd = (event: Event) => {
    if (!(event instanceof PointerEvent) || event.pointerId !== press.pointerId) return;
    listening.abort();
    moves.flush();
    handsDown.value -= 1;
  };
  element.addEventListener("pointermove", onMove, listening);
  for (const end of ["pointerup", "pointercancel", "lostpointercapture"])
    element.addEventListener(end, onEnd, listening);
}

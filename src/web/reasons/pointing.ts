/**
 * Listens for what a person points at in chart, panel and signal: a mouse that rests, the focus by key, a click or a tap that asks to keep it.
 * Not while a hand holds something.
 */

import { handsOnBench } from "../input/drag.ts";
import { type PointedPart, partAt, partOf, partOfFocused } from "./part-at.ts";

export interface Pointing {
  /** Points at a part as long as the pointer or the focus stays; null when at none any more. */
  readonly point: (part: PointedPart | null) => void;
  /** Asked to keep it lit; null for a click at none. */
  readonly keep: (part: PointedPart | null) => void;
}

/** A mouse that stands still for so long points, ms: on its way it does not. */
const RESTS_AFTER_MS = 120;
/** A press that moved farther than this is a drag and no tap, px. */
const TAP_WITHIN_PX = 6;
/** A click on these does its own work, except where it asks why. */
const CONTROLS = "button, input, select, summary, label, a";
const ASKS = ".why, .hand";

/** Gives what ends the listening. */
export function listenToPointing({ point, keep }: Pointing): () => void {
  const listening = new AbortController();
  const options = { signal: listening.signal, passive: true };
  let timer = 0;
  let pressed: { readonly x: number; readonly y: number } | null = null;

  addEventListener(
    "pointermove",
    (event) => {
      clearTimeout(timer);
      // The steps themselves are pointed at as they are: no part lies under them.
      const onChain = event.target instanceof Element && event.target.closest(".chain") !== null;
      if (event.pointerType === "touch" || event.buttons !== 0 || onChain) return;
      timer = window.setTimeout(() => {
        if (handsOnBench.peek() === 0) point(partAt(event.clientX, event.clientY));
      }, RESTS_AFTER_MS);
    },
    options,
  );
  document.documentElement.addEventListener(
    "pointerleave",
    () => {
      clearTimeout(timer);
      point(null);
    },
    options,
  );
  addEventListener(
    "focusin",
    ({ target }) => {
      if (target instanceof Element && target.matches(":focus-visible")) point(partOfFocused(target));
    },
    options,
  );
  addEventListener(
    "focusout",
    ({ target }) => {
      if (target instanceof Element && partOfFocused(target) !== null) point(null);
    },
    options,
  );
  addEventListener(
    "pointerdown",
    (event) => {
      clearTimeout(timer);
      pressed = { x: event.clientX, y: event.clientY };
    },
    { ...options, capture: true },
  );
  addEventListener(
    "click",
    (event) => {
      const { target, clientX: x, clientY: y } = event;
      if (!(target instanceof Element) || target.closest(".chart-ground, .panel, .signal") === null) return;
      const control = target.closest(CONTROLS);
      if (control !== null && !control.matches(ASKS)) return;
      // A press of Enter or the space bar clicks too, and has no place.
      const byKey = event.detail === 0;
      if (!byKey && pressed !== null && Math.hypot(x - pressed.x, y - pressed.y) > TAP_WITHIN_PX) return;
      keep(partOf(target) ?? (byKey ? null : partAt(x, y)));
    },
    options,
  );
  addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "Escape" || event.defaultPrevented) return;
      point(null);
      keep(null);
    },
    options,
  );
  return () => {
    clearTimeout(timer);
    listening.abort();
  };
}

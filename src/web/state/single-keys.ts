/**
 * Keys that act when pressed alone (E, P, space, digits): a person who dictates, or whose hand slips, can switch them off. What has the
 * focus still takes its own keys.
 */

import type { Signal } from "@preact/signals";
import { remembered } from "./preferences.ts";

/** Call it before anything else listens for keys on the window: while the signal is off, such keys go no further. */
export function createSingleKeys(): Signal<boolean> {
  const on = remembered<boolean>(
    "single-keys",
    true,
    (text) => text !== "off",
    (value) => (value ? "on" : "off"),
  );
  addEventListener("keydown", (event) => {
    if (!on.value && isAlone(event)) event.stopImmediatePropagation();
  });
  return on;
}

const isAlone = ({ key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean =>
  [...key].length === 1 && !ctrlKey && !metaKey && !altKey;

/** What the bench remembers in this browser. Never needed: where storage is refused it forgets, and says nothing. */

import { effect, type Signal, signal } from "@preact/signals";

const PREFIX = "needlework.";

function recall(key: string): string | null {
  try {
    return localStorage.getItem(PREFIX + key);
  } catch {
    return null;
  }
}

function remember(key: string, value: string): void {
  try {
    localStorage.setItem(PREFIX + key, value);
  } catch {
    // A private window or a full store: the choice holds until the page closes.
  }
}

/** A signal kept across visits. `read` turns the stored text into a value, or null when it makes no sense. */
export function remembered<T>(
  key: string,
  otherwise: T,
  read: (text: string) => T | null,
  write: (value: T) => string,
): Signal<T> {
  const stored = recall(key);
  const kept = signal<T>((stored === null ? null : read(stored)) ?? otherwise);
  effect(() => remember(key, write(kept.value)));
  return kept;
}

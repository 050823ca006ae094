/** The state of the needle field on one chart: what is chosen, and what the last full plate turned out to hold. */

import { type Signal, signal } from "@preact/signals";
import {
  choiceFor,
  coverOver,
  type FieldChoice,
  type FieldShown,
  fieldFrom,
  fieldText,
} from "../../draw/index.ts";
import type { FieldReception } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import { remembered } from "../state/preferences.ts";

export type FieldParts = typeof import("./field-parts.ts");

export interface FieldState {
  readonly choice: Signal<FieldChoice>;
  readonly receptions: Signal<readonly FieldReception[]>;
  /** What shows a field; null until it has come. */
  readonly parts: Signal<FieldParts | null>;
}

/** One for the life of the page. The choice is remembered in this browser; what shows it is fetched at once where there is one. */
export function createFieldState(): FieldState {
  const choice = remembered<FieldChoice>("field", null, fieldFrom, fieldText);
  const state: FieldState = { choice, receptions: signal([]), parts: signal(null) };
  if (choice.value !== null) loadFieldParts(state);
  return state;
}

/** Fetches what shows a field. Where it cannot be had, the next press of the button tries again. */
export function loadFieldParts(state: FieldState): void {
  if (state.parts.value !== null) return;
  import("./field-parts.ts").then(
    (parts) => {
      state.parts.value = parts;
    },
    () => undefined,
  );
}

/** The field that the chart of a scene wears now; null where none is chosen, possible, or free of covers. */
export function fieldShown(state: FieldState, scene: Scene): FieldShown | null {
  const choice = choiceFor(scene, state.choice.value);
  return choice === null || coverOver(scene, choice) !== null ? null : choice;
}

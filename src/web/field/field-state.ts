/** The state of the needle field on one chart: what is chosen, and what the last full plate turned out to hold. */

import { type Signal, signal } from "@preact/signals";
import type { FieldReception } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import { choiceFor, coverOver, type FieldChoice, type FieldShown } from "./field-choice.ts";

export type FieldParts = typeof import("./field-parts.ts");

export interface FieldState {
  readonly choice: Signal<FieldChoice>;
  readonly receptions: Signal<readonly FieldReception[]>;
  /** What shows a field; null until the first is chosen and this has come. */
  readonly parts: Signal<FieldParts | null>;
}

export const fieldState = (): FieldState => ({
  choice: signal(null),
  receptions: signal([]),
  parts: signal(null),
});

/** Chooses a field, or none. Where what shows it cannot be fetched, the choice goes back to none, to be made again. */
export function chooseField(state: FieldState, choice: FieldChoice): void {
  state.choice.value = choice;
  if (choice === null || state.parts.value !== null) return;
  import("./field-parts.ts").then(
    (parts) => {
      state.parts.value = parts;
    },
    () => {
      state.choice.value = null;
    },
  );
}

/** The field that the chart of a scene wears now; null where none is chosen, possible, or free of covers. */
export function fieldShown(state: FieldState, scene: Scene): FieldShown | null {
  const choice = choiceFor(scene, state.choice.value);
  return choice === null || coverOver(scene, choice) !== null ? null : choice;
}

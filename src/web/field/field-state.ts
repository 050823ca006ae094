/** The state of the needle field on one chart: what is chosen, and what the last full plate turned out to hold. */

import { type Signal, signal } from "@preact/signals";
import { choiceFor, coverOver, type FieldChoice, type FieldShown } from "../../draw/index.ts";
import type { FieldReception } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";

export type FieldParts = typeof import("./field-parts.ts");

export interface FieldState {
  readonly choice: Signal<FieldChoice>;
  readonly receptions: Signal<readonly FieldReception[]>;
  /** What shows a field; null until it has come. */
  readonly parts: Signal<FieldParts | null>;
}

export const fieldState = (): FieldState => ({
  choice: signal(null),
  receptions: signal([]),
  parts: signal(null),
});

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

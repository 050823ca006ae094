/** The needle field's part of the chart's foot: the legend while a field is chosen, else what stood there, and the button. */

import type { ComponentChildren, JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import type { Bench } from "../state/bench.ts";
import { choiceFor } from "./field-choice.ts";
import { FieldLegend } from "./field-legend.tsx";
import { FieldMenu } from "./field-menu.tsx";
import type { FieldState } from "./field-state.ts";

export interface FieldFootProps {
  readonly bench: Bench;
  readonly state: FieldState;
  readonly theme: Theme;
  /** What gives way to the legend. */
  readonly children: ComponentChildren;
}

export function FieldFoot({ bench, state, theme, children }: FieldFootProps): JSX.Element {
  const scene = bench.scene.value;
  const choice = choiceFor(scene, state.choice.value);
  return (
    <>
      {choice === null ? (
        children
      ) : (
        <FieldLegend scene={scene} choice={choice} receptions={state.receptions.value} theme={theme} />
      )}
      <FieldMenu
        scene={scene}
        choice={choice}
        attended={bench.attended.value}
        onChoose={(next) => {
          state.choice.value = next;
        }}
      />
    </>
  );
}

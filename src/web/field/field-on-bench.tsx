/** The needle field's parts as the bench mounts them: the button among the chart's tools, the layer, the legend below the chart. */

import type { JSX } from "preact";
import { type ChartView, choiceFor, type Theme } from "../../draw/index.ts";
import type { Scene } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { FieldMenu } from "./field-menu.tsx";
import { type FieldState, fieldShown, loadFieldParts } from "./field-state.ts";

export interface FieldPartProps {
  readonly bench: Bench;
  readonly state: FieldState;
}

export function FieldTool({ bench, state }: FieldPartProps): JSX.Element {
  const scene = bench.scene.value;
  return (
    <FieldMenu
      scene={scene}
      choice={choiceFor(scene, state.choice.value)}
      attended={bench.attended.value}
      onChoose={(choice) => {
        state.choice.value = choice;
      }}
      parts={state.parts.value}
      onOpen={() => loadFieldParts(state)}
    />
  );
}

export interface ChartPaper {
  readonly scene: Scene;
  readonly view: ChartView;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly theme: Theme;
}

/** The layer between the chart's ground and its lines; null where there is none. Reads the state's signals. */
export function fieldLayer(state: FieldState, paper: ChartPaper): JSX.Element | null {
  const parts = state.parts.value;
  const choice = fieldShown(state, paper.scene);
  if (parts === null || choice === null) return null;
  return (
    <parts.NeedleField
      {...paper}
      choice={choice}
      onPlate={(receptions) => {
        state.receptions.value = receptions;
      }}
    />
  );
}

/** Nothing while no field is chosen. */
export function FieldKey({
  bench,
  state,
  theme,
}: FieldPartProps & { readonly theme: Theme }): JSX.Element | null {
  const scene = bench.scene.value;
  const choice = choiceFor(scene, state.choice.value);
  const parts = state.parts.value;
  if (parts === null || choice === null) return null;
  return (
    <parts.FieldLegend scene={scene} choice={choice} receptions={state.receptions.value} theme={theme} />
  );
}

/** A number that is typed or stepped: a direction through north, a quantity by its unit. */

import type { JSX } from "preact";
import { HoldButton } from "../input/hold-button.tsx";
import { stepped, steppedDirection } from "./draft.ts";

interface DialProps {
  readonly name: string;
  /** Whether the name is written beside it: where there are several. */
  readonly shown?: boolean;
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

export const DirectionDial = ({ name, shown = false, draft, onDraft }: DialProps): JSX.Element => (
  <StepRow
    name={name}
    shown={shown}
    draft={draft}
    onDraft={onDraft}
    digits={3}
    steps={[1, 10]}
    unit=""
    step={steppedDirection}
    stepWords={(by) => `${by} ${by === 1 ? "degree" : "degrees"}`}
  />
);

/** Small and large step, and where a first step begins, by unit. */
const NUMBER_STEPS = {
  NM: { steps: [0.1, 1], start: 10, words: "miles" },
  kt: { steps: [1, 10], start: 100, words: "knots" },
  min: { steps: [0.5, 5], start: 10, words: "minutes" },
  ft: { steps: [100, 1000], start: 3000, words: "feet" },
  degrees: { steps: [1, 10], start: 10, words: "degrees" },
} as const;

export function NumberDial({
  name,
  shown = false,
  unit,
  draft,
  onDraft,
}: DialProps & { readonly unit: keyof typeof NUMBER_STEPS }): JSX.Element {
  const { steps, start, words } = NUMBER_STEPS[unit];
  return (
    <StepRow
      name={name}
      shown={shown}
      draft={draft}
      onDraft={onDraft}
      digits={5}
      steps={steps}
      unit={unit}
      step={(typed, by) => stepped(typed, by, start)}
      stepWords={(by) => `${by} ${words}`}
    />
  );
}

interface StepRowProps extends DialProps {
  readonly digits: number;
  readonly steps: readonly [number, number];
  readonly unit: string;
  readonly step: (typed: string, by: number) => string;
  readonly stepWords: (by: number) => string;
}

/** A number between its steps: large, small, typed, small, large. Arrow keys step too. */
function StepRow({
  name,
  shown,
  draft,
  onDraft,
  digits,
  steps,
  unit,
  step,
  stepWords,
}: StepRowProps): JSX.Element {
  const [small, large] = steps;
  const button = (by: number) => (
    <HoldButton
      label={`${name} ${by < 0 ? "down" : "up"} ${stepWords(Math.abs(by))}`}
      onStep={() => onDraft(step(draft, by))}
    >
      {`${by < 0 ? "−" : "+"}${Math.abs(by)}`}
    </HoldButton>
  );
  return (
    <div class="practice-dial">
      {shown ? <span class="caption">{name}</span> : null}
      {button(-large)}
      {button(-small)}
      <span class="practice-dial-value">
        <input
          class="ask-field"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          maxLength={digits}
          style={{ width: `${Math.max(4, digits) + 1}ch` }}
          aria-label={unit === "" ? name : `${name}, ${unit}`}
          value={draft}
          onInput={(event) => onDraft(event.currentTarget.value)}
          onKeyDown={(event) => {
            const by = { ArrowUp: small, ArrowDown: -small, PageUp: large, PageDown: -large }[event.key];
            if (by === undefined) return;
            event.preventDefault();
            onDraft(step(draft, event.shiftKey && Math.abs(by) === small ? Math.sign(by) * large : by));
          }}
        />
        {unit === "" ? null : <span class="unit">{unit === "degrees" ? "°" : unit}</span>}
      </span>
      {button(small)}
      {button(large)}
    </div>
  );
}

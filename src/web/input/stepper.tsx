/**
 * A number that is typed, stepped with arrow keys or wheel, or clicked up and down: course, heading, altitude. What cannot be read is
 * explained below it, and the value stays.
 */

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { still } from "../../draw/index.ts";
import { arrowStep } from "./arrow-step.ts";
import { useClearedByNextPress } from "./cleared-by-next-press.ts";
import { HoldButton } from "./hold-button.tsx";
import { useWheel } from "./use-wheel.ts";

export interface StepperProps {
  readonly id: string;
  /** Full name for one who cannot see where it stands: "NAV1 course". */
  readonly name: string;
  /** The short word beside it. */
  readonly caption: string;
  /** As written: "070", "3,500". */
  readonly shown: string;
  readonly unit?: string;
  /** Longest text that can be shown, characters. */
  readonly widthCh: number;
  readonly now: number;
  readonly lowest: number;
  readonly highest: number;
  readonly stepBy: number;
  readonly bigStepBy: number;
  /** A step in words: "1 degree". */
  readonly stepWords: string;
  /** For what is typed with decimals. */
  readonly decimals?: boolean;
  readonly tone?: "course";
  /** Lit by a step of the argument that speaks of it. */
  readonly lit?: boolean;
  /** The value a typed text means, or the sentence that says what would be right. */
  readonly read: (text: string) => number | string;
  /** Whether so much text is whole, and need not wait for Enter. */
  readonly whole?: (text: string) => boolean;
  readonly onSet: (value: number) => void;
  readonly onStep: (by: number) => void;
}

export const Stepper = still(function Stepper(props: StepperProps): JSX.Element {
  const {
    id,
    name,
    caption,
    shown,
    unit,
    now,
    lowest,
    highest,
    stepBy,
    bigStepBy,
    stepWords,
    onSet,
    onStep,
  } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState("");
  useClearedByNextPress(fault !== "", () => setFault(""));
  const onWheel = useWheel({ stepBy, bigStepBy }, onStep);
  const take = (text: string) => {
    setTyped(null);
    const value = props.read(text);
    if (typeof value === "string") setFault(value);
    else {
      setFault("");
      onSet(value);
    }
  };
  const faultId = `${id}-fault`;
  return (
    <div class="stepper" data-tone={props.tone} data-lit={props.lit === true}>
      <label class="caption" for={id}>
        {caption}
      </label>
      <div class="stepper-row" onWheel={onWheel}>
        <HoldButton label={`${name} down ${stepWords}`} onStep={() => onStep(-stepBy)}>
          −
        </HoldButton>
        <span class="stepper-value">
          <input
            id={id}
            class="number-input"
            style={{ width: `${props.widthCh + 0.6}ch` }}
            type="text"
            inputMode={props.decimals === true ? "decimal" : "numeric"}
            autocomplete="off"
            spellcheck={false}
            role="spinbutton"
            aria-label={name}
            aria-valuenow={now}
            aria-valuemin={lowest}
            aria-valuemax={highest}
            aria-valuetext={unit === undefined ? shown : `${shown} ${unit}`}
            aria-invalid={fault !== ""}
            aria-describedby={fault === "" ? undefined : faultId}
            value={typed ?? shown}
            onFocus={(event) => event.currentTarget.select()}
            onInput={(event) => {
              const text = event.currentTarget.value;
              if (props.whole?.(text.trim())) {
                take(text.trim());
                event.currentTarget.select();
              } else setTyped(text);
            }}
            onBlur={() => {
              if (typed !== null) take(typed.trim());
            }}
            onKeyDown={(event) => {
              if (event.key === "Enter") {
                take((typed ?? shown).trim());
                event.currentTarget.select();
              } else if (event.key === "Escape") {
                setTyped(null);
                setFault("");
              } else {
                const by = arrowStep(event, stepBy, bigStepBy);
                // Left and right stay with the text caret here.
                if (by === null || event.key === "ArrowLeft" || event.key === "ArrowRight") return;
                event.preventDefault();
                setTyped(null);
                onStep(by);
              }
            }}
          />
          {unit === undefined ? null : <span class="unit">{unit}</span>}
        </span>
        <HoldButton label={`${name} up ${stepWords}`} onStep={() => onStep(stepBy)}>
          +
        </HoldButton>
      </div>
      <p class="fault" id={faultId} role="status">
        {fault === "" ? null : fault}
      </p>
    </div>
  );
});

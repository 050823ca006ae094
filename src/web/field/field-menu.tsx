/** The button that colours the chart: which field, of which receiver. */

import type { JSX } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import { AIRBORNE_CHECK_ERROR_DEG, GROUND_CHECK_ERROR_DEG } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";
import { FIELD_KINDS, type FieldChoice, type FieldKind, newChoice } from "./field-choice.ts";
import { KIND_NAMES } from "./field-words.ts";

export interface FieldMenuProps {
  readonly scene: Scene;
  /** As `choiceFor` gives it. */
  readonly choice: FieldChoice;
  /** The receiver that a field is of at first. */
  readonly attended: string;
  readonly onChoose: (choice: FieldChoice) => void;
}

export function FieldMenu({ scene, choice, attended, onChoose }: FieldMenuProps): JSX.Element {
  const [isOpen, setOpen] = useState(false);
  const whole = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  useEffect(() => {
    if (!isOpen) return;
    const onPress = (event: PointerEvent) => {
      if (event.target instanceof Node && whole.current?.contains(event.target) !== true) setOpen(false);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      setOpen(false);
      button.current?.focus();
    };
    addEventListener("pointerdown", onPress, true);
    addEventListener("keydown", onKey, true);
    return () => {
      removeEventListener("pointerdown", onPress, true);
      removeEventListener("keydown", onKey, true);
    };
  }, [isOpen]);
  const names = scene.receivers.map(({ name }) => name);
  const choose = (kind: FieldKind) =>
    onChoose(choice === null ? newChoice(kind, attended) : { ...choice, kind });
  const option = (kind: FieldKind | null, words: string, disabled = false) => (
    <label key={words}>
      <input
        type="radio"
        name={`${id}-kind`}
        checked={(choice?.kind ?? null) === kind}
        disabled={disabled}
        onChange={() => (kind === null ? onChoose(null) : choose(kind))}
      />
      {words}
    </label>
  );
  return (
    <div class="tool-row field-menu" ref={whole}>
      <button
        type="button"
        data-on={choice !== null}
        ref={button}
        aria-expanded={isOpen}
        aria-controls={`${id}-panel`}
        title="Colour the chart by what the needle would show at every place"
        onClick={() => setOpen(!isOpen)}
      >
        Field{choice === null ? "" : `: ${KIND_NAMES[choice.kind]}`}
      </button>
      {isOpen ? (
        <fieldset class="sheet field-panel" id={`${id}-panel`}>
          <legend class="unseen">Colour the chart by</legend>
          <p aria-hidden="true">Colour the chart by</p>
          {option(null, "Nothing")}
          {FIELD_KINDS.map((kind) => option(kind, KIND_NAMES[kind], kind === "fix" && names.length < 2))}
          {choice === null ? null : (
            <>
              <Pick
                label={choice.kind === "fix" ? "First receiver" : "Receiver"}
                value={choice.receiver}
                options={names}
                onPick={(receiver) => onChoose({ ...choice, receiver })}
              />
              {choice.kind === "fix" ? (
                <>
                  <Pick
                    label="Second receiver"
                    value={choice.other}
                    options={names.filter((name) => name !== choice.receiver)}
                    onPick={(other) => onChoose({ ...choice, other })}
                  />
                  <Pick
                    label="Checked"
                    value={String(choice.allowedErrorDeg)}
                    options={CHECKS.map(({ allowedErrorDeg }) => String(allowedErrorDeg))}
                    words={CHECKS.map(({ words }) => words)}
                    onPick={(value) => onChoose({ ...choice, allowedErrorDeg: Number(value) })}
                  />
                </>
              ) : null}
            </>
          )}
        </fieldset>
      ) : null}
    </div>
  );
}

/** What a receiver check allows: 14 CFR 91.171. */
const CHECKS = [
  { allowedErrorDeg: GROUND_CHECK_ERROR_DEG, words: `on the ground, ${GROUND_CHECK_ERROR_DEG}°` },
  { allowedErrorDeg: AIRBORNE_CHECK_ERROR_DEG, words: `in the air, ${AIRBORNE_CHECK_ERROR_DEG}°` },
] as const;

interface PickProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly string[];
  /** What the options say, where it is not what they are. */
  readonly words?: readonly string[];
  readonly onPick: (value: string) => void;
}

function Pick({ label, value, options, words = options, onPick }: PickProps): JSX.Element {
  return (
    <label class="pick">
      <span>{label}</span>
      <select value={value} onChange={(event) => onPick(event.currentTarget.value)}>
        {options.map((option, index) => (
          <option key={option} value={option}>
            {words[index]}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What the field's button opens: which field, of which receiver. */

import type { JSX } from "preact";
import { FIELD_KINDS, type FieldChoice, type FieldKind, KIND_NAMES, newChoice } from "../../draw/index.ts";
import { AIRBORNE_CHECK_ERROR_DEG, GROUND_CHECK_ERROR_DEG } from "../../panel/index.ts";
import type { Scene } from "../../scene/index.ts";

export interface FieldPanelProps {
  readonly id: string;
  readonly scene: Scene;
  /** As `choiceFor` gives it. */
  readonly choice: FieldChoice;
  /** The receiver that a field is of at first. */
  readonly attended: string;
  readonly onChoose: (choice: FieldChoice) => void;
}

export function FieldPanel({ id, scene, choice, attended, onChoose }: FieldPanelProps): JSX.Element {
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
    <fieldset class="sheet field-panel" id={id}>
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

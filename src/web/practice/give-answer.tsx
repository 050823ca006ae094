/** Where an answer is put together and given: the input that the problem wants, how sure one is, and the way out of not knowing. */

import type { JSX } from "preact";
import { useEffect, useId, useState } from "preact/hooks";
import type { Confidence, Options, Problem } from "../../practice/index.ts";
import { missing, optionTexts } from "./draft.ts";
import { OptionButtons } from "./option-buttons.tsx";
import { useOptionKeys } from "./option-keys.ts";
import type { Practice } from "./practice-state.ts";
import type { Asked } from "./run.ts";
import { TellInput } from "./tell-input.tsx";

export interface GiveAnswerProps {
  readonly practice: Practice;
  readonly problem: Problem;
  /** Null where the answer is told. */
  readonly options: Options | null;
  readonly asked: Asked;
}

const CONFIDENCES: readonly (readonly [Confidence, string])[] = [
  ["sure", "Sure"],
  ["think-so", "I think so"],
  ["guess", "A guess"],
];

export function GiveAnswer({ practice, problem, options, asked }: GiveAnswerProps): JSX.Element {
  const [fault, setFault] = useState("");
  const id = useId();
  useEffect(() => setFault(""), [asked.draft]);
  useOptionKeys(options === null ? 0 : options.options.length, practice.draft);
  return (
    <form
      class="practice-form"
      aria-describedby={fault === "" ? undefined : `${id}-fault`}
      onSubmit={(event) => {
        event.preventDefault();
        const why = missing(problem, options, asked.draft);
        if (why === null) practice.give("answer");
        else setFault(why);
      }}
    >
      {options === null ? (
        <TellInput problem={problem} draft={asked.draft} onDraft={practice.draft} />
      ) : (
        <OptionButtons
          legend={problem.case.scene.ask}
          texts={optionTexts(problem, options)}
          draft={asked.draft}
          onDraft={practice.draft}
        />
      )}
      <p class="fault" id={`${id}-fault`} role="status">
        {fault}
      </p>
      <fieldset class="practice-choice practice-confidence">
        <legend>How sure are you?</legend>
        {CONFIDENCES.map(([confidence, words]) => (
          <label key={confidence}>
            <input
              type="radio"
              name={`${id}-confidence`}
              checked={asked.confidence === confidence}
              onChange={() => practice.confide(confidence)}
            />
            <span>{words}</span>
          </label>
        ))}
      </fieldset>
      <p class="practice-acts">
        <button type="submit" class="button primary">
          Check
        </button>
        <button type="button" class="button" onClick={() => practice.give("dont-know")}>
          I don't know yet
        </button>
      </p>
    </form>
  );
}

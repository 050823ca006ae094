/** Where a guess is put together, by what is asked: a place, a needle, a flag, a direction, or words. */

import type { JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import type { Flag } from "../../panel/index.ts";
import type { Answer, AnswerKind } from "./guess.ts";
import { NeedleInput } from "./needle-input.tsx";

export interface AnswerInputProps {
  readonly id: string;
  readonly kind: AnswerKind;
  /** "NAV1 needle". */
  readonly name: string;
  readonly prompt: string;
  readonly draft: Answer | null;
  readonly theme: Theme;
  /** What has been typed so far. */
  readonly typed: string;
  /** Why the typed text is no guess; empty while it may be one. */
  readonly fault: string;
  readonly onType: (text: string) => void;
  readonly onDraft: (answer: Answer) => void;
}

const FLAGS: readonly Flag[] = ["TO", "FROM", "OFF"];

export function AnswerInput(props: AnswerInputProps): JSX.Element {
  const { kind, name, prompt, draft, theme, onDraft } = props;
  switch (kind) {
    case "needle":
      return (
        <>
          <p class="ask-prompt">{prompt}</p>
          <NeedleInput
            name={name}
            dots={draft?.kind === "needle" ? draft.dots : undefined}
            theme={theme}
            onLay={(dots) => onDraft({ kind: "needle", dots })}
          />
        </>
      );
    case "flag":
      return (
        <fieldset class="flag-choice">
          <legend class="ask-prompt">{prompt}</legend>
          {FLAGS.map((flag) => (
            <label key={flag}>
              <input
                type="radio"
                name={`${props.id}-flag`}
                checked={draft?.kind === "flag" && draft.flag === flag}
                onChange={() => onDraft({ kind: "flag", flag })}
              />
              <span>{flag}</span>
            </label>
          ))}
        </fieldset>
      );
    case "place":
      return <TextInput {...props} placeholder="ident radial/NM" capitals />;
    case "direction":
      return <TextInput {...props} placeholder="three digits" digits />;
    case "words":
      return <TextInput {...props} placeholder="" />;
  }
}

interface TextInputProps extends AnswerInputProps {
  readonly placeholder: string;
  readonly capitals?: boolean;
  readonly digits?: boolean;
}

function TextInput(props: TextInputProps): JSX.Element {
  const { id, kind, prompt, typed, fault, onType } = props;
  return (
    <div class="ask-text">
      <label class="ask-prompt" for={id}>
        {prompt}
      </label>
      <input
        id={id}
        class="ask-field"
        data-kind={kind}
        type="text"
        inputMode={props.digits ? "numeric" : "text"}
        maxLength={props.digits ? 3 : 200}
        autocomplete="off"
        autocapitalize={props.capitals ? "characters" : "off"}
        spellcheck={false}
        placeholder={props.placeholder}
        aria-invalid={fault !== ""}
        aria-describedby={fault === "" ? undefined : `${id}-fault`}
        value={typed}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <p class="fault" id={`${id}-fault`} role="status">
        {fault}
      </p>
    </div>
  );
}

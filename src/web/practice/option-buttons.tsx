/** Answers to choose from, each a button as wide as a thumb wants it. */

import type { JSX } from "preact";
import { type AnswerText, letterOf } from "./draft.ts";

export interface OptionButtonsProps {
  readonly legend: string;
  readonly texts: readonly AnswerText[];
  readonly draft: string;
  readonly onDraft: (draft: string) => void;
}

/** The draft is the option's letter; its digit chooses it too (see `option-keys.ts`). */
export function OptionButtons({ legend, texts, draft, onDraft }: OptionButtonsProps): JSX.Element {
  const longest = Math.max(...texts.map(({ text }) => text.length));
  return (
    <fieldset
      class="practice-options"
      data-length={longest <= 4 ? "short" : longest <= 14 ? "middling" : "long"}
    >
      <legend class="unseen">{legend}</legend>
      {texts.map(({ text, key }, place) => (
        <label key={key} class="practice-option">
          <input
            type="radio"
            name="practice-option"
            checked={draft === letterOf(place)}
            onChange={() => onDraft(letterOf(place))}
          />
          <span class="option-letter" aria-hidden="true">
            {letterOf(place)}
          </span>
          <span class="option-text">{text}</span>
        </label>
      ))}
    </fieldset>
  );
}

/**
 * A reading that can be asked about: reached by key, it lights the steps that made it; pressed, it keeps them lit. One such button beside
 * each dial for needle, flag and DME serves who has no pointer, without keys of its own to learn.
 */

import type { ComponentChildren, JSX } from "preact";
import type { Part } from "../../reason/index.ts";

export interface WhyButtonProps {
  readonly receiver: string;
  readonly part: Part;
  /** "needle", "DME". */
  readonly what: string;
  /** As a voice says it: "2 dots left". */
  readonly words: string;
  readonly lit: boolean;
  /** As it is written. */
  readonly children: ComponentChildren;
}

export const WhyButton = ({ receiver, part, what, words, lit, children }: WhyButtonProps): JSX.Element => (
  <button
    type="button"
    class="why"
    data-part={part}
    data-receiver={receiver}
    data-lit={lit}
    aria-label={`${receiver} ${what} ${words}, why?`}
  >
    {children}
  </button>
);

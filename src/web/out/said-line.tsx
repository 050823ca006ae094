/** The quiet line at the foot of the page, or of a dialog that lies over it. */

import type { JSX } from "preact";
import type { Said } from "./said.ts";

export function SaidLine({ said }: { readonly said: Said }): JSX.Element {
  const { text, count } = said.line.value;
  return (
    <p class="said" role="status" data-empty={text === ""}>
      {/* A new element for each saying: the same words are then read out again. */}
      <span key={count}>{text}</span>
    </p>
  );
}

/** A paper slip for the newcomer: three things to try, each ticked when done. */

import type { JSX } from "preact";
import { FIRST_STEPS, type FirstMinute, type FirstStep } from "../state/first-minute.ts";

const WORDS: Readonly<Record<FirstStep, string>> = {
  drag: "Drag the dart",
  turn: "Turn the course",
  why: "Point at a reason",
};

export function FirstMinuteSlip({ firstMinute }: { readonly firstMinute: FirstMinute }): JSX.Element | null {
  if (firstMinute.over.value) return null;
  return (
    <aside class="slip" aria-label="First steps">
      <ol>
        {FIRST_STEPS.map((step, index) => {
          const done = firstMinute.done.value.has(step);
          return (
            <li key={step} data-done={done}>
              <span class="bead" aria-hidden="true">
                {done ? "✓" : index + 1}
              </span>
              {WORDS[step]}
              {done ? <span class="unseen"> (done)</span> : null}
            </li>
          );
        })}
      </ol>
      <button type="button" class="quiet" onClick={firstMinute.skip} aria-label="Hide the first steps">
        Hide
      </button>
    </aside>
  );
}

/** Press to hear what is on the receiver's channel, press again to stop. Says to a screen reader what is heard. */

import type { JSX } from "preact";
import { CoveredNote } from "../panel/covered-note.tsx";
import type { Bench } from "../state/bench.ts";
import { identSentence, toldOf } from "./ident-words.ts";
import type { Identify } from "./identify.ts";

export interface IdentifyButtonProps {
  readonly bench: Bench;
  readonly identify: Identify;
  /** The receiver's name. */
  readonly receiver: string;
}

export function IdentifyButton({ bench, identify, receiver }: IdentifyButtonProps): JSX.Element {
  const { scene, receivers } = bench.situation.value;
  const told = toldOf(receiver, scene.covers);
  if (told === "nothing") return <CoveredNote what="ident" />;
  const on = identify.playing.value === receiver;
  const reading = receivers.find(({ settings }) => settings.name === receiver);
  return (
    <>
      <button
        type="button"
        class="button identify-button"
        aria-label={`Identify ${receiver}`}
        aria-pressed={on}
        onClick={() => identify.toggle(receiver)}
      >
        Identify
      </button>
      <span class="unseen" role="status">
        {on && reading !== undefined ? identSentence(receiver, reading.ident, told) : ""}
      </span>
    </>
  );
}

/**
 * The argument as a numbered chain. Pointing at a step, or reaching it by key, lights what it speaks of in chart and panel;
 * a click or a tap keeps it lit.
 */

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Reason } from "../../reason/index.ts";
import type { Bench } from "../state/bench.ts";

export interface ReasonsViewProps {
  readonly bench: Bench;
  readonly onPointedAt: () => void;
}

export function ReasonsView({ bench, onPointedAt }: ReasonsViewProps): JSX.Element {
  const reasons = bench.reasons.value;
  const attended = bench.attended.value;
  // The argument names what it argues from: it waits until nothing is covered.
  const covered = bench.scene.value.covers.length > 0;
  const [pinned, setPinned] = useState<string | null>(null);
  const [pointed, setPointed] = useState<string | null>(null);
  const litRule = pointed ?? pinned;
  const litReason = reasons.find((reason) => reason.rule === litRule) ?? null;
  useEffect(() => {
    bench.lit.value = litReason === null ? null : { receiver: litReason.receiver, parts: litReason.parts };
  }, [bench, litReason]);
  const point = (reason: Reason | null) => {
    setPointed(reason?.rule ?? null);
    if (reason !== null) onPointedAt();
  };
  return (
    <section class="sheet reasons" aria-labelledby="reasons-title">
      <header class="reasons-head">
        <h2 id="reasons-title">Why it reads so</h2>
        <ReceiverTabs bench={bench} />
      </header>
      {covered ? (
        <Withheld onLift={() => bench.act({ kind: "lift-covers" })} />
      ) : (
        <div class="argument">
          <ol class="chain" aria-label={`Why ${attended} reads so`} onPointerLeave={() => point(null)}>
            {reasons.map((reason) => (
              <li key={reason.rule} data-lit={reason === litReason}>
                <button
                  type="button"
                  class="link"
                  aria-pressed={pinned === reason.rule}
                  onPointerEnter={(event) => {
                    if (event.pointerType === "mouse") point(reason);
                  }}
                  onFocus={(event) => {
                    if (event.currentTarget.matches(":focus-visible")) point(reason);
                  }}
                  onBlur={() => point(null)}
                  onClick={() => {
                    setPinned(pinned === reason.rule ? null : reason.rule);
                    onPointedAt();
                  }}
                  onKeyDown={(event) => {
                    if (event.key === "Escape") {
                      setPinned(null);
                      setPointed(null);
                    }
                  }}
                >
                  <span class="bead" aria-hidden="true">
                    {reason.number}
                  </span>
                  <span class="link-words">
                    <strong>{reason.title}</strong> <span class="sentence">{reason.sentence}</span>
                  </span>
                </button>
              </li>
            ))}
          </ol>
          <Cautions bench={bench} />
        </div>
      )}
      {covered ? null : <p class="source">{litReason === null ? "" : `Rule: ${litReason.source}`}</p>}
    </section>
  );
}

/** In place of the argument while something is covered. */
const Withheld = ({ onLift }: { readonly onLift: () => void }): JSX.Element => (
  <div class="withheld">
    <p class="covered">covered: the reasons</p>
    <button type="button" class="button" onClick={onLift}>
      Lift the covers
    </button>
  </div>
);

/** What a good-looking panel does not say. */
function Cautions({ bench }: { readonly bench: Bench }): JSX.Element | null {
  const { cautions } = bench.situation.value;
  if (cautions.length === 0) return null;
  return (
    <ul class="cautions" aria-label="Cautions">
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}

/** Whose argument is shown. Touching a receiver's controls chooses it too. */
function ReceiverTabs({ bench }: { readonly bench: Bench }): JSX.Element | null {
  const receivers = bench.scene.value.receivers;
  if (receivers.length < 2) return null;
  return (
    <fieldset class="tabs" aria-label="Receiver argued about">
      {receivers.map(({ name }) => (
        <button
          key={name}
          type="button"
          aria-pressed={name === bench.attended.value}
          onClick={() => bench.attend(name)}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}

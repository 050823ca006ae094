/** Opens what an instructor gave out: a code, a link, or a set's file. */

import type { JSX } from "preact";
import { useId, useState } from "preact/hooks";
import { type Offer, offerOf, offerOfFile } from "./offers.ts";
import type { Practice } from "./practice-state.ts";

export interface OpenSetProps {
  readonly practice: Practice;
  readonly onOffer: (offer: Offer | null) => void;
}

export function OpenSet({ practice, onOffer }: OpenSetProps): JSX.Element {
  const [typed, setTyped] = useState("");
  const id = useId();
  const { isles, links } = practice;
  return (
    <section class="sheet" aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>Open a set or a code</h3>
      <form
        class="practice-open"
        onSubmit={(event) => {
          event.preventDefault();
          void offerOf(typed, isles, links).then((offer) => {
            if (offer.kind === "set" && offer.plan.title === "" && offer.plan.codes.length === 1)
              practice.start(offer.plan);
            else onOffer(offer);
          });
        }}
      >
        <label class="practice-typed">
          <span>Open a problem by its code, or paste the link of a set</span>
          <input
            class="ask-field"
            type="text"
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            placeholder="such as 4K7-Q2M-9XD"
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </label>
        <p class="practice-acts">
          <button type="submit" class="button">
            Open
          </button>
          <label class="button file-button">
            Open a set's file…
            <input
              type="file"
              accept=".yaml,.yml"
              onChange={(event) => {
                const input = event.currentTarget;
                const [file] = input.files ?? [];
                if (file === undefined) return;
                void file
                  .text()
                  .then((text) => offerOfFile(text, file.name, isles, links))
                  .then(onOffer)
                  .finally(() => {
                    input.value = "";
                  });
              }}
            />
          </label>
        </p>
      </form>
    </section>
  );
}

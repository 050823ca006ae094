/** What the set shall practise and tell apart. */

import type { JSX } from "preact";
import { MODES, type Mode, SKILL_BANDS, SKILLS, SLIPS, slipOf } from "../../practice/index.ts";
import { BAND_TITLES } from "../practice/scopes.ts";
import type { SetDesk } from "./set-desk.ts";
import { toggled } from "./wishes.ts";

const MODE_WORDS: Readonly<Record<Mode, string>> = {
  choose: "choosing among answers",
  tell: "writing the answer",
};

export interface WishFormViewProps {
  readonly desk: SetDesk;
  /** The title of the scene on the bench. */
  readonly benchTitle: string;
}

export function WishFormView({ desk, benchTitle }: WishFormViewProps): JSX.Element {
  const form = desk.wishes.value;
  const ground = desk.ground.value;
  return (
    <form
      class="sheet set-wishes"
      aria-labelledby="wishes-title"
      onSubmit={(event) => {
        event.preventDefault();
        desk.make();
      }}
    >
      <h2 id="wishes-title">Make a set</h2>
      <label class="practice-typed">
        <span>Title, at the head of the sheet</span>
        <input
          class="ask-field"
          type="text"
          value={form.title}
          placeholder="Problems"
          onInput={(event) => desk.wish({ title: event.currentTarget.value })}
        />
      </label>
      <div class="set-numbers">
        <label class="practice-typed">
          <span>Problems</span>
          <input
            class="ask-field"
            type="text"
            inputMode="numeric"
            value={form.count}
            onInput={(event) => desk.wish({ count: event.currentTarget.value })}
          />
        </label>
        <label class="practice-typed">
          <span>Seed</span>
          <input
            class="ask-field"
            type="text"
            inputMode="numeric"
            value={form.seed}
            onInput={(event) => desk.wish({ seed: event.currentTarget.value })}
          />
        </label>
        <label class="practice-typed">
          <span>Answered by</span>
          <select
            value={form.mode}
            onChange={(event) =>
              desk.wish({ mode: MODES.find((mode) => mode === event.currentTarget.value) ?? "choose" })
            }
          >
            {MODES.map((mode) => (
              <option key={mode} value={mode}>
                {MODE_WORDS[mode]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <label class="practice-typed">
        <span>On the stations of</span>
        <select
          value={ground}
          onChange={(event) => desk.standOn(event.currentTarget.value === "bench" ? "bench" : "isles")}
        >
          <option value="isles">the Ostrelle Isles</option>
          <option value="bench">the scene on the bench: {benchTitle}</option>
        </select>
      </label>
      <details open={form.skills.length > 0}>
        <summary>
          Skills <span class="caption">{form.skills.length === 0 ? "all" : form.skills.length}</span>
        </summary>
        {SKILL_BANDS.map((band) => (
          <fieldset key={band}>
            <legend>{BAND_TITLES[band]}</legend>
            {SKILLS.filter((skill) => skill.band === band).map(({ id, title }) => (
              <Tick
                key={id}
                words={title}
                on={form.skills.includes(id)}
                onChange={() => desk.wish({ skills: toggled(form.skills, id) })}
              />
            ))}
          </fieldset>
        ))}
      </details>
      <details open={form.slips.length > 0}>
        <summary>
          Mistaken ideas to tell apart{" "}
          <span class="caption">{form.slips.length === 0 ? "any" : form.slips.length}</span>
        </summary>
        <fieldset>
          <legend class="unseen">Mistaken ideas</legend>
          {SLIPS.map(({ id }) => (
            <Tick
              key={id}
              words={`“${slipOf(id).name}”`}
              on={form.slips.includes(id)}
              onChange={() => desk.wish({ slips: toggled(form.slips, id) })}
            />
          ))}
        </fieldset>
      </details>
      <label class="practice-typed">
        <span>A word to the learners, under the title</span>
        <textarea
          class="ask-field"
          rows={2}
          value={form.note}
          onInput={(event) => desk.wish({ note: event.currentTarget.value })}
        />
      </label>
      <button type="submit" class="button primary">
        Make the set
      </button>
    </form>
  );
}

interface TickProps {
  readonly words: string;
  readonly on: boolean;
  readonly onChange: () => void;
}

const Tick = ({ words, on, onChange }: TickProps): JSX.Element => (
  <label class="set-tick">
    <input type="checkbox" checked={on} onChange={onChange} />
    <span>{words}</span>
  </label>
);

/** Where practice begins: what can be done, so that a newcomer sees it in a minute, and what waits to be gone on with. */

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Offer } from "./offers.ts";
import { OpenSet } from "./open-set.tsx";
import type { Practice } from "./practice-state.ts";
import { todayOf } from "./practice-state.ts";
import { RecordInOut } from "./record-in-out.tsx";
import { lengthOf, type Run, turnsDone } from "./run.ts";
import { SCOPES, WHOLE_COURSE } from "./scopes.ts";
import { SkillList } from "./skill-list.tsx";
import { dueToday, planTitle } from "./words.ts";

export interface StartScreenProps {
  readonly practice: Practice;
  /** A set or a problem that the address or a file has brought; null for none. */
  readonly offer: Offer | null;
  readonly onOffer: (offer: Offer | null) => void;
}

export function StartScreen({ practice, offer, onOffer }: StartScreenProps): JSX.Element {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const runs = practice.runs.value;
  const learnt = practice.learnt.value;
  const due = dueToday(learnt, todayOf(new Date()));
  return (
    <div class="practice-start">
      <header>
        <h2 ref={title} tabIndex={-1}>
          {learnt.events.length === 0 ? "Find out what the needle tells you" : "Welcome back"}
        </h2>
        <p class="practice-lead">
          Each problem shows a situation with one part covered, and asks what lies under the cover. A wrong
          answer is shown as the world it would come from, beside the true one. You may always say “I don't
          know yet”. Everything stays in this browser.
        </p>
      </header>
      {offer === null ? null : <OfferCard practice={practice} offer={offer} onOffer={onOffer} />}
      {runs.length === 0 ? null : (
        <section class="sheet practice-continue" aria-labelledby="continue-title">
          <h3 id="continue-title">Continue</h3>
          {runs.map((run) => (
            <button
              key={run.startedAt}
              type="button"
              class="button primary"
              onClick={() => void practice.goOn(run)}
            >
              {planTitle(run.plan)} <span class="where">{whereIn(run)}</span>
            </button>
          ))}
        </section>
      )}
      <div class="practice-ways">
        <Find practice={practice} />
        <section class="sheet" aria-labelledby="due-title">
          <h3 id="due-title">Reviews due today</h3>
          <p>
            {due.length === 0
              ? learnt.cards.length === 0
                ? "What you get right comes back after some days, to stay known. Nothing is due yet."
                : "Nothing is due today."
              : "What you once got right, asked again in a new scene before it fades."}
          </p>
          <p class="practice-acts">
            <button
              type="button"
              class="button"
              disabled={due.length === 0}
              onClick={() => practice.start({ kind: "review", cards: due.map(({ id }) => id) })}
            >
              {due.length === 0 ? "No reviews due" : `Review ${due.length}`}
            </button>
          </p>
        </section>
        <OpenSet practice={practice} onOffer={onOffer} />
        <RecordInOut practice={practice} />
      </div>
      <SkillList practice={practice} />
    </div>
  );
}

function whereIn(run: Run): string {
  const length = lengthOf(run);
  const done = turnsDone(run);
  return length === null ? `${done} answered` : `${done} of ${length} answered`;
}

function OfferCard({ practice, offer, onOffer }: StartScreenProps & { readonly offer: Offer }): JSX.Element {
  return (
    <section class="sheet practice-offer" aria-labelledby="offer-title">
      <h3 id="offer-title">{offer.kind === "fault" ? "This cannot be opened" : planTitle(offer.plan)}</h3>
      {offer.kind === "fault" ? (
        offer.says.map((sentence) => (
          <p key={sentence} class="fault">
            {sentence}
          </p>
        ))
      ) : (
        <>
          {offer.plan.note === "" ? null : <p>{offer.plan.note}</p>}
          {offer.notes.map((note) => (
            <p key={note} class="note">
              {note}
            </p>
          ))}
        </>
      )}
      <p class="practice-acts">
        {offer.kind === "fault" ? null : (
          <button
            type="button"
            class="button primary"
            onClick={() => {
              onOffer(null);
              practice.start(offer.plan);
            }}
          >
            {offer.plan.codes.length === 1 ? "Start it" : `Start: ${offer.plan.codes.length} problems`}
          </button>
        )}
        <button type="button" class="button" onClick={() => onOffer(null)}>
          Put it away
        </button>
      </p>
    </section>
  );
}

function Find({ practice }: { readonly practice: Practice }): JSX.Element {
  const [scope, setScope] = useState(SCOPES[0]?.id ?? WHOLE_COURSE);
  return (
    <section class="sheet" aria-labelledby="find-title">
      <h3 id="find-title">Find out what I'm missing</h3>
      <p>
        Up to twenty problems, each chosen by your answers so far, until it is clear which mistaken idea
        stands in your way, if any.
      </p>
      <label class="practice-typed">
        <span>In which part?</span>
        <select value={scope} onChange={(event) => setScope(event.currentTarget.value)}>
          {SCOPES.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      {scope === WHOLE_COURSE ? (
        <p class="note">
          Over all forty ideas at once this is a first look: it says where to look closer, and may miss some.
        </p>
      ) : null}
      <p class="practice-acts">
        <button type="button" class="button primary" onClick={() => practice.start({ kind: "find", scope })}>
          Find out
        </button>
      </p>
    </section>
  );
}

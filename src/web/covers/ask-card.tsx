/**
 * The card on which a covered scene is answered: guess, lift the cover, see guess and truth together. Nothing on it knows what lies under a
 * strip until the strip is gone.
 */

import type { JSX } from "preact";
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { parseCover } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { type Asking, askingOf, type Question } from "./asking.ts";
import { coverWords } from "./cover-words.ts";
import { GivenGuesses } from "./given-guesses.tsx";
import { GuessForm } from "./guess-form.tsx";
import { comparisonOf, Outcome } from "./outcome.tsx";

export interface AskCardProps {
  readonly bench: Bench;
  readonly theme: Theme;
  /** On a phone the card is folded to one line until it is wanted: chart and panel need the room. */
  readonly foldable: boolean;
  /** The cover is off: where the reasons are put away, they are wanted now. */
  readonly onLifted: () => void;
}

/** Null while nothing is covered and nothing was guessed. */
export function AskCard({ bench, theme, foldable, onLifted }: AskCardProps): JSX.Element | null {
  const asking = askingOf(bench);
  const question = asking.asked.value;
  const card = useRef<HTMLElement>(null);
  const [unfolded, setUnfolded] = useState(false);
  const called = asking.called.value;
  const heard = useRef(called);
  useEffect(() => {
    if (called === heard.current) return;
    heard.current = called;
    setUnfolded(true);
    requestAnimationFrame(() => card.current?.querySelector<HTMLElement>(FIRST_TO_ANSWER)?.focus());
  }, [called]);
  const pencilled = question?.draft?.kind === "place";
  useEffect(() => {
    // A place pointed at on the chart wants to be given.
    if (pencilled) setUnfolded(true);
  }, [pencilled]);
  if (question === null) return null;
  const folded = foldable && !unfolded;
  return (
    <section
      class="sheet ask-card"
      aria-labelledby="ask-card-title"
      data-foldable={foldable}
      data-folded={folded}
      ref={card}
    >
      <header class="ask-head">
        <h2 id="ask-card-title">{title(question, !folded && asking.questions.value.length > 1)}</h2>
        {foldable ? (
          <button
            type="button"
            class="button ask-fold"
            aria-expanded={!folded}
            onClick={() => setUnfolded(folded)}
          >
            {folded ? (question.lifted ? "See it" : "Guess") : "Fold away"}
          </button>
        ) : null}
        {folded ? null : <Questions asking={asking} asked={question} />}
      </header>
      {folded ? null : (
        <Stage
          key={question.cover}
          bench={bench}
          asking={asking}
          question={question}
          theme={theme}
          onLifted={onLifted}
        />
      )}
      <p class="unseen" role="status">
        {question.lifted ? spoken(question, bench.scene.value.covers) : ""}
      </p>
    </section>
  );
}

const FIRST_TO_ANSWER = ".ask-stage input, .ask-stage [role=slider], .ask-stage .button";

/** Beside tabs that name it, the cover is not named twice. */
function title({ cover, lifted }: Question, tabbed: boolean): string {
  const stage = lifted ? "Guess and truth" : "Covered";
  return tabbed ? stage : `${stage}: ${coverWords(cover)}`;
}

const spoken = ({ cover, given }: Question, covers: readonly string[]): string => {
  const last = given.at(-1);
  return last === undefined ? "" : comparisonOf(cover, last, covers).sentence;
};

/** Which of several covers is asked about. */
function Questions({ asking, asked }: { asking: Asking; asked: Question }): JSX.Element | null {
  const questions = asking.questions.value;
  if (questions.length < 2) return null;
  return (
    <fieldset class="tabs" aria-label="Asked about">
      {questions.map(({ cover }) => (
        <button
          key={cover}
          type="button"
          aria-pressed={cover === asked.cover}
          onClick={() => asking.ask(cover)}
        >
          {coverWords(cover).replace(/^the /, "")}
        </button>
      ))}
    </fieldset>
  );
}

interface StageProps {
  readonly bench: Bench;
  readonly asking: Asking;
  readonly question: Question;
  readonly theme: Theme;
  readonly onLifted: () => void;
}

/** Guessing, guessed, or lifted. The focus goes along with the hand that brought it there. */
function Stage({ bench, asking, question, theme, onLifted }: StageProps): JSX.Element {
  const { cover, lifted, guessing } = question;
  const stage = lifted ? "lifted" : guessing ? "guessing" : "guessed";
  const body = useRef<HTMLDivElement>(null);
  const handled = useRef(false);
  const then = useRef(stage);
  useLayoutEffect(() => {
    if (then.current !== stage && handled.current) {
      const next = stage === "guessing" ? FIRST_TO_ANSWER : ".ask-stage .button";
      body.current?.parentElement?.querySelector<HTMLElement>(next)?.focus();
    }
    then.current = stage;
    handled.current = false;
  }, [stage]);
  const byHand = (act: () => void) => {
    handled.current = true;
    act();
  };
  const lift = () => {
    const target = parseCover(cover);
    if (target?.kind === "receiver") bench.attend(target.receiver);
    bench.act({ kind: "lift-cover", cover });
    onLifted();
  };
  return (
    <div class="ask-stage" ref={body}>
      {stage === "lifted" ? (
        <Outcome
          question={question}
          covers={bench.scene.value.covers}
          situation={bench.situation.value}
          theme={theme}
        />
      ) : (
        <GivenGuesses question={question} covers={bench.scene.value.covers} />
      )}
      {stage === "guessing" ? (
        <GuessForm
          bench={bench}
          question={question}
          theme={theme}
          onDraft={(answer) => asking.draft(cover, answer)}
          onGive={(answer) => byHand(() => asking.give(cover, answer))}
        />
      ) : null}
      {stage === "guessed" ? (
        <p class="ask-buttons">
          <button type="button" class="button primary" onClick={() => byHand(lift)}>
            Lift the cover
          </button>
          <button type="button" class="button" onClick={() => byHand(() => asking.again(cover))}>
            Guess again
          </button>
        </p>
      ) : null}
      {stage === "lifted" ? (
        <p class="ask-buttons">
          <button
            type="button"
            class="button"
            onClick={() => byHand(() => bench.act({ kind: "put-cover", cover }))}
          >
            Cover it again
          </button>
          <button type="button" class="button" onClick={() => asking.putAway(cover)}>
            Put the guess away
          </button>
        </p>
      ) : null}
    </div>
  );
}

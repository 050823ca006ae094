/** Puts one guess together: by hand or in writing, or leaves it open. */

import type { JSX } from "preact";
import { useEffect, useId, useRef, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import { parseCover } from "../../scene/index.ts";
import type { Bench } from "../state/bench.ts";
import { AnswerInput } from "./answer-input.tsx";
import type { Question } from "./asking.ts";
import { coverWords } from "./cover-words.ts";
import { type Answer, answerKind } from "./guess.ts";
import { promptWords } from "./question-words.ts";
import { readAnswer } from "./read-answer.ts";

export interface GuessFormProps {
  readonly bench: Bench;
  readonly question: Question;
  readonly theme: Theme;
  readonly onDraft: (answer: Answer) => void;
  readonly onGive: (answer: Answer) => void;
}

export function GuessForm({ bench, question, theme, onDraft, onGive }: GuessFormProps): JSX.Element {
  const { cover, draft } = question;
  const scene = bench.scene.value;
  const kind = answerKind(scene, cover);
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState("");
  const id = useId();
  // A mark put on the chart by hand takes the place of what was written.
  const written = useRef<Answer | null>(null);
  useEffect(() => {
    if (draft === null || draft === written.current) return;
    setTyped("");
    setFault("");
  }, [draft]);
  const read = (text: string) => readAnswer(kind, text, scene, whatIsRead(cover));
  const type = (text: string) => {
    setTyped(text);
    setFault("");
    const answer = read(text);
    if (kind !== "place" || typeof answer === "string") return;
    written.current = answer;
    onDraft(answer);
  };
  const give = () => {
    const answer = typed.trim() === "" && draft?.kind === kind ? draft : read(typed);
    if (typeof answer === "string") setFault(`${answer}.`);
    else onGive(answer);
  };
  const pointable = kind === "place" && !scene.covers.includes("chart");
  return (
    <form
      class="guess-form"
      onSubmit={(event) => {
        event.preventDefault();
        give();
      }}
    >
      <AnswerInput
        id={`${id}-answer`}
        kind={kind}
        name={coverWords(cover)}
        prompt={promptWords(cover, kind, scene, pointable)}
        draft={draft}
        theme={theme}
        typed={typed}
        fault={fault}
        onType={type}
        onDraft={(answer) => {
          setFault("");
          onDraft(answer);
        }}
      />
      {pointable && draft !== null ? (
        <p class="note">Marked on the chart; drag the mark to move it.</p>
      ) : null}
      <p class="ask-buttons">
        <button type="submit" class="button primary">
          This is my guess
        </button>
        <button type="button" class="button" onClick={() => onGive({ kind: "not-yet" })}>
          I don't know yet
        </button>
      </p>
    </form>
  );
}

/** What a direction is called in a sentence that refuses it. */
function whatIsRead(cover: string): string {
  const target = parseCover(cover);
  if (target?.kind === "heading") return "heading";
  return target?.kind === "receiver" && target.part === "course" ? "course" : "direction";
}

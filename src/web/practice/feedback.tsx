/** After an answer: why it is so; after a wrong one, the answer's own world beside the true one, and the idea that leads there. */

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { type Marked, type Problem, type Response, slipOf } from "../../practice/index.ts";
import { answerLines } from "./answer-words.ts";
import type { Practice } from "./practice-state.ts";
import { type Asked, onwardFrom, type Run, slipToRefute } from "./run.ts";

export interface FeedbackProps {
  readonly practice: Practice;
  readonly run: Run;
  readonly asked: Asked;
  readonly problem: Problem;
  readonly marked: Marked & { readonly response: Response };
  /** The two plates, where they stand among the words. */
  readonly plates: JSX.Element | null;
}

export function Feedback({ practice, run, asked, problem, marked, plates }: FeedbackProps): JSX.Element {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const slip = marked.verdict === "wrong" ? slipToRefute(marked, asked) : null;
  const { response } = marked;
  const onward = onwardFrom(run, problem);
  return (
    <div class="practice-feedback" data-verdict={marked.verdict}>
      <h3 ref={title} tabIndex={-1}>
        {VERDICTS[marked.verdict]}
      </h3>
      <dl class="practice-answers">
        {response.kind === "answer" && marked.verdict === "wrong" ? (
          <div>
            <dt>You answered</dt>
            <dd>
              <Lines lines={answerLines(problem, response.answer)} />
            </dd>
          </div>
        ) : null}
        <div class="truth">
          <dt>It is</dt>
          <dd>
            <Lines lines={answerLines(problem, problem.truth)} />
          </dd>
        </div>
      </dl>
      {slip === null ? null : (
        <div class="practice-slip">
          <p>
            This answer follows from an idea: <strong>“{slipOf(slip).name}.”</strong>
          </p>
          <p>{slipOf(slip).refutation}</p>
        </div>
      )}
      {plates}
      <h4>{marked.verdict === "right" ? "Why" : "How it goes"}</h4>
      <ol class="practice-steps">
        {marked.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p class="practice-acts">
        <button type="button" class="button primary" onClick={practice.onward}>
          {onward.kind === "second-prediction"
            ? "Try one like it"
            : onward.kind === "over"
              ? "See how it went"
              : "Next problem"}
        </button>
      </p>
    </div>
  );
}

const VERDICTS = { right: "Right", wrong: "Not so", "dont-know": "Not yet, then: here is the way" } as const;

const Lines = ({ lines }: { readonly lines: readonly string[] }): JSX.Element =>
  lines.length === 1 ? (
    <span>{lines[0]}</span>
  ) : (
    <ol>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ol>
  );

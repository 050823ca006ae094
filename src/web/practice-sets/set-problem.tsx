/** One problem of the set as the learner sees it, and on request its key. */

import type { JSX } from "preact";
import type { Theme } from "../../draw/index.ts";
import {
  keyProblem,
  letteredOptions,
  type Problem,
  type ProblemSet,
  sheetProblem,
} from "../../practice/index.ts";
import { ProblemChart, ProblemPanel } from "../practice/problem-views.tsx";
import type { SetDesk } from "./set-desk.ts";

export interface SetProblemProps {
  readonly desk: SetDesk;
  readonly set: ProblemSet;
  readonly at: number;
  readonly theme: Theme;
  readonly keyShown: boolean;
  readonly onKey: (shown: boolean) => void;
}

export function SetProblem({ desk, set, at, theme, keyShown, onKey }: SetProblemProps): JSX.Element | null {
  const problem = set.problems[at];
  if (problem === undefined) return null;
  const { views, scene } = problem.case;
  const { answer, given } = sheetProblem(problem, at + 1);
  return (
    <article class="set-problem" aria-labelledby="set-problem-title">
      <header class="sheet">
        <p class="practice-where">
          <span class="caption">
            Problem {at + 1} of {set.problems.length}
          </span>
          <span class="set-code">{problem.code}</span>
        </p>
        <h2 id="set-problem-title">{scene.ask}</h2>
        {given.length === 0 ? null : (
          <dl class="practice-given">
            {given.map(({ label, value }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
        <p class="practice-acts">
          <button type="button" class="button" onClick={() => desk.another(at)}>
            Another like this
          </button>
          <button type="button" class="button" disabled={at === 0} onClick={() => desk.move(at, -1)}>
            Earlier
          </button>
          <button
            type="button"
            class="button"
            disabled={at === set.problems.length - 1}
            onClick={() => desk.move(at, 1)}
          >
            Later
          </button>
          <button type="button" class="button" onClick={() => desk.remove(at)}>
            Take out
          </button>
          <button type="button" class="button" aria-pressed={keyShown} onClick={() => onKey(!keyShown)}>
            {keyShown ? "Cover the key" : "Show the key"}
          </button>
        </p>
      </header>
      <div class="set-views" data-shown={views.join(" ")}>
        {views.includes("chart") ? (
          <ProblemChart situation={problem.situation} theme={theme} pins={pinsOf(problem)} onPin={null} />
        ) : null}
        {views.includes("panel") ? <ProblemPanel situation={problem.situation} theme={theme} /> : null}
      </div>
      {keyShown ? (
        <Key problem={problem} number={at + 1} />
      ) : answer.kind === "options" ? (
        <ul class="sheet set-options" aria-label="Answers to choose from">
          {answer.options.map(({ letter, text }) => (
            <li key={letter}>
              <span class="option-letter">{letter}</span> {text}
            </li>
          ))}
        </ul>
      ) : (
        <p class="sheet set-told">Written, not chosen.</p>
      )}
    </article>
  );
}

const pinsOf = (problem: Problem) =>
  problem.mode === "choose" && problem.truth.kind === "place"
    ? letteredOptions(problem).flatMap(({ answer, letter }) =>
        answer.kind === "place" ? [{ position: answer.position, letter, chosen: false }] : [],
      )
    : [];

function Key({ problem, number }: { readonly problem: Problem; readonly number: number }): JSX.Element {
  const key = keyProblem(problem, number);
  return (
    <section class="sheet set-key" aria-label="Key">
      <h3>
        Right: <strong>{key.right}</strong>
      </h3>
      <table>
        <thead>
          <tr>
            <th scope="col">Answer</th>
            <th scope="col">What it tells</th>
          </tr>
        </thead>
        <tbody>
          {key.answers.map(({ letter, text, isRight, ideas }) => (
            <tr key={`${letter ?? ""}${text}`}>
              <th scope="row">
                {letter === null ? "" : `${letter}  `}
                {text}
              </th>
              <td>
                {isRight
                  ? "right"
                  : ideas.length === 0
                    ? "no idea we know of"
                    : ideas.map((idea) => `“${idea}”`).join(", ")}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <ol>
        {key.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
    </section>
  );
}

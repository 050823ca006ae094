/** One problem: chart, panel and answer on one screen; on a phone one of them at a time. */

import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Theme } from "../../draw/index.ts";
import type { Problem, ProblemView } from "../../practice/index.ts";
import type { Situation } from "../../scene/index.ts";
import { answerWords } from "./answer-words.ts";
import type { Pin } from "./chart-pins.tsx";
import { answerOf, optionPlaces, placeDraft } from "./draft.ts";
import { Feedback } from "./feedback.tsx";
import { GhostPlates } from "./ghost-plates.tsx";
import { GiveAnswer } from "./give-answer.tsx";
import { IdentToHear } from "./ident-to-hear.tsx";
import type { Practice } from "./practice-state.ts";
import { ProblemChart, ProblemPanel } from "./problem-views.tsx";
import { type Asked, lengthOf, markedOf, optionsShown, type Run, turnsDone } from "./run.ts";

export interface ProblemScreenProps {
  readonly practice: Practice;
  readonly run: Run;
  readonly asked: Asked;
  readonly problem: Problem;
  readonly theme: Theme;
  readonly phone: boolean;
  /** Above the tabs of a phone; null where it stands below. */
  readonly caution: JSX.Element | null;
}

type Pane = "chart" | "panel" | "answer";
const PANE_WORDS: Readonly<Record<Pane, string>> = { chart: "Chart", panel: "Panel", answer: "Answer" };

export function ProblemScreen(props: ProblemScreenProps): JSX.Element {
  const { practice, run, asked, problem, theme, phone, caution } = props;
  const marked = useMemo(() => markedOf(problem, asked), [problem, asked.given]);
  const { views } = problem.case;
  const [pane, setPane] = useState<Pane>(views.includes("panel") ? "panel" : "chart");
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    setPane(views.includes("chart") && problem.truth.kind === "place" ? "chart" : (views.at(-1) ?? "answer"));
    title.current?.focus({ preventScroll: true });
  }, [problem.code]);
  useEffect(() => {
    if (marked !== null) setPane("answer");
  }, [marked]);
  const situation = useShown(practice, problem, marked !== null);
  const options = useMemo(() => optionsShown(problem, asked.believed), [problem, asked.believed]);
  const pointable = marked === null && options === null && problem.truth.kind === "place";
  const pins = useMemo(
    () => (marked === null ? pinsOf(problem, options, asked.draft) : []),
    [problem, options, asked.draft, marked],
  );
  const ghost = marked?.ghost ?? null;
  const plates =
    ghost === null ? null : (
      <GhostPlates resolve={practice.resolve} problem={problem} ghost={ghost} theme={theme} />
    );
  // Where there is room the plates stand in the place of the views.
  const open: readonly ProblemView[] =
    marked === null ? views : plates !== null && !phone ? [] : ["chart", "panel"];
  const panes: readonly Pane[] = [...open, "answer"];
  const seen = (which: Pane) => !phone || pane === which;
  return (
    <div class="practice-problem" data-views={open.join(" ")} data-answered={marked !== null}>
      <header class="practice-question">
        <p class="practice-where">
          <span class="caption">{whereWords(run, asked)}</span>
          {marked === null ? <CoveredViews problem={problem} /> : null}
        </p>
        <h2 ref={title} tabIndex={-1}>
          {problem.case.scene.ask}
        </h2>
        <Given problem={problem} />
      </header>
      <div class="practice-views" hidden={phone && pane === "answer"}>
        {open.includes("chart") && seen("chart") ? (
          <ProblemChart
            situation={situation}
            theme={theme}
            pins={pins}
            onPin={pointable ? (position) => practice.draft(placeDraft(position)) : null}
          />
        ) : null}
        {open.includes("panel") && seen("panel") ? (
          <ProblemPanel situation={situation} theme={theme} />
        ) : null}
        {phone ? null : plates}
      </div>
      <section class="sheet practice-answer" aria-label="Your answer" hidden={!seen("answer")}>
        {problem.case.listenTo === undefined ? null : (
          <IdentToHear
            key={problem.code}
            problem={problem}
            receiver={problem.case.listenTo}
            told={marked !== null}
            theme={theme}
          />
        )}
        {marked === null ? (
          <GiveAnswer
            key={problem.code}
            practice={practice}
            problem={problem}
            options={options}
            asked={asked}
          />
        ) : (
          <Feedback
            practice={practice}
            run={run}
            asked={asked}
            problem={problem}
            marked={marked}
            plates={phone ? plates : null}
          />
        )}
      </section>
      {caution}
      {phone ? (
        <nav class="phone-tabs practice-tabs" aria-label="Views">
          {panes.map((each) => (
            <button key={each} type="button" aria-pressed={pane === each} onClick={() => setPane(each)}>
              {PANE_WORDS[each]}
            </button>
          ))}
        </nav>
      ) : null}
      <p class="unseen" role="status">
        {marked === null
          ? ""
          : marked.verdict === "right"
            ? "Right."
            : `The answer: ${answerWords(problem, problem.truth)}.`}
      </p>
    </div>
  );
}

/** Under its covers while it is asked, open once it has been answered. */
function useShown(practice: Practice, problem: Problem, lifted: boolean): Situation {
  return useMemo(
    () => (lifted ? practice.resolve({ ...problem.case.scene, covers: [] }) : problem.situation),
    [problem, lifted],
  );
}

function whereWords(run: Run, { followUp, given }: Asked): string {
  if (followUp !== null) return "One like it, now that you have seen why";
  const at = turnsDone(run) + (given === null ? 1 : 0);
  const length = lengthOf(run);
  if (length === 1) return "One problem";
  return length === null ? `Problem ${at}` : `Problem ${at} of ${length}`;
}

function Given({ problem }: { readonly problem: Problem }): JSX.Element | null {
  const { given } = problem.case;
  if (given.length === 0) return null;
  return (
    <dl class="practice-given">
      {given.map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** A view that is hidden is told to be so. */
function CoveredViews({ problem }: { readonly problem: Problem }): JSX.Element {
  const { covers } = problem.case.scene;
  const hidden = (["chart", "panel"] as const).filter(
    (view) => covers.includes(view) && !problem.case.views.includes(view),
  );
  return (
    <>
      {hidden.map((view) => (
        <span key={view} class="covered">
          covered: {view}
        </span>
      ))}
    </>
  );
}

function pinsOf(problem: Problem, options: Parameters<typeof answerOf>[1], draft: string): readonly Pin[] {
  const lettered = optionPlaces(problem, options);
  if (lettered.length > 0) return lettered.map((pin) => ({ ...pin, chosen: pin.letter === draft }));
  const answer = problem.truth.kind === "place" ? answerOf(problem, options, draft) : null;
  return answer?.kind === "place" ? [{ position: answer.position, letter: null, chosen: true }] : [];
}
